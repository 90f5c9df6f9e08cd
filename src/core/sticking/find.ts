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
    for (let rotation = 0; rotation < (options.rotated ? line.length : 1); rotation += 1) {
      const slot = indexIn(place, [...line.slice(rotation), ...line.slice(0, rotation)], options.repeats);
      if (slot >= 0) return { slot, rotation, mirrored };
    }
  }
  return undefined;
}

function indexIn(place: Slots, line: Slots, repeats = false): number {
  if (line.length > place.length) return -1;
  const starts = repeats ? place.length : place.length - line.length + 1;
  for (let from = 0; from < starts; from += 1)
    if (line.every((item, i) => sameSlot(item, place[(from + i) % place.length]))) return from;
  return -1;
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
