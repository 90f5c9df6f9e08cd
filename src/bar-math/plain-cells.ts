import type { NamedCell } from './types.ts';

/** A whole bar of time is no cell to build with. */
const MOST_SLOTS = 8;

/**
 * The cells that can be laid on a ruler as they are: short ones, on no surface of their own, each text once.
 *
 * @example
 * plainCells(new Map([['rll', { name: 'R L L', sticking: 'R L L' }]])); // [{ id: 'rll', name: 'R L L', text: 'R L L' }]
 */
export function plainCells(cells: ReadonlyMap<string, { name: string; sticking: string }>): NamedCell[] {
  const all = [...cells].map(([id, { name, sticking }]) => ({ id, name, text: sticking }));
  const short = all.filter(({ text }) => !/[@[\n|]/.test(text) && text.split(' ').length <= MOST_SLOTS);
  const named = short.filter(
    ({ text }, i) => /[RLKH]/.test(text) && short.findIndex((cell) => cell.text === text) === i,
  );
  return named.sort((a, b) => a.name.localeCompare(b.name, 'en'));
}
