/** Reading the fields of a sum: text in, a value out, or a sentence on why it cannot stand there. */
import { countSyllables, meterOf, readMeter, slotsOf } from '../core/index.ts';
import type { Grid, MeterText, Result } from '../core/index.ts';
import type { RulerSaid } from '../words/bar-math-answers.ts';
import { numberSays, tooLongSays, wholeSays } from '../words/bar-math.ts';
import { asSentence } from '../words/grammar.ts';
import { COUNTING } from '../words/site.ts';
import { IN_WORKER, MOST_ROWS, MOST_TYPED, MOST_USES, strokeCounter, type WorkLimits } from './limits.ts';
import type { FieldFault, Inputs } from './types.ts';

/** What can be read of a sum's fields; each that cannot is noted, and gives undefined. */
export interface Reading {
  faults: Record<string, FieldFault>;
  whole(field: string, from: number, to: number): number | undefined;
  number(field: string, from: number, to: number): number | undefined;
  meter(field: string): MeterText | undefined;
  /** What another reader makes of a field. */
  take<K extends string, T>(field: string, key: K, read: Result<K, T>): T | undefined;
  refuse(field: string, says: string, caret?: string): undefined;
  /** Notes that so many strokes are to be laid; throws TooLarge where they are too many for the limits. */
  lay(strokes: number): void;
}

const WHOLE = /^\d{1,9}$/;
const DECIMAL = /^\d{1,9}(?:[.,]\d{1,9})?$/;

/**
 * The faults of fields that hold more than can be read; undefined where there are none. The field of the cells holds
 * several texts.
 *
 * @example tooLongFaults({ bars: '1'.repeat(5000) }).bars.says // '5,000 characters are too many here: at most 4,096 can stand.'
 */
export function tooLongFaults(inputs: Inputs): Record<string, FieldFault> | undefined {
  const mostIn = (field: string) => (field === 'cells' ? MOST_ROWS * (MOST_TYPED + MOST_USES) : MOST_TYPED);
  const long = Object.entries(inputs).filter(([field, text]) => text.length > mostIn(field));
  if (long.length === 0) return undefined;
  return Object.fromEntries(long.map(([field, text]) => [field, { says: tooLongSays(text.length, mostIn(field)) }]));
}

/** Begins to read the fields of a sum, for an answer within limits. */
export function reading(inputs: Inputs, limits: WorkLimits = IN_WORKER): Reading {
  const faults: Record<string, FieldFault> = {};
  const textOf = (field: string) => (inputs[field] ?? '').trim();
  const refuse = (field: string, says: string, caret?: string): undefined => {
    faults[field] = caret === undefined ? { says } : { says, caret };
  };
  const within = (field: string, form: RegExp, from: number, to: number, says: typeof wholeSays) => {
    const value = Number(textOf(field).replace(',', '.'));
    if (form.test(textOf(field)) && value >= from && value <= to) return value;
    return refuse(field, says(textOf(field), from, to));
  };
  return {
    faults,
    refuse,
    whole: (field, from, to) => within(field, WHOLE, from, to, wholeSays),
    number: (field, from, to) => within(field, DECIMAL, from, to, numberSays),
    meter: (field) => {
      const read = readMeter(textOf(field));
      return read.ok ? read.meter.text : refuse(field, asSentence(read.fault.message));
    },
    take: (field, key, read) => (read.ok ? read[key] : refuse(field, asSentence(read.fault.message))),
    lay: strokeCounter(limits),
  };
}

/** Slots a beat, 1 to 8. */
export const GRIDS = [1, 2, 3, 4, 5, 6, 7, 8] as const;

/** Whether a meter's tempo is of dotted quarters. */
export const isCompound = (meter: MeterText): boolean => meterOf(meter).compound;

/** A meter and a grid as an answer speaks of them. */
export function rulerSaid(meter: MeterText, grid: Grid, bars: number): RulerSaid {
  return { meter, grid, bars, barSlots: slotsOf(meter, grid) };
}

/** What is counted on each slot of a bar. */
export const countsOf = ({ meter, grid }: RulerSaid): string[] => countSyllables(meter, grid, COUNTING);
