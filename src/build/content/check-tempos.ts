import { DEFAULT_LIMITS, hands, quartersPerMinute, sayCount, type GapKind, type Timeline } from '../../core/index.ts';
import { barOfExercise, type ExerciseData } from '../../curriculum/index.ts';
import { layQuietly } from './check-bars.ts';
import { warnAt, type Entry, type Library } from './library.ts';

/** How far above the usual limit a tempo may go before it is told: limits differ more than this from hand to hand. */
const LEEWAY = 1.05;

const LIMBS = { R: 'the right hand', L: 'the left hand', K: 'the bass-drum foot', H: 'the hi-hat foot' } as const;

const GAPS: Record<GapKind, string> = {
  single: 'single strokes',
  rebound: 'the two strokes of a double',
  grace: 'a grace note and the next stroke',
  foot: 'strokes',
  doubleFoot: 'two strokes in one slot',
};

/** Goal tempos that most hands and feet do not reach. That is for a teacher to judge, so it is told and refuses nothing. */
export function checkTempos(library: Library): void {
  for (const entry of library.exercises.values()) if (entry.data) checkTempo(library, entry, entry.data);
}

function checkTempo(library: Library, entry: Entry<ExerciseData>, exercise: ExerciseData): void {
  const spec = barOfExercise(exercise);
  const [tight] = exercise.leads
    .flatMap((lead) => layQuietly(library, { ...spec, lead }) ?? [])
    .flatMap(({ timeline }) => tooFast(timeline, exercise.tempo.to, spec.pickup === undefined) ?? []);
  if (tight) warnAt(library, entry, ['tempo', 'to'], tight.message, tight.hint);
}

function tooFast(timeline: Timeline, goal: number, loop: boolean): { message: string; hint: string } | undefined {
  const { meter } = timeline.bars[0];
  const { limit } = hands(timeline, quartersPerMinute(meter, goal), { loop });
  const most = limit && Math.floor((limit.bpm * goal) / quartersPerMinute(meter, goal));
  if (!limit || !most || goal <= most * LEEWAY) return undefined;
  const { limb, kind, gap } = limit;
  return {
    message: `at ${goal}, ${LIMBS[limb]} has ${Math.round(gap.ms)} ms between ${GAPS[kind]} (from ${sayCount(gap.count)})`,
    hint: `${DEFAULT_LIMITS[kind]} ms is what most manage: about ${most}`,
  };
}
