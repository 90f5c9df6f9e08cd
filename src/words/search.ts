/** What the search says: what was found, where, and what to try where nothing was. */
import { sayBar } from './grammar.ts';

/** What search can be narrowed to; the keys are the values the pages carry. */
export const KINDS = {
  lesson: 'Lessons',
  exercise: 'Exercises',
  rudiment: 'Rudiments',
  term: 'Words',
  page: 'Other pages',
} as const;

/** One of the kinds of page that search knows. */
export type Kind = keyof typeof KINDS;

/** What a page is found as, and what a search can be narrowed to. */
export interface FoundAs {
  kind: Kind;
  part?: number | undefined;
  grid?: number | undefined;
  rudiment?: readonly string[];
}

/**
 * The filters of a page, each with one value; a page about several rudiments has as many.
 *
 * @example filtersOf({ kind: 'lesson', part: 6 }) // [['kind', 'lesson'], ['part', '6']]
 */
export function filtersOf(found: FoundAs): [filter: string, value: string][] {
  return Object.entries(found).flatMap(([filter, value]) =>
    [value ?? []].flat().map((one): [string, string] => [filter, String(one)]),
  );
}

/** What a result is. */
export const FOUND_AS: Readonly<Record<string, string>> = {
  lesson: 'Lesson',
  exercise: 'Exercise',
  rudiment: 'Rudiment',
  term: 'Word',
  cell: 'Cell, in an exercise',
  page: 'Page',
};

/** What a search can be narrowed to: pages, and cells, which only a sticking finds. */
export const SEARCH_KINDS = { ...KINDS, cell: 'Cells' };

/** What only a sticking finds, and what none finds. */
export const STICKING_KINDS = ['lesson', 'exercise', 'rudiment', 'cell'];

/** The sentences of the search that no page shares. */
export const SEARCH_WORDS = {
  field: 'Word or sticking',
  find: 'Find',
  narrow: 'Narrow it down',
  start: 'Type a word, or a sticking with a space between the slots: R L L',
  looking: 'Looking …',
  slow: 'Still looking: the index is slow to arrive.',
  offline: 'You are offline, and the search index is not on this device yet.',
  failed: 'The search index did not load. That can be the connection, or it is missing from this copy of the site.',
  again: 'Try again',
  turned: 'In any rotation',
  turnedHelp: 'from any of its slots on, over the end to the beginning',
  rudiment: 'Rudiment',
  noWords: 'Nothing has that in it.',
  noSticking: 'Nothing here has that in it, by either hand.',
  noStickingTurned: 'Nothing here has that in it, by either hand, in any rotation.',
  tryTurned: 'Look for it in any rotation',
  tryOpen: 'Take the filters off',
  tryShorter: 'Fewer slots find more: two or three are often enough. Accents and grace notes are looked for as typed.',
  tryWord: 'Try one word instead of two, or the trade’s word for it: “flam”, “triplet”, “lead”.',
  elsewhere: 'These lists hold everything there is to find:',
  results: 'Results',
} as const;

/** Where a sticking was found, as the search hands it over. */
export interface FoundPlace {
  whole: boolean;
  figure: number;
  figures: number;
  cell?: string;
  bar?: number;
  count?: string;
  mirrored: boolean;
  turned: boolean;
}

/**
 * Where a sticking was found, in a sentence.
 *
 * @example
 * foundWhere({ whole: false, figure: 1, figures: 1, count: 'the e of 2', cell: 'R L L', mirrored: true, turned: false })
 * // 'From the e of 2, in the cell “R L L”; the other hand leads.'
 */
export function foundWhere(place: FoundPlace): string {
  const { whole, figure, figures, cell, bar, count, mirrored, turned } = place;
  const where = [
    whole ? (figures > 1 ? 'All of a bar' : 'All of it') : count ? `From ${count}` : 'In it',
    !whole && bar === 0 && 'before bar 1',
    !whole && bar && `in bar ${bar}`,
    figures > 1 && `figure ${figure} of ${figures}`,
    !whole && cell && `in the cell “${cell}”`,
  ];
  const how = [turned && 'turned round', mirrored && 'the other hand leads'].filter(Boolean).join(', ');
  const said = where.filter(Boolean).join(', ');
  return sayBar(how ? `${said}; ${how}.` : `${said}.`);
}

/**
 * How many things were found.
 *
 * @example foundSum(12, 10) // '12 results, the first 10 shown'
 */
export function foundSum(total: number, shown: number): string {
  if (total === 1) return 'One result';
  return shown < total ? `${total} results, the first ${shown} shown` : `${total} results`;
}

/** How a question was taken, as the search hands it over. */
export interface TakenAs {
  sticking?: string;
  because?: string;
  most?: true;
}

/**
 * How a question was taken; nothing where it was plain words.
 *
 * @example takenAs({ sticking: 'R L L' }) // 'Read as the sticking R L L.'
 */
export function takenAs({ sticking, because, most }: TakenAs): string {
  const fault = because && because[0].toLowerCase() + because.slice(1).replace(/\.$/, '');
  return [
    sticking && `Read as the sticking ${sticking}.`,
    fault && `Read as words, because as a sticking it has a fault: ${fault}.`,
    most && 'No page has all of these words. These have all but one:',
  ]
    .filter(Boolean)
    .join(' ');
}

/**
 * The button that takes letters close together for a stroke to each slot.
 *
 * @example otherReading('R L R R') // 'Or a stroke to each slot: R L R R'
 */
export const otherReading = (text: string): string => `Or a stroke to each slot: ${text}`;
