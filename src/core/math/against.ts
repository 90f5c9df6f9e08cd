import { whole } from '../check.ts';
import { LIMITS } from '../sticking/types.ts';
import { MAX_GRID, MAX_UPPER, meterOf } from '../time/meter.ts';
import { gcd } from '../time/resolution.ts';
import type { Grid, MeterText, SlotIndex } from '../time/units.ts';

/** Two even rows over one stretch. */
export interface Against {
  /** Slots of the coarsest grid that holds both. */
  slots: number;
  first: SlotIndex[];
  second: SlotIndex[];
  /** Where something sounds. */
  onsets: SlotIndex[];
}

const row = (count: number, slots: number): SlotIndex[] => Array.from({ length: count }, (_, i) => (i * slots) / count);

/**
 * So many against so many, on the coarsest grid that holds both. Throws RangeError for what is no whole number from 1 to
 * the slots that a bar may have.
 * @example
 * against(4, 3).onsets // → [0, 3, 4, 6, 8, 9]
 */
export function against(a: number, b: number): Against {
  whole('a', a, 1, LIMITS.barSlots);
  whole('b', b, 1, LIMITS.barSlots);
  const slots = (a * b) / gcd(a, b);
  const [first, second] = [row(a, slots), row(b, slots)];
  const onsets = [...new Set([...first, ...second])].sort((x, y) => x - y);
  return { slots, first, second, onsets };
}

/**
 * Two against each other as one sticking line, the first by the right hand, the second by the left.
 * @example
 * againstText(3, 2) // → 'R+L - R L R -'
 */
export function againstText(a: number, b: number): string {
  const { slots, first, second } = against(a, b);
  const chord = (slot: SlotIndex): string =>
    [first.includes(slot) && 'R', second.includes(slot) && 'L'].filter(Boolean).join('+') || '-';
  return Array.from({ length: slots }, (_, slot) => chord(slot)).join(' ');
}

/** A bar of equal beats that holds so many slots. */
export interface EvenBar {
  meter: MeterText;
  grid: Grid;
}

/**
 * A bar of so many quarter beats that holds the slots, or nothing where the slots a beat are no whole number from 1 to 8
 * or the beats more than 15.
 * @example
 * barOfBeats(12, 3) // → { meter: '3/4', grid: 4 }
 * barOfBeats(18, 2) // → undefined
 */
export function barOfBeats(slots: number, beats: number): EvenBar | undefined {
  whole('slots', slots, 1);
  whole('beats', beats, 1);
  const grid = slots / beats;
  const fits = Number.isInteger(grid) && grid <= MAX_GRID && beats <= MAX_UPPER;
  return fits ? { meter: meterOf(`${beats}/4`).text, grid } : undefined;
}

/**
 * The bars of equal beats that hold so many slots exactly, those of four slots a beat first, then of two, three and the
 * rest; a bar of eighths last.
 * @example
 * evenBars(8)[0] // → { meter: '2/4', grid: 4 }
 * evenBars(13) // → [{ meter: '13/8', grid: 1 }]
 */
export function evenBars(slots: number): EvenBar[] {
  whole('slots', slots, 1);
  const bars = [4, 2, 3, 6, 8, 5, 7].map((grid) => slots % grid === 0 && barOfBeats(slots, slots / grid));
  const eighths = slots <= MAX_UPPER ? [barOfEighths(slots)] : [];
  return [...bars.filter((bar) => bar !== false && bar !== undefined), ...eighths];
}

/** In 6/8, 9/8 and 12/8 three eighths are a beat. */
function barOfEighths(slots: number): EvenBar {
  const { text, compound } = meterOf(`${slots}/8`);
  return { meter: text, grid: compound ? 3 : 1 };
}
