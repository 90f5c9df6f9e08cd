/** The cells of a bar to be, with how often each may be used: `kick*1,flam-drag*3,R L L`. */
import { usesFault } from '../../words/bar-math-orders.ts';
import { MOST_ROWS } from '../limits.ts';
import type { Reading } from '../read.ts';

/** A cell and its uses, as typed. */
export interface Row {
  cell: string;
  uses: string;
}

/**
 * Reads the rows; at least one, however little stands there.
 *
 * @example readRows('kick*1,R L L') // [{ cell: 'kick', uses: '1' }, { cell: 'R L L', uses: '' }]
 */
export function readRows(text: string): Row[] {
  const rows = text.split(',').map((row) => {
    const [cell = '', uses = ''] = row.split('*');
    return { cell: cell.trim(), uses: uses.trim() };
  });
  return rows.slice(0, MOST_ROWS);
}

/** Commas and stars divide rows: in a cell they would be none of its strokes anyway. */
const plain = (text: string): string => text.replace(/[,*]/g, ' ');

/**
 * Writes the rows.
 *
 * @example writeRows([{ cell: 'kick', uses: '1' }, { cell: 'R L L', uses: '' }]) // 'kick*1,R L L'
 */
export function writeRows(rows: readonly Row[]): string {
  return rows.map(({ cell, uses }) => (uses ? `${plain(cell)}*${plain(uses)}` : plain(cell))).join(',');
}

/** How often a cell may be used; undefined is any number of times. */
export type Uses = number | { min: number; max?: number } | undefined;

/** Reads uses: nothing or `any`, `3`, `1-4` or `2+`. */
export function readUses(read: Reading, field: string, typed: string): Uses {
  const [, from = '', dash = '', to = ''] = /^(\d{1,3})\s*([-–+]?)\s*(\d{0,3})$/.exec(typed.trim()) ?? [];
  if (/^(?:any)?$/.test(typed.trim())) return undefined;
  const [min, max] = [Number(from), Number(to)];
  if (from && !dash && !to) return min;
  if (from && dash === '+' && !to) return { min };
  if (from && dash && dash !== '+' && to && min <= max) return { min, max };
  return read.refuse(field, usesFault(typed.trim()));
}
