import { isGrid, readMeter, type Grid, type MeterText } from '../core/index.ts';
import { beatsApart } from '../curriculum/index.ts';
import { countsApart } from '../words/lessons.ts';
import { COUNTING } from '../words/site.ts';
import { wordBar } from './bars.ts';
import { getExercises } from './collections.ts';
import { lessonWords } from './lesson-words.ts';
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

/** The rulers of a lesson's bars and exercises, its own first. */
async function rulersOf(lesson: LessonEntry): Promise<Ruler[]> {
  const { bars, counts, exercises } = lessonWords(lesson);
  const laid = await Promise.all(bars.map((bar) => wordBar(bar, lesson.id)));
  const shown = (await getExercises()).filter(({ id }) => exercises.includes(id)).map((exercise) => exercise.data);
  return [lesson.data, ...laid.flatMap(({ timeline }) => timeline.bars), ...counts, ...shown].filter(isRuler);
}

function isRuler(ruler: Partial<Ruler>): ruler is Ruler {
  const { meter, grid } = ruler;
  return meter !== undefined && readMeter(meter).ok && isGrid(grid);
}
