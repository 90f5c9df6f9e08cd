import { getEntry } from 'astro:content';
import type { CourseData, SiteData } from '../curriculum/index.ts';

/** What the school has set. Throws where content/site.yaml is missing. */
export async function getSite(): Promise<SiteData> {
  const entry = await getEntry('site', 'site');
  if (!entry) throw new Error('content/site.yaml: the file is missing');
  return entry.data;
}

/** The plan of the course. Throws where content/course.yaml is missing. */
export async function getCourse(): Promise<CourseData> {
  const entry = await getEntry('course', 'course');
  if (!entry) throw new Error('content/course.yaml: the file is missing');
  return entry.data;
}
