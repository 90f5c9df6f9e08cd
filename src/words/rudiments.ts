/** What is said about rudiments, and the ladder of tempos that plays one. */
import { capital, inSentence } from './grammar.ts';

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
  const name = capital(family);
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
 * A row of note values in words; equal neighbors are counted.
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

/** Labels of a rudiment's page. */
export const LADDER = {
  parts: 'Made of',
  wholes: 'Part of',
  leftLead: 'Left lead',
  title: 'Open, closed, open',
  why: 'Begin slower than you need to, go up a step at a time, and turn round at the first step where a stroke goes missing or leans. Then come down the same steps: that is where the hands learn to stay loose.',
  play: 'Play the ladder',
  stop: 'Stop',
  turn: 'Turn round here',
  steps: 'Steps',
  how: 'A step by itself sets the tempo of the player above; while the ladder plays, it goes on from there.',
  failed: 'The ladder did not load: the connection may be gone. Press again to try again.',
  loading: 'Loading the ladder …',
} as const;

/**
 * The whole ladder in a sentence, for who has no script or only paper.
 *
 * @example ladderSays([60, 70, 80], 4) // '60, 70 and 80 beats a minute, and back the same way: the line above 4 times on each step.'
 */
export function ladderSays(tempos: readonly number[], rounds: number, compound = false): string {
  const beats = compound ? 'dotted quarters' : 'beats';
  const list = `${tempos.slice(0, -1).join(', ')} and ${tempos.at(-1)}`;
  return `${list} ${beats} a minute, and back the same way: the line above ${times(rounds)} on each step.`;
}

const times = (rounds: number): string => (rounds === 1 ? 'once' : rounds === 2 ? 'twice' : `${rounds} times`);

/**
 * What one step does, for those who hear its button.
 *
 * @example stepSays(80) // '80 beats a minute'
 */
export const stepSays = (tempo: number, compound = false): string =>
  `${tempo} ${compound ? 'dotted quarters' : 'beats'} a minute`;

/**
 * What the ladder does just now.
 *
 * @example ladderNews({ tempo: 80, falling: false }) // 'Up: 80.'
 */
export function ladderNews(now: { tempo: number; falling: boolean }): string {
  return `${now.falling ? 'Down' : 'Up'}: ${now.tempo}.`;
}

/**
 * Said when a step has set the player's tempo.
 *
 * @example tempoSet(80) // 'The player above is set to 80.'
 */
export const tempoSet = (tempo: number): string => `The player above is set to ${tempo}.`;
