import { checkOptions, optionalSwitch } from '../check.ts';
import { checkSticking } from './check-sticking.ts';
import { slotsOnly } from './expand.ts';
import { mirror } from './mirror.ts';
import type { Chord, HoldItem, SlotItem, Sticking, StrokeText } from './types.ts';
import type { SlotIndex } from '../time/units.ts';

/** How freely a sticking may be found in another. */
export interface MatchOptions {
  /** Also from any of its slots on, round its end. */
  rotated?: boolean;
  /** Also led by the other hand. */
  mirrored?: boolean;
  /** The other one is played over and over: also across its end, back to its beginning. */
  repeats?: boolean;
}

/** Where a sticking was found. */
export interface Match {
  /** The slot it begins on, groups written out. */
  slot: SlotIndex;
  /** By how many slots it was turned round; 0 where it was found as it is. */
  rotation: number;
  mirrored: boolean;
}

type Slots = (SlotItem | HoldItem)[];

/**
 * The first place where a sticking stands in another, as written before turned round, before mirrored; nothing where it
 * does not. What is not written in the sought one is not asked for: `R L L` is found in `>R (L) L@tom1`, but not in
 * `lR L L`, for a flam is another stroke.
 * @example
 * findSticking(parseSticking('L L R').sticking, parseSticking('{R L L}4').sticking) // → { slot: 1, rotation: 0, mirrored: false }
 */
export function findSticking(sought: Sticking, within: Sticking, options: MatchOptions = {}): Match | undefined {
  checkSticking(sought);
  checkSticking(within);
  checkOptions('findSticking', options);
  for (const name of ['rotated', 'mirrored', 'repeats'] as const) optionalSwitch(name, options[name]);
  const place = slotsOnly(within.hands);
  for (const mirrored of options.mirrored ? [false, true] : [false]) {
    const line = slotsOnly((mirrored ? mirror(sought) : sought).hands);
    const slots = firstSlots(place, line, options.repeats);
    const rotation = (options.rotated ? slots : slots.slice(0, 1)).findIndex((slot) => slot >= 0);
    if (rotation >= 0) return { slot: slots[rotation], rotation, mirrored };
  }
  return undefined;
}

/**
 * For each rotation of a line the first slot where it stands, or -1: from the end of the place to its beginning, how many slots
 * fit from each slot of the line on, which is one more than from the next ones, or none.
 */
function firstSlots(place: Slots, line: Slots, repeats = false): number[] {
  const [length, size] = [place.length, line.length];
  const found = line.map(() => -1);
  if (size > length) return found;
  const fits = fitting(line, place);
  let next = new Int32Array(size);
  for (let at = repeats ? length + size - 2 : length - 1; at >= 0; at -= 1) {
    const run = new Int32Array(size);
    for (let i = 0; i < size; i += 1) if (fits(i, at % length)) run[i] = 1 + next[(i + 1) % size];
    if (at < length) run.forEach((slots, i) => slots >= size && (found[i] = at));
    next = run;
  }
  return found;
}

/** Whether a slot of the line fits one of the place; slots that are alike are compared once. */
function fitting(line: Slots, place: Slots): (i: number, at: number) => boolean {
  const [sought, there] = [line, place].map((slots) => {
    const numbers = new Map<string, number>();
    const keys = slots.map((slot) => JSON.stringify(slot));
    for (const key of keys) if (!numbers.has(key)) numbers.set(key, numbers.size);
    return keys.map((key) => numbers.get(key)!);
  });
  const width = place.length;
  const known = new Map<number, boolean>();
  return (i, at) => {
    const pair = sought[i] * width + there[at];
    const before = known.get(pair);
    if (before !== undefined) return before;
    const same = sameSlot(line[i], place[at]);
    known.set(pair, same);
    return same;
  };
}

function sameSlot(sought: SlotItem | HoldItem, found: SlotItem | HoldItem): boolean {
  if (sought.kind === 'hold' || found.kind === 'hold') return sought.kind === found.kind;
  return (
    sought.parts.length === found.parts.length && sought.parts.every((chord, p) => sameChord(chord, found.parts[p]))
  );
}

const sameChord = (sought: Chord, found: Chord): boolean =>
  sought.length === found.length && sought.every((stroke, i) => sameStroke(stroke, found[i]));

function sameStroke(sought: StrokeText, found: StrokeText): boolean {
  const asked = (key: 'accent' | 'ghost' | 'buzz' | 'surface'): boolean =>
    sought[key] === undefined || sought[key] === found[key];
  const graces = (stroke: StrokeText): string => (stroke.graces ?? []).map((g) => g.hand).join('');
  return (
    sought.limb === found.limb &&
    graces(sought) === graces(found) &&
    asked('accent') &&
    asked('ghost') &&
    asked('buzz') &&
    asked('surface')
  );
}
