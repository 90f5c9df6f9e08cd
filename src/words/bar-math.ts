/** What the calculators of the bar say: their names, their fields, and why something cannot be counted. */
import { inSentence, sayBars } from './grammar.ts';
import { figures, many } from './numbers.ts';

/** The page. */
export const BAR_MATH_PAGE = sayBars({
  title: 'Bar math',
  description:
    'Seven sums a drummer does in the head, drawn on a ruler: what fits a bar, where it resolves, how fast it is.',
  idea: 'Seven sums a drummer does in the head. Each is drawn on the ruler, and the address keeps what you asked.',
  contents: 'The seven',
  taught: 'The lesson on it:',
  unknown: 'There is no sum called “{name}” here. These are the seven there are.',
  without:
    'Here is one of them worked out. To put in your own, the page needs JavaScript, which is off or did not load.',
});

/** The seven, by the name each has in the address; in the order of the page. */
const SUMS = {
  fit: {
    title: 'Does it fit?',
    does: 'Lay a cell into a bar as often as it goes. See what is left, on which count, and what could stand there.',
  },
  resolve: {
    title: 'Where does it resolve?',
    does: 'Play a cell end to end and let the bars pass under it. It starts on another count each time, until it is home.',
  },
  count: {
    title: 'What count is it?',
    does: 'From the number of a slot to its count and back; and where you end if you start there.',
  },
  speed: {
    title: 'How fast is that?',
    does: 'What a tempo asks of one hand, how long a slot lasts, and where the same hands end up on another subdivision.',
  },
  orders: {
    title: 'How many orders?',
    does: 'Take a few cells and fill the bar with them: how many bars that makes, how many keep to your rules, which of them the hands like, and a row of them to practice.',
  },
  spread: {
    title: 'Spread evenly',
    does: 'Put so many accents over so many single strokes, as evenly as whole slots allow, and turn them to begin elsewhere.',
  },
  against: {
    title: 'Two against each other',
    does: 'One hand plays so many, the other so many, in the same time: the coarsest ruler on which both stand.',
  },
};

/** The name of a sum in the address. */
export type SumName = keyof typeof SUMS;

/** Names of fields and of what stands on buttons. */
export const MATH_LABELS = sayBars({
  cell: 'the cell, in letters or its length',
  pick: 'or one of the course',
  picked: 'pick a cell …',
  bars: 'bars',
  meter: 'meter',
  grid: 'subdivision',
  rest: 'in what is left',
  rests: 'nothing',
  slot: 'its number in the bar',
  count: 'the count',
  tick: 'its tick in the bar',
  length: 'so many from there',
  tempo: 'tempo, beats a minute',
  way: 'the hands play',
  flam: 'flam width in ms',
  turns: 'turns a second',
  rebound: 'rebound in ms',
  other: 'the same hands in',
  nth: 'cell',
  uses: 'how often (3, 1-4, any)',
  addCell: 'One cell more',
  takeCell: 'Take it away',
  rules: 'Rules',
  first: 'first cell',
  last: 'last cell',
  any: 'any',
  accents: 'accents on (1, 2 & …)',
  quiet: 'no accent on',
  end: 'last stroke on (4 a)',
  run: 'most in a row by one hand',
  graces: 'grace notes count in a row',
  within: 'no cell over a bar line',
  order: 'number of the order',
  previous: 'The one before',
  next: 'The next one',
  another: 'Any other',
  accentCount: 'accents',
  slots: 'slots',
  turn: 'turned by slots',
  stands: 'written as',
  right: 'right hand',
  left: 'left hand',
  starts: 'Where each cell starts',
  loading: 'Loading …',
  failed: 'This did not load: the connection may be gone. Try it again.',
  counting: 'Counting …',
  countFailed: 'This could not be counted: the connection may be gone. Try it again.',
  countStopped: 'Stopped. Change a field, or count again.',
  stopCounting: 'Stop counting',
  countAgain: 'Count again',
});

/** The labels of the fields. */
export type MathLabels = typeof MATH_LABELS;

/** How the hands share the slots. */
export const HAND_WAYS = [
  { value: 'singles', label: 'R L R L', says: 'single strokes, R L R L' },
  { value: 'doubles', label: 'R R L L', says: 'doubles, R R L L' },
  { value: 'diddles', label: 'RR LL', says: 'a diddle in every slot, RR LL' },
  { value: 'one-hand', label: 'R R R R', says: 'one hand alone, R R R R' },
] as const;

/** The sums in the order of the page, with their names in the address. */
export const BAR_SUMS = Object.entries(SUMS).map(([name, texts]) => ({ name: name as SumName, ...sayBars(texts) }));

/**
 * Why what was typed is no number that can stand in a field.
 *
 * @example wholeSays('1e9', 1, 16) // '“1e9” cannot stand here: a whole number from 1 to 16 can.'
 */
export function wholeSays(typed: string, from: number | bigint, to: number | bigint): string {
  const can = `a whole number from ${figures(from)} to ${figures(to)}`;
  return typed.trim() ? `“${typed.trim()}” cannot stand here: ${can} can.` : `Nothing stands here yet: ${can} can.`;
}

/** The same where the number may have decimals. */
export function numberSays(typed: string, from: number | bigint, to: number | bigint): string {
  return wholeSays(typed, from, to).replace('a whole number', 'a number');
}

/**
 * That a field holds more than can be read.
 *
 * @example tooLongSays(5000, 4096) // '5,000 characters are too many here: at most 4,096 can stand.'
 */
export const tooLongSays = (length: number, most: number): string =>
  `${figures(length)} characters are too many here: at most ${figures(most)} can stand.`;

/** Why a cell, a count and what is to fill the rest cannot stand in their fields. */
export const MATH_FAULTS = {
  cell: 'A cell has no bar lines and no meter of its own here.',
  count: 'Nothing stands here yet: a count such as 4 a, 2 & or 3 can.',
  rest: 'That does not fill what is left; these do.',
};

/**
 * That no slot starts at a tick.
 *
 * @example tickFault('sixteenth', 1, 240) // 'No sixteenth starts there: it is 1 tick after the sixteenth at 240.'
 */
export const tickFault = (slot: string, after: number, start: number): string =>
  `No ${slot} starts there: it is ${after} ${many(after, 'tick')} after the ${slot} at ${start}.`;

/** Why a way of sharing the slots cannot stand there. */
export const wayFault = (typed: string): string => `“${typed}” is none of the ways here.`;

/** What could not be taken from an address. */
export const addressSays = (unknown: readonly string[]): string =>
  unknown.length === 0
    ? ''
    : `The address also names ${inSentence(unknown.map((name) => `“${name}”`))}, which is not asked here; the rest of it is taken.`;

/** Ids of the lessons that teach each sum; those a school has taken out are not named. */
export const LESSONS_ON: Record<SumName, readonly string[]> = {
  fit: ['what-is-left-over', 'bars-that-add-up'],
  resolve: ['the-long-way-round', 'fives-and-sevens'],
  count: ['counting-out-loud', 'ending-on-the-a'],
  speed: ['one-pulse-many-rulers', 'double-strokes'],
  orders: ['sixty-orders', 'which-ones-do-the-hands-like'],
  spread: ['accents-spread-evenly'],
  against: ['three-over-four'],
};

/**
 * Stands beside the sum that asks for speed. The figures: Fujii and others 2009, Neuroscience Letters 459 (its abstract);
 * Azar 2020, Medical Problems of Performing Artists 35(3).
 */
export const SPEED_CAUTION = [
  'A figure is no goal. Five to seven single strokes a second by one hand is usual, and a contest winner’s ten is the work of years (Fujii and others, Neuroscience Letters 459, 2009). The rebound inside a double is far faster, because the stick does it.',
  'In a survey of 831 drummers who chose to answer, 68 in 100 had had trouble in muscles or joints from playing (Azar, Medical Problems of Performing Artists 35(3), 2020). A hard forearm is too fast for today. If it hurts, tingles or goes numb, stop; if that comes back, see a doctor or a physiotherapist who knows musicians, and believe them before this page.',
];
