/** What is said about sheets of exercises, made for paper. */
import { inSentence } from './grammar.ts';

/** Title, description and idea of the page. */
export const SHEET_PAGE = {
  title: 'A sheet for paper',
  description: 'Exercises of your choice on a sheet to print, with name, date and tempos to fill in.',
  idea: 'The exercises you ticked, ready to print.',
  without:
    'Making a sheet needs JavaScript, which is off or did not load. Every exercise can be printed from its own page:',
} as const;

/** Labels of the controls and of the sheet itself. */
export const SHEET = {
  loading: 'Fetching the notation …',
  title: 'Title of the sheet',
  usualTitle: 'Exercises',
  counts: 'counts under the notes',
  paper: 'paper',
  a4: 'A4',
  letter: 'Letter',
  print: 'Print',
  order: 'Order',
  up: 'up',
  down: 'down',
  remove: 'remove',
  none: 'No exercise is on this sheet yet.',
  choose: 'Tick some in the list of exercises',
  add: 'Tick others in the list of exercises',
  name: 'Name',
  date: 'Date',
  tempo: 'Tempo',
  sticking: 'Sticking',
  enough: 'Good enough',
  set: 'This sheet',
  again: 'Try again',
  longAddress:
    'The address of this sheet is longer than 2,000 characters, which some programs cut off. A shorter title or fewer exercises help.',
  longTitle: 'A title has at most 300 characters; the rest is left out.',
} as const;

/** What is said where exercises are ticked. */
export const TICKS = {
  group: 'Exercises for a sheet',
  make: 'Make a sheet',
  none: 'Untick all',
} as const;

/**
 * How many exercises are ticked.
 *
 * @example tickedSays(1, 30) // '1 exercise ticked'
 */
export function tickedSays(count: number, most: number): string {
  const says = `${count} ${count === 1 ? 'exercise' : 'exercises'} ticked`;
  return count > most ? `${says}; a sheet takes the first ${most}` : says;
}

/**
 * The name of a box to tick.
 *
 * @example tickName('Flam drags, slow') // 'For a sheet: Flam drags, slow'
 */
export const tickName = (title: string): string => `For a sheet: ${title}`;

/**
 * Ids that are no exercise's.
 *
 * @example unknownSays(['flam-dragg']) // 'There is no exercise “flam-dragg”; it is left out.'
 */
export function unknownSays(ids: readonly string[]): string {
  const named = ids.slice(0, 5).map((id) => `“${id.length > 40 ? `${id.slice(0, 40)}…` : id}”`);
  const all = ids.length > 5 ? [...named, `${ids.length - 5} more`] : named;
  return `There is no exercise ${inSentence(all, 'or')}; ${ids.length === 1 ? 'it is' : 'they are'} left out.`;
}

/**
 * Exercises beyond the most a sheet takes.
 *
 * @example beyondSays(2, 30) // 'A sheet takes 30 exercises; the last 2 are left out.'
 */
export const beyondSays = (beyond: number, most: number): string =>
  `A sheet takes ${most} exercises; the last ${beyond === 1 ? 'one is' : `${beyond} are`} left out.`;

/**
 * Exercises whose notation did not arrive.
 *
 * @example missingSays(['flam-drag-slow']) // 'The notation of flam-drag-slow did not load: the connection may be gone.'
 */
export const missingSays = (ids: readonly string[]): string =>
  `The notation of ${inSentence(ids)} did not load: the connection may be gone.`;

/**
 * Where an exercise of a sheet went, told to those who do not see the list.
 *
 * @example movedSays('Flam drags, slow', 1, 6) // 'Flam drags, slow: now 2 of 6.'
 */
export const movedSays = (title: string, place: number, of: number): string => `${title}: now ${place + 1} of ${of}.`;

/**
 * That an exercise was taken off a sheet.
 *
 * @example removedSays('Flam drags, slow', 5) // 'Flam drags, slow: removed. The sheet has 5.'
 */
export const removedSays = (title: string, left: number): string =>
  `${title}: removed. The sheet has ${left || 'none'}.`;

/**
 * A button of a list, by what it does and to what.
 *
 * @example doTo('up', 'Flam drags, slow') // 'Flam drags, slow: up'
 */
export const doTo = (what: string, title: string): string => `${title}: ${what}`;
