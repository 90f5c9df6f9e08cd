import { whole } from '../check.ts';
import { LIMITS } from '../sticking/types.ts';
import { resolution } from '../time/resolution.ts';
import type { SlotIndex } from '../time/units.ts';

/** How often a cell goes into a stretch, and what is left of it. */
export interface Fit {
  times: number;
  /** Slots that stay empty. */
  left: number;
  /** The first of them; the stretch's end where nothing is left. */
  from: SlotIndex;
}

/**
 * How often a cell goes into so many slots. Throws RangeError for what is no whole number of slots.
 * @example
 * fit(3, 16) // → { times: 5, left: 1, from: 15 }
 */
export function fit(cellSlots: number, slots: number): Fit {
  whole('cellSlots', cellSlots, 1);
  whole('slots', slots, 0);
  const left = slots % cellSlots;
  return { times: (slots - left) / cellSlots, left, from: slots - left };
}

/** A slot of a bar: bars from 1, slots from 0. */
export interface BarSlot {
  bar: number;
  slot: SlotIndex;
}

/**
 * Where a slot counted over several bars stands. Throws RangeError for what is no slot.
 * @example
 * placeOf(18, 16) // → { bar: 2, slot: 2 }
 */
export function placeOf(slot: SlotIndex, barSlots: number): BarSlot {
  whole('slot', slot, 0);
  whole('barSlots', barSlots, 1);
  return { bar: Math.floor(slot / barSlots) + 1, slot: slot % barSlots };
}

/**
 * Where every cell starts when one is laid end to end until it starts on beat 1 again. Throws RangeError for what is no
 * whole number of slots, and for a bar of more slots than a sticking may have.
 * @example
 * cellStarts(3, 16)[6] // → { bar: 2, slot: 2 }
 * cellStarts(3, 16).length // → 16
 */
export function cellStarts(cellSlots: number, barSlots: number): BarSlot[] {
  whole('barSlots', barSlots, 1, LIMITS.slots);
  const { cells } = resolution(cellSlots, barSlots);
  return Array.from({ length: cells }, (_, cell) => placeOf(cell * cellSlots, barSlots));
}
