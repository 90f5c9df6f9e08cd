/** A sheet as it stands in its address: `?x=flam-drag-slow,rll-three&title=Week+3&counts=off&paper=letter`. */

/** Sizes of paper. */
export type Paper = 'a4' | 'letter';

/** What is on a sheet, and how. */
export interface Sheet {
  /** Ids of exercises, in order, each once. */
  ids: string[];
  title: string;
  counts: boolean;
  paper: Paper;
}

/** What an address asks for, and what cannot be had. */
export interface SheetRead {
  sheet: Sheet;
  /** Ids of exercises that are not there. */
  unknown: string[];
  /** How many there were beyond the most a sheet takes. */
  beyond: number;
}

/** A sheet takes so many exercises. */
export const MOST = 30;
/** Programs that pass addresses on cut longer ones; common practice. */
export const LONGEST_ADDRESS = 2000;
/** A longer title does not stand in a heading. */
export const LONGEST_TITLE = 300;

/**
 * Reads a sheet from an address; never throws, whatever stands there.
 *
 * @example readSheet('?x=a,b,q&counts=off', (id) => id < 'm').sheet.ids // ['a', 'b']
 */
export function readSheet(search: string, isKnown: (id: string) => boolean): SheetRead {
  const given = new URLSearchParams(search);
  const asked = given.getAll('x').flatMap((ids) => ids.split(','));
  const all = [...new Set(asked.map((id) => id.trim()).filter(Boolean))];
  const ids = all.filter(isKnown);
  const sheet: Sheet = {
    ids: ids.slice(0, MOST),
    title: (given.get('title') ?? '').slice(0, LONGEST_TITLE),
    counts: given.get('counts') !== 'off',
    paper: given.get('paper') === 'letter' ? 'letter' : 'a4',
  };
  return { sheet, unknown: all.filter((id) => !isKnown(id)), beyond: Math.max(0, ids.length - MOST) };
}

/**
 * Writes a sheet as the query of its address; what is as usual is left out.
 *
 * @example printSheet({ ids: ['a', 'b'], title: '', counts: false, paper: 'a4' }) // '?x=a,b&counts=off'
 */
export function printSheet({ ids, title, counts, paper }: Sheet): string {
  const titled = title.trim() && new URLSearchParams({ title: title.trim() }).toString();
  const parts = [
    ids.length ? `x=${ids.join(',')}` : '',
    titled,
    counts ? '' : 'counts=off',
    paper === 'letter' ? 'paper=letter' : '',
  ].filter(Boolean);
  return parts.length ? `?${parts.join('&')}` : '';
}

/**
 * The list with one id a place further up (-1) or down (1); the same where there is no such place.
 *
 * @example moved(['a', 'b', 'c'], 'b', -1) // ['b', 'a', 'c']
 */
export function moved(ids: readonly string[], id: string, by: -1 | 1): string[] {
  const from = ids.indexOf(id);
  const to = from + by;
  if (from < 0 || to < 0 || to >= ids.length) return [...ids];
  const others = ids.filter((one) => one !== id);
  return [...others.slice(0, to), id, ...others.slice(to)];
}

/** Steps a teacher would write, in beats a minute. */
const STEPS = [5, 10, 20, 25, 50] as const;
/** For a stretch so short that larger steps would say nothing; both in beats a minute. */
const SHORT = { stretch: 10, step: 2 } as const;

/**
 * Tempos to fill in, from the first to the goal in even steps; the goal is always the last one, so the last step may be
 * shorter. At most `most` of them.
 *
 * @example tempoBoxes({ from: 50, to: 90 }, 10) // [50, 55, 60, 65, 70, 75, 80, 85, 90]
 */
export function tempoBoxes({ from, to }: { from: number; to: number }, most = 10): number[] {
  const short = to - from <= SHORT.stretch && Math.ceil((to - from) / SHORT.step) < most;
  const usual = STEPS.find((one) => Math.ceil((to - from) / one) < most) ?? Math.ceil((to - from) / (most - 1));
  const step = short ? SHORT.step : usual;
  const count = Math.ceil((to - from) / step);
  return Array.from({ length: count + 1 }, (_, index) => Math.min(to, from + index * step));
}
