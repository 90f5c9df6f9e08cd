import { list, whole } from '../check.ts';
import { LIMITS } from '../sticking/types.ts';
import { gcd } from '../time/resolution.ts';
import type { SlotIndex } from '../time/units.ts';

/**
 * So many accents over so many slots as evenly as whole slots allow: each falls on the first slot at or after its exact
 * place, so that gaps differ by at most one and the longer ones come first where that is possible. Up to a turn they are
 * those of G. Toussaint, The Euclidean Algorithm Generates Traditional Musical Rhythms (BRIDGES 2005). Throws RangeError
 * for fewer than one accent or more accents than slots, and for more slots than a sticking may have.
 * @example
 * spread(3, 8) // → [0, 3, 6]
 */
export function spread(accents: number, slots: number): SlotIndex[] {
  whole('slots', slots, 1, LIMITS.slots);
  whole('accents', accents, 1, slots);
  return Array.from({ length: accents }, (_, i) => Math.ceil((i * slots) / accents));
}

/**
 * A pattern begun so many slots later, round and round. Throws RangeError for what is no whole number of slots.
 * @example
 * turned([0, 3, 6], 8, 1) // → [1, 4, 7]
 */
export function turned(onsets: readonly SlotIndex[], slots: number, by: number): SlotIndex[] {
  checkOnsets(onsets, slots);
  whole('by', by, 0);
  return onsets.map((slot) => (slot + by) % slots).sort((a, b) => a - b);
}

/**
 * How many different turns an even spread has.
 * @example
 * turnsOf(3, 8) // → 8
 * turnsOf(4, 8) // → 2
 */
export function turnsOf(accents: number, slots: number): number {
  whole('slots', slots, 1);
  whole('accents', accents, 1, slots);
  return slots / gcd(accents, slots);
}

/**
 * The lengths from each onset to the next, the last one round to the first.
 * @example
 * gapsBetween([0, 3, 6], 8) // → [3, 3, 2]
 */
export function gapsBetween(onsets: readonly SlotIndex[], slots: number): number[] {
  checkOnsets(onsets, slots);
  return onsets.map((slot, i) => (onsets[i + 1] ?? onsets[0] + slots) - slot);
}

function checkOnsets(onsets: readonly SlotIndex[], slots: number): void {
  whole('slots', slots, 1);
  list('onsets', onsets, 'slots');
  for (const slot of onsets) whole('onset', slot, 0);
}
