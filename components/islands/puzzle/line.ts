/** Lists of cells, changed by one: what is given in stays as it is. */

/** With one item moved to another place. */
export function moved<T>(list: readonly T[], from: number, to: number): T[] {
  const rest = list.filter((_, index) => index !== from);
  return [...rest.slice(0, to), list[from], ...rest.slice(to)];
}

/** Without one item. */
export const without = <T>(list: readonly T[], index: number): T[] => list.filter((_, i) => i !== index);

/** With one item more, before the one that is at an index now. */
export const inserted = <T>(list: readonly T[], index: number, item: T): T[] => [
  ...list.slice(0, index),
  item,
  ...list.slice(index),
];

/** The slots at which cells start, and where the last ends. */
export function edgesOf(cells: readonly { slots: number }[], from = 0): number[] {
  const edges = [from];
  for (const { slots } of cells) edges.push(edges[edges.length - 1] + slots);
  return edges;
}

/**
 * Between which cells a place on the ruler lies, told as the index a new one would have: the nearest edge.
 *
 * @example edgeNearest([0, 3, 6], 4) // 1
 */
export function edgeNearest(edges: readonly number[], slot: number): number {
  const distances = edges.map((edge) => Math.abs(edge - slot));
  return distances.indexOf(Math.min(...distances));
}
