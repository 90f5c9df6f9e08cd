import { isGrid, readMeter, type Grid, type MeterText } from '../core/index.ts';
import { beatsApart, exercisesIn, wordsIn } from '../curriculum/index.ts';
import { COUNTING, countsApart } from '../words/index.ts';
import { getExercises } from './collections.ts';
import type { LessonEntry } from './lessons.ts';
import { bothNamesInLesson } from './names.ts';

/** What stands above a lesson: itself, the names it is found by, what is to be said of its counts. */
export async function lessonHeading(lesson: LessonEntry) {
  const counted = countsApart(beatsApart(await rulersOf(lesson), COUNTING));
  return { lesson: lesson.data, also: await bothNamesInLesson(lesson), counted };
}

interface Ruler {
  meter: MeterText;
  grid: Grid;
}

const HEADS = /\[([\d+]+\/\d+):(\d)\]/g;

/** The rulers of a lesson's bars and exercises, its own first. */
async function rulersOf({ data, body = '' }: LessonEntry): Promise<Ruler[]> {
  const bars = wordsIn(body, 'Bar', 'Counts').flatMap(({ attributes: { meter, grid, sticking } }) => [
    { meter: String(meter ?? data.meter), grid: Number(grid ?? data.grid) },
    ...[...String(sticking ?? '').matchAll(HEADS)].map(([, of, slots]) => ({ meter: of, grid: Number(slots) })),
  ]);
  const shown = new Set(exercisesIn(body));
  const exercises = (await getExercises()).filter(({ id }) => shown.has(id)).map((exercise) => exercise.data);
  return [data, ...bars, ...exercises].filter(isRuler);
}

function isRuler(ruler: Partial<Ruler>): ruler is Ruler {
  const { meter, grid } = ruler;
  return meter !== undefined && readMeter(meter).ok && isGrid(grid);
}
