import { render } from 'astro:content';
import type { LessonEntry } from './lessons.ts';
import type { PageEntry } from './collections.ts';

/** The text of a lesson or a page, as a component. */
export async function textOf(entry: LessonEntry | PageEntry) {
  return (await render(entry)).Content;
}
