import { barOfExercise, type ExerciseData } from '../../curriculum/index.ts';
import { layQuietly } from './check-bars.ts';
import { faultAt, type Library } from './library.ts';

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
