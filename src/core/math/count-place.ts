import { text as checkText, tick as checkTick } from '../check.ts';
import { refuse, type Result } from '../fault.ts';
import { countNames, type CountSystem } from '../time/counts.ts';
import { slotTicks } from '../time/meter.ts';
import type { Grid, MeterText, SlotIndex, Ticks } from '../time/units.ts';

/** "4 and", "4+" and "4n" are ways to type the count that is written 4 &. */
const AND = /^(?:and|\+|n)$/;

/**
 * The slot of a count as a drummer types it: `4 a`, `4a`, `the a of 4`, `beat 4`, `2 and`. A fault says which counts the
 * beat has, or which beats there are.
 * @example
 * slotOfCount('4/4', 4, 'the a of 4') // → { ok: true, slot: 15 }
 * slotOfCount('4/4', 4, '2 trip').fault.message // → 'beat 2 has 2, 2 e, 2 &, 2 a'
 */
export function slotOfCount(
  meter: MeterText,
  grid: Grid,
  text: string,
  system?: CountSystem,
): Result<'slot', SlotIndex> {
  const names = countNames(meter, grid, system);
  checkText('count', text);
  const { beat, syllable } = typedCount(text);
  const slot = names.indexOf(syllable ? `${beat} ${syllable}` : beat);
  if (slot >= 0) return { ok: true, slot };
  const ofBeat = names.filter((name) => name.split(' ')[0] === beat);
  const beats = names.filter((name) => !name.includes(' '));
  const expected = ofBeat.length ? ofBeat.join(', ') : `a beat from 1 to ${beats[beats.length - 1]}`;
  const message = ofBeat.length
    ? `beat ${beat} has ${expected}`
    : `${text.trim() ? `“${text.trim()}”` : 'nothing'} is no count here: the beats are 1 to ${beats[beats.length - 1]}`;
  return refuse(0, text.trim() || 'nothing', expected, message);
}

function typedCount(text: string): { beat: string; syllable: string } {
  const plain = text.trim().toLowerCase();
  const [, ahead = '', after = ''] = /^(?:the\s+)?(\D+)\s+of\s+(\d+)$/.exec(plain) ?? [];
  if (after) return { beat: after, syllable: written(ahead) };
  const [, beat = '', syllable = ''] = /^(?:beat\s+|the\s+)?(\d+)\s*(\D*)$/.exec(plain) ?? [];
  return { beat, syllable: written(syllable) };
}

/** A typed syllable as it is written in a name. */
const written = (typed: string): string => (AND.test(typed) ? '&' : typed.split(/\s+/).join(' '));

/**
 * Several counts, divided by commas.
 * @example
 * slotsOfCounts('4/4', 4, '1, 2 & and 4') // → { ok: true, slots: [0, 6, 12] }
 */
export function slotsOfCounts(
  meter: MeterText,
  grid: Grid,
  text: string,
  system?: CountSystem,
): Result<'slots', SlotIndex[]> {
  countNames(meter, grid, system);
  checkText('counts', text);
  const slots: SlotIndex[] = [];
  for (const part of text.split(/,|\band\s+(?=(?:the|beat|\d))/).filter((typed) => typed.trim())) {
    const read = slotOfCount(meter, grid, part, system);
    if (!read.ok) return read;
    slots.push(read.slot);
  }
  return { ok: true, slots };
}

/** Where a tick of a bar falls. */
export interface TickPlace {
  /** The slot it falls in. */
  slot: SlotIndex;
  /** Ticks after the slot's own. */
  after: Ticks;
}

/**
 * The slot of a tick, counted from the beginning of bar 1.
 * @example
 * slotOfTick('4/4', 4, 75600) // → { slot: 15, after: 0 }
 */
export function slotOfTick(meter: MeterText, grid: Grid, tick: Ticks): TickPlace {
  const length = slotTicks(meter, grid);
  checkTick('tick', tick);
  const slot = Math.floor(tick / length);
  return { slot, after: tick - slot * length };
}
