import { isGrid, readMeter, type Grid, type MeterText } from '../core/index.ts';
import { beatsApart, strangersIn } from '../curriculum/index.ts';
import { countsApart } from '../words/lessons.ts';
import { COUNTING } from '../words/site.ts';
import { termBar, wordBar } from './bars.ts';
import { getExercises, type ExerciseEntry, type TermEntry } from './collections.ts';
import { lessonWords } from './lesson-words.ts';
import type { LessonEntry } from './lessons.ts';
import { bothNamesInLesson } from './names.ts';

/** What is said above a lesson: itself, the names it is found by, what is to be said of its counts. */
export async function lessonHeading(lesson: LessonEntry) {
  const exercises = await exercisesIn(lesson);
  const text = [proseOf(lesson.body ?? ''), ...exercises.map(({ data }) => `${data.purpose} ${data.enough}`)].join(' ');
  const counted = countNote(text, await rulersOf(lesson, exercises));
  return { lesson: lesson.data, also: await bothNamesInLesson(lesson), counted };
}

/** The note on the counts of an exercise that its own words name otherwise than the school. */
export const exerciseCountNote = ({ data }: ExerciseEntry): string | undefined =>
  countNote(`${data.purpose} ${data.enough}`, rulersAmong([data]));

/** The note on the counts of a term; where it shows no bar, its text counts plain bars of 4/4. */
export async function termCountNote({ id, data }: TermEntry): Promise<string | undefined> {
  const bar = await termBar(id);
  return countNote(data.says, bar?.timeline.bars ?? PLAIN);
}

const PLAIN: readonly Ruler[] = [2, 3, 4].map((grid) => ({ meter: '4/4', grid }));

/** What is to be said of a text that names syllables of some bars otherwise than the school; nothing where it names none. */
const countNote = (text: string, rulers: readonly Ruler[]): string | undefined =>
  countsApart(strangersIn(text, beatsApart(rulers, COUNTING)));

/** The words of a lesson as they are read: without tags, their attributes, and marks of emphasis. */
const proseOf = (body: string): string => body.replace(/<[^>]*>/g, ' ').replace(/[*_`]/g, '');

async function exercisesIn(lesson: LessonEntry): Promise<ExerciseEntry[]> {
  const { exercises } = lessonWords(lesson);
  return (await getExercises()).filter(({ id }) => exercises.includes(id));
}

interface Ruler {
  meter: MeterText;
  grid: Grid;
}

/** The rulers of a lesson's bars and exercises, its own first. */
async function rulersOf(lesson: LessonEntry, exercises: readonly ExerciseEntry[]): Promise<Ruler[]> {
  const { bars, counts } = lessonWords(lesson);
  const laid = await Promise.all(bars.map((bar) => wordBar(bar, lesson.id)));
  const shown = exercises.map(({ data }) => data);
  return rulersAmong([lesson.data, ...laid.flatMap(({ timeline }) => timeline.bars), ...counts, ...shown]);
}

/** Those of some bars that say their meter and grid themselves. */
const rulersAmong = (bars: readonly Partial<Ruler>[]): Ruler[] =>
  bars.flatMap(({ meter, grid }) =>
    meter !== undefined && readMeter(meter).ok && isGrid(grid) ? [{ meter, grid }] : [],
  );
