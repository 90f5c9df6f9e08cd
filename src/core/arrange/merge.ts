/** Memories before they are merged: `next` has a row of cells for each. */
export interface Table {
  readonly cells: number;
  readonly next: number[];
  readonly closes: boolean[];
}

/**
 * Puts together all memories after which the same cells may follow, for ever (Moore's reduction of a machine, 1956). What
 * no cell can bring to an end any more counts as forbidden.
 */
export function mergeAlike(table: Table): Table {
  const { cells } = table;
  const size = table.closes.length;
  const classes = classesOf(table);
  // The last class is that of the sink: what is forbidden, and all that leads nowhere else.
  const numbers = new Map<number, number>();
  const members: number[] = [];
  for (let memory = 0; memory < size; memory += 1) {
    const own = classes[memory];
    const leadsOn = memory === 0 || own !== classes[size];
    if (leadsOn && !numbers.has(own)) numbers.set(own, members.push(memory) - 1);
  }
  const next = members.flatMap((memory) =>
    table.next.slice(memory * cells, (memory + 1) * cells).map((to) => (to < 0 ? -1 : merged(classes[to]))),
  );
  function merged(own: number): number {
    return own === classes[size] ? -1 : numbers.get(own)!;
  }
  return { cells, next, closes: members.map((memory) => table.closes[memory]) };
}

/** The class of each memory and, at the end, of the sink; split until no cell tells two of a class apart. */
function classesOf({ cells, next, closes }: Table): Int32Array {
  const size = closes.length;
  let classes = new Int32Array(size + 1);
  closes.forEach((closing, memory) => (classes[memory] = closing ? 1 : 0));
  for (let known = 0, count = 2; count !== known;) {
    known = count;
    const before = classes;
    for (let cell = 0; cell < cells; cell += 1) {
      const numbers = new Map<number, number>();
      const split = new Int32Array(size + 1);
      for (let memory = 0; memory <= size; memory += 1) {
        const to = memory < size ? next[memory * cells + cell] : -1;
        const key = classes[memory] * (size + 2) + before[to < 0 ? size : to];
        let own = numbers.get(key);
        if (own === undefined) numbers.set(key, (own = numbers.size));
        split[memory] = own;
      }
      classes = split;
      count = numbers.size;
    }
  }
  return classes;
}
