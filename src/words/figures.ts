/** What is said about exercises and rudiments in figures: tempos, subdivisions, lengths. */
import { meterOf, slotNames } from '../core/index.ts';
import { inSentence } from './labels.ts';

interface Tempo {
  from: number;
  to: number;
}

/**
 * A tempo to start from and one to reach; in compound meters it is the dotted quarter that is counted.
 *
 * @example tempoRange({ from: 50, to: 110 }) // '50 to 110 beats a minute'
 */
export function tempoRange({ from, to }: Tempo, meter?: string): string {
  const beats = meter && meterOf(meter).compound ? 'dotted quarters' : 'beats';
  return `${from} to ${to} ${beats} a minute`;
}

/**
 * What the slots of a beat are called; nothing where a sticking brings its own meter.
 *
 * @example subdivision('4/4', 3) // 'eighth triplets'
 */
export function subdivision(meter: string | undefined, grid: number | undefined): string | undefined {
  return meter && grid ? slotNames(meter, grid).many : undefined;
}

/**
 * The figures of an exercise in a list.
 *
 * @example exerciseFigures({ meter: '4/4', grid: 4, tempo: { from: 50, to: 90 } }) // ['4/4, sixteenths', '50 to 90']
 */
export function exerciseFigures(exercise: {
  meter?: string | undefined;
  grid?: number | undefined;
  tempo: Tempo;
}): string[] {
  const { meter, grid, tempo } = exercise;
  const bar = [meter, subdivision(meter, grid)].filter(Boolean).join(', ');
  return [bar, `${tempo.from} to ${tempo.to}`].filter(Boolean);
}

/**
 * Which main strokes are accented.
 *
 * @example accentsSay([1, 5]) // 'strokes 1 and 5'
 */
export function accentsSay(accents: readonly number[]): string | undefined {
  if (accents.length === 0) return undefined;
  return `${accents.length === 1 ? 'stroke' : 'strokes'} ${inSentence(accents.map(String))}`;
}

/**
 * A length in quarter notes.
 *
 * @example quartersLong(1) // 'a quarter note'
 */
export function quartersLong(quarters: number): string {
  return quarters === 1 ? 'a quarter note' : `${quarters} quarter notes`;
}

/**
 * The name of a family of rudiments, as a heading.
 *
 * @example familyName('flam') // 'Flam rudiments'
 */
export function familyName(family: string): string {
  const name = family.charAt(0).toUpperCase() + family.slice(1);
  return name.endsWith('roll') ? `${name}s` : `${name} rudiments`;
}

interface RudimentSaid {
  number: number;
  name: string;
  family: string;
  hands: string;
}

/** Where a rudiment stands in the trade's list. */
export function rudimentPlace({ number, family }: RudimentSaid): string {
  return `Rudiment ${number} · ${familyName(family)}`;
}

/** A rudiment in a sentence, for other sites. */
export function rudimentDescription({ name, number, hands }: RudimentSaid): string {
  return `${name}, rudiment ${number}: ${hands}, with notation and counts, to read and to play.`;
}

const LENGTHS: Record<string, string> = { 4: 'quarter', 8: 'eighth', 16: 'sixteenth', 32: 'thirty-second' };

/**
 * A row of note values in words; equal neighbours are counted.
 *
 * @example rhythmSays('8t 16t 16t 8t') // 'triplet eighth, 2 triplet sixteenths, triplet eighth'
 */
export function rhythmSays(rhythm: string): string {
  return runsOf(rhythm.split(' '))
    .map(({ value, count }) => lengthSays(value, count))
    .join(', ');
}

function lengthSays(value: string, count: number): string {
  const name = LENGTHS[value.replace('t', '')] ?? value;
  const whole = value.endsWith('t') ? `triplet ${name}` : name;
  return count > 1 ? `${count} ${whole}s` : whole;
}

function runsOf(values: string[]): { value: string; count: number }[] {
  const runs: { value: string; count: number }[] = [];
  for (const value of values) {
    const last = runs.at(-1);
    if (last?.value === value) last.count += 1;
    else runs.push({ value, count: 1 });
  }
  return runs;
}
