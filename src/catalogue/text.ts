import { getCollection, render } from 'astro:content';
import type { LessonEntry } from './lessons.ts';
import type { PageEntry } from './collections.ts';

/** The text of a lesson or a page, as a component. */
export async function textOf(entry: LessonEntry | PageEntry) {
  return (await render(entry)).Content;
}

/** The pages of text that a school edits, by their addresses. */
export const getPages = (): Promise<PageEntry[]> => getCollection('pages');
