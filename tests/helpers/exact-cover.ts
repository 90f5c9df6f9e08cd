import { DancingLinks } from 'dancing-links';
import type { ArrangeCell } from '../../src/core/index.ts';

/**
 * Every order of cells that fills the slots, listed as exact covers by the dancing-links package: a column is a slot, a row
 * a cell begun on a slot. A cell of exact uses is so many cells, each of which must be used once, so that a solution is
 * found once for each way of telling them apart.
 */
export function exactCovers(cells: readonly ArrangeCell[], slots: number): string[][] {
  const once = cells.flatMap((cell) => Array.from({ length: copies(cell) }, () => cell));
  const free = cells.filter((cell) => cell.times === undefined);
  if (slots + once.length === 0) return [[]];
  const solver = new DancingLinks<string>().createSolver({ columns: slots + once.length });
  const add = (cell: ArrangeCell, copy: number[]): void => {
    for (let slot = 0; slot + cell.slots <= slots; slot += 1)
      solver.addSparseConstraint(cell.id, [...Array.from({ length: cell.slots }, (_, i) => slot + i), ...copy]);
  };
  free.forEach((cell) => add(cell, []));
  once.forEach((cell, i) => add(cell, [slots + i]));
  try {
    return solver.findAll().map((solution) => solution.map(({ data }) => data));
  } catch (thrown) {
    // It refuses a problem without any row, which has no solution.
    if (String(thrown).includes('constraint')) return [];
    throw thrown;
  }
}

const copies = ({ times }: ArrangeCell): number => {
  if (typeof times === 'object') throw new RangeError('an exact cover knows no limits of uses');
  return times ?? 0;
};

/** How many orders there are by exact covers: copies of a cell are not told apart. */
export function countExactCovers(cells: readonly ArrangeCell[], slots: number): bigint {
  const alike = cells.reduce((product, cell) => product * factorial(copies(cell)), 1n);
  return BigInt(exactCovers(cells, slots).length) / alike;
}

const factorial = (n: number): bigint => (n < 2 ? 1n : BigInt(n) * factorial(n - 1));
