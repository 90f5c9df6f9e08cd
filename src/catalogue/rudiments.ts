import { ADDRESSES, partsOf, soughtIn } from '../curriculum/index.ts';
import {
  getExercises,
  getRudiment,
  getRudiments,
  relatedRudiments,
  sameHands,
  type RudimentEntry,
} from './collections.ts';
import { getLessons } from './lessons.ts';
import { laddersOf, type PartLadders } from './practice.ts';
import { everyBar, textsOf } from './stickings.ts';
import { once } from './once.ts';

/** The rudiments that have to do with one. */
export interface RudimentKin {
  /** Those it is made of, worked out from their stickings. */
  parts: RudimentEntry[];
  /** Those that are made of it. */
  wholes: RudimentEntry[];
  /** Those whose hands do the same, grace notes left out. */
  sameHands: RudimentEntry[];
  /** Those that its file points to besides. */
  related: RudimentEntry[];
}

/** The rudiments that have to do with one, each way of its own. */
export async function rudimentKin(slug: string): Promise<RudimentKin> {
  const all = await getRudiments();
  const kin = {
    parts: partsOf(await getRudiment(slug), all),
    wholes: all.filter((one) => partsOf(one, all).some(({ id }) => id === slug)),
    sameHands: await sameHands(slug),
  };
  const told = new Set(Object.values(kin).flatMap((list) => list.map(({ id }) => id)));
  return { ...kin, related: (await relatedRudiments(slug)).filter(({ id }) => !told.has(id)) };
}

/** By part, the lessons and exercises that name a rudiment or have its sticking in their bars. */
export async function rudimentUses(slug: string): Promise<PartLadders[]> {
  const { data } = await getRudiment(slug);
  const [lessons, exercises, bars] = await Promise.all([getLessons(), getExercises(), textsByAddress()]);
  const stands = soughtIn(data);
  const uses = <T extends { data: { rudiments: string[] } }>(all: T[], address: (entry: T) => string): T[] =>
    all.filter(
      (entry) => entry.data.rudiments.includes(slug) || (stands && (bars.get(address(entry)) ?? []).some(stands)),
    );
  return laddersOf(
    uses(lessons, (lesson) => ADDRESSES.lesson(lesson.data.id)),
    uses(exercises, (exercise) => ADDRESSES.exercise(exercise.id)),
  );
}

/** The texts of the bars of every page. */
const textsByAddress = once(async () => {
  const bars = (await everyBar()).filter(({ kind }) => kind === 'lesson' || kind === 'exercise');
  return new Map(bars.map((one) => [one.url, textsOf(one)]));
});
