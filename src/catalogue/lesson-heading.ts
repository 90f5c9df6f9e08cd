import { isGrid, readMeter, type Grid, type MeterText } from '../core/index.ts';
import { beatsApart } from '../curriculum/index.ts';
import { countsApart } from '../words/index.ts';
import type { LessonEntry } from './lessons.ts';
import { bothNamesInLesson } from './names.ts';
import { getSite } from './site.ts';

/** What stands above a lesson: itself, the names it is found by, what is to be said of its counts. */
export async function lessonHeading(lesson: LessonEntry) {
  const { counting } = await getSite();
  const counted = countsApart(beatsApart(rulersOf(lesson), counting));
  return { lesson: lesson.data, also: await bothNamesInLesson(lesson), counted };
}

interface Ruler {
  meter: MeterText;
  grid: Grid;
}

const BARS = /<(?:Bar|Counts)\b[^>]*>/g;
const METER = /\bmeter="([^"]+)"/;
const GRID = /\bgrid=\{(\d)\}/;
const HEADS = /\[([\d+]+\/\d+):(\d)\]/g;

/** The rulers of a lesson's bars, its own first. */
function rulersOf({ data, body = '' }: LessonEntry): Ruler[] {
  const bars = [...body.matchAll(BARS)].flatMap(([bar]) => [
    { meter: METER.exec(bar)?.[1] ?? data.meter, grid: Number(GRID.exec(bar)?.[1] ?? data.grid) },
    ...[...bar.matchAll(HEADS)].map(([, meter, grid]) => ({ meter, grid: Number(grid) })),
  ]);
  return [data, ...bars].filter((ruler): ruler is Ruler => isGrid(ruler.grid) && readMeter(ruler.meter).ok);
}
