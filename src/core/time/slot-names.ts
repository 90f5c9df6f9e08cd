import { meterOf, slotTicks } from './meter.ts';
import { TICKS_PER_QUARTER, type Grid, type MeterText } from './units.ts';

/** What one slot and several are called. */
export interface SlotNames {
  one: string;
  many: string;
}

const VALUES: readonly [number, string][] = [
  [2, 'half'],
  [1, 'quarter'],
  [1 / 2, 'eighth'],
  [1 / 4, 'sixteenth'],
  [1 / 8, 'thirty-second'],
  [1 / 16, 'sixty-fourth'],
  [1 / 32, 'hundred-twenty-eighth'],
];
const TUPLETS: Record<number, string> = { 3: 'triplet', 5: 'quintuplet', 6: 'sextuplet', 7: 'septuplet' };

const plural = (one: string): SlotNames => ({ one, many: one === 'half' ? 'halves' : `${one}s` });

/**
 * What the trade calls the slots of a grid.
 * @example
 * slotNames('4/4', 4).many // → 'sixteenths'
 */
export function slotNames(meter: MeterText, grid: Grid): SlotNames {
  const quarters = slotTicks(meter, grid) / TICKS_PER_QUARTER;
  const plain = VALUES.find(([value]) => value === quarters);
  if (plain) return plural(plain[1]);
  const dotted = VALUES.find(([value]) => value * 1.5 === quarters);
  if (dotted && (meterOf(meter).compound || grid === 1)) return plural(`dotted ${dotted[1]}`);
  return plural(TUPLETS[grid] ?? 'slot');
}
