/** What is said about exercises: their facts, the list of them, and what it can be narrowed to. */
import { meterOf } from '../core/index.ts';
import { slotNames } from '../core/time/slot-names.ts';
import { inSentence } from './grammar.ts';
import { lessonCount } from './lessons.ts';

/**
 * A cell with its sticking, and its name elsewhere where the school calls it something else.
 *
 * @example cellNameSays({ name: 'ruff ride', elsewhere: 'flam drag', sticking: '>lR LL R' }) // 'ruff ride, elsewhere flam drag (>lR LL R)'
 */
export function cellNameSays({
  name,
  elsewhere,
  sticking,
}: {
  name: string;
  elsewhere?: string;
  sticking: string;
}): string {
  return `${elsewhere ? `${name}, elsewhere ${elsewhere}` : name} (${sticking})`;
}

/** Labels and sentences of the list. */
export const EXERCISE_WORDS = {
  filters: 'Filters',
  any: 'any',
  part: 'Part',
  grid: 'Subdivision',
  meter: 'Meter',
  slots: 'Length',
  cell: 'Made of cells of',
  rudiment: 'Rudiment',
  limb: 'Hands and feet',
  tempo: 'A tempo you can play',
  tempoHelp: 'beats a minute',
  tempoLimits: 'A tempo is a whole number from 30 to 300.',
  with: 'Only with',
  on: 'Where',
  clear: 'Take the filters off',
  none: 'No exercise has all of this at once.',
  oneLess: 'Without one of these there are some:',
  noneLess: 'Taking one of them off is not enough.',
  ofNoLesson: 'Outside the lessons',
  toPart: 'Parts',
  toList: 'To the list',
  nav: 'Exercises before and after this one',
  nextLesson: 'Next lesson',
  itsLesson: 'Its lesson',
  arrowKeys: 'The arrow keys ← and → turn to what stands before and after.',
} as const;

/** What an exercise can have in it. */
export const INGREDIENT_WORDS: Record<string, string> = {
  flams: 'flams',
  drags: 'drags',
  diddles: 'diddles',
  rolls: 'buzz strokes',
  accents: 'accents',
  ghosts: 'ghost notes',
  kicks: 'kicks',
};

/** Who plays an exercise. */
export const PLAYER_WORDS: Record<string, string> = {
  hands: 'hands alone',
  right: 'the right hand alone',
  left: 'the left hand alone',
  feet: 'with feet',
};

/** Where one pad is enough. */
export const ON_PAD = 'one pad is enough';

/**
 * A length in slots.
 *
 * @example slotsLong(12) // '12 slots'
 */
export function slotsLong(slots: number): string {
  return slots === 1 ? 'one slot' : `${slots} slots`;
}

/**
 * How many exercises are shown.
 *
 * @example exerciseCount(34, 251) // '34 of 251 exercises'
 */
export function exerciseCount(shown: number, of: number): string {
  return shown === of ? `${of} exercises` : `${shown} of ${of} exercises`;
}

/**
 * How many lessons and exercises of a part have something in them.
 *
 * @example usesCount(1, 5) // 'one lesson, 5 exercises'
 */
export function usesCount(lessons: number, exercises: number): string {
  const said = [
    lessons > 0 ? lessonCount(lessons) : '',
    exercises === 1 ? 'one exercise' : exercises > 1 ? `${exercises} exercises` : '',
  ];
  return said.filter(Boolean).join(', ');
}

/**
 * Where an exercise stands in the ladder of its lesson.
 *
 * @example exercisePlace(2, 7) // 'Exercise 2 of 7'
 */
export function exercisePlace(place: number, of: number): string {
  return `Exercise ${place} of ${of}`;
}

/**
 * A subdivision by its number and by what the trade calls it in the meters at hand.
 *
 * @example gridSays(3, ['triplets']) // 'triplets, 3 a beat'
 */
export function gridSays(grid: number, names: readonly string[]): string {
  return `${inSentence(names, 'or')}, ${grid} a beat`;
}

/**
 * All the exercises of a part, as a link says it.
 *
 * @example partExercises(28) // 'All 28 exercises of this part'
 */
export function partExercises(count: number): string {
  return count === 1 ? 'The exercise of this part' : `All ${count} exercises of this part`;
}

/**
 * A way out of an empty list.
 *
 * @example withoutChoice('5/4', 12) // 'Without “5/4”: 12'
 */
export function withoutChoice(choice: string, count: number): string {
  return `Without “${choice}”: ${count}`;
}

/** Longer ones are cut: an address may hold anything. */
const LONGEST = 30;

/**
 * What an address asked for in vain; nothing where there is all of it.
 *
 * @example notAmong([{ field: 'Meter', value: '9/4' }])
 * // 'The address asks for meter “9/4”. That is not among the choices here and is left out.'
 */
export function notAmong(asked: readonly { field: string; value: string }[]): string {
  if (!asked.length) return '';
  const each = asked.map(({ field, value }) => `${field.toLowerCase()} “${cut(value)}”`);
  const rest =
    each.length === 1 ? 'That is not among the choices here and is' : 'They are not among the choices here and are';
  return `The address asks for ${inSentence(each)}. ${rest} left out.`;
}

const cut = (value: string): string => (value.length > LONGEST ? `${value.slice(0, LONGEST)} …` : value);

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
 * @example subdivision('4/4', 3) // 'triplets'
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
