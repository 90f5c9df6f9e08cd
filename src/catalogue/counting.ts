import { countSyllables } from '../core/index.ts';
import type { LessonData, SiteData } from '../curriculum/index.ts';
import { countsApart } from '../words/index.ts';

/** What a lesson says where a beat of it is counted in other syllables here than in its text; else nothing. */
export function countedApart(
  { meter, grid }: LessonData,
  { counting }: Pick<SiteData, 'counting'>,
): string | undefined {
  const text = countSyllables(meter, grid).slice(0, grid);
  return countsApart(text, countSyllables(meter, grid, counting).slice(0, grid));
}
