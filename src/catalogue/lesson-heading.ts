import { countSyllables } from '../core/index.ts';
import type { LessonData, SiteData } from '../curriculum/index.ts';
import { countsApart } from '../words/index.ts';
import type { LessonEntry } from './lessons.ts';
import { bothNamesInLesson } from './names.ts';
import { getSite } from './site.ts';

/** What stands above a lesson: itself, the names it is found by, what is to be said of its counts. */
export async function lessonHeading(lesson: LessonEntry) {
  const counted = countedApart(lesson.data, await getSite());
  return { lesson: lesson.data, also: await bothNamesInLesson(lesson), counted };
}

/** What a lesson says where a beat of it is counted in other syllables here than in its text; else nothing. */
function countedApart({ meter, grid }: LessonData, { counting }: Pick<SiteData, 'counting'>): string | undefined {
  const text = countSyllables(meter, grid).slice(0, grid);
  return countsApart(text, countSyllables(meter, grid, counting).slice(0, grid));
}
