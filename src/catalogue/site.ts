import { getEntry } from 'astro:content';
import type { CourseData, SiteData } from '../curriculum/index.ts';
import { once } from './once.ts';

/** What the school has set. Throws where content/site.yaml is missing. */
export const getSite: () => Promise<SiteData> = once(async () => {
  const entry = await getEntry('site', 'site');
  if (!entry) throw new Error('content/site.yaml: the file is missing');
  return entry.data;
});

/** The plan of the course. Throws where content/course.yaml is missing. */
export const getCourse: () => Promise<CourseData> = once(async () => {
  const entry = await getEntry('course', 'course');
  if (!entry) throw new Error('content/course.yaml: the file is missing');
  return entry.data;
});
