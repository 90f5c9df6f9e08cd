import { ADDRESSES, barOfExercise, type ExerciseData } from '../../curriculum/index.ts';
import { DEFAULT_LIMITS, type GapKind, hands, quartersPerMinute, sayCount, type Timeline } from '../../core/index.ts';
import { layQuietly } from './check-bars.ts';
import { isTemplate } from './check-slips.ts';
import { type Entry, faultAt, type Library, warnAt } from './library.ts';

/**
 * No two exercises are one bar: the same meter, subdivision and pickup, and the same strokes on the same surfaces under
 * the lead each begins with. Names, tempo and staff make no other bar of it; another first lead does.
 */
export function checkRepeats(library: Library): void {
  const first = new Map<string, string>();
  for (const entry of library.exercises.values()) {
    const { data } = entry;
    const bar = data && sounding(library, data);
    if (!data || bar === undefined) continue;
    const earlier = first.get(bar);
    if (earlier)
      faultAt(
        library,
        entry,
        [data.cells ? 'cells' : 'sticking'],
        `this is the bar of ${earlier} again`,
        'one exercise can offer several leads and a range of tempos: keep one of the two, or change the bar',
      );
    else first.set(bar, entry.file);
  }
}

/** What a bar sounds and where, as a text that two bars share exactly when they are the same; none where it is faulty. */
export function sounding(library: Library, exercise: ExerciseData): string | undefined {
  const laid = layQuietly(library, barOfExercise(exercise));
  if (!laid) return undefined;
  const { bars, pickupTicks, strokes } = laid.timeline;
  return JSON.stringify([
    bars.map(({ meter, grid }) => [meter, grid]),
    pickupTicks,
    strokes.map(({ tick, limb, kind, accent, ghost, surface }) => [tick, limb, kind, accent, ghost, surface]),
  ]);
}

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

/**
 * Exercises of the school's own that no lesson shows; ours are also there for practice beside their lesson, which their
 * first tag names. Somebody may still mean to use them: they are told, and nothing is refused. One that is still the
 * template is told as that. Cells are offered in bar math, whether a bar uses them or not.
 */
export function checkUnused(library: Library): void {
  const used = usedExercises(library);
  const ours = new Set(library.course?.data?.lessons);
  const unused = [...library.exercises].flatMap(([id, { data }]) =>
    used.has(id) || ours.has(data?.tags[0] ?? '') || isTemplate(data?.purpose ?? '') ? [] : [id],
  );
  if (unused.length)
    library.warnings.push({
      file: 'content/exercises',
      line: 1,
      column: 1,
      message: `${unused.length} of the exercises ${unused.length === 1 ? 'is' : 'are'} in no lesson:`,
      hint: unused.join(', '),
    });
}

/** Shown in a lesson or linked from one. */
function usedExercises(library: Library): Set<string> {
  const linked = new Set(library.lessons.flatMap(({ lesson }) => lesson?.references ?? []).map(({ url }) => url));
  const ids = [...library.exercises.keys()].filter((id) => linked.has(ADDRESSES.exercise(id)));
  return new Set([...ids, ...attributes(library, 'Exercise', 'id')]);
}

/** What an attribute of a word says in all lessons. */
function attributes({ lessons }: Library, word: string, name: string): string[] {
  return lessons.flatMap(({ lesson }) =>
    (lesson?.words ?? []).flatMap((use) =>
      use.word.name === word && use.attributes?.[name] !== undefined ? [`${use.attributes[name]}`] : [],
    ),
  );
}
