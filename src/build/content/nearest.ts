/** How many letters must be put in, left out, changed or swapped with their neighbor to make one word of another. */
function distance(from: string, to: string): number {
  const rows = [Array.from({ length: to.length + 1 }, (_, index) => index)];
  for (let at = 1; at <= from.length; at += 1) rows.push(nextRow(from, to, at, rows));
  return rows[from.length][to.length];
}

function nextRow(from: string, to: string, at: number, rows: readonly number[][]): number[] {
  const [above, before] = [rows[at - 1], rows[at - 2]];
  const row = [at];
  for (let index = 1; index <= to.length; index += 1) {
    const change = above[index - 1] + (from[at - 1] === to[index - 1] ? 0 : 1);
    const swapped = from[at - 1] === to[index - 2] && from[at - 2] === to[index - 1];
    row.push(Math.min(change, above[index] + 1, row[index - 1] + 1, swapped ? before[index - 2] + 1 : Infinity));
  }
  return row;
}

/**
 * The known name that is most like a word, if one is like enough to have been meant.
 *
 * @example `nearest('flam-drga', ['flam', 'flam-drag'])` is `'flam-drag'`
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  // In a word of two letters any slip makes another word.
  const limit = Math.floor(Math.min(word.length, 60) / 3);
  const ranked = [...known]
    .map((name) => ({ name, steps: distance(word.slice(0, 60).toLowerCase(), name.toLowerCase()) }))
    .sort((a, b) => a.steps - b.steps || (a.name < b.name ? -1 : 1));
  return ranked[0] && ranked[0].steps <= limit ? ranked[0].name : undefined;
}

/** Shorter words are part of too many names. */
const SHORTEST_PART = 3;

/** Names that have all the parts of a word, between hyphens, or whose parts the word has. */
function kin(word: string, names: readonly string[]): string[] {
  const partsOf = (name: string) =>
    name
      .toLowerCase()
      .split('-')
      .filter((part) => part !== '');
  const has = (all: readonly string[], some: readonly string[]) => some.every((part) => all.includes(part));
  const own = partsOf(word);
  if (word.length < SHORTEST_PART) return [];
  return names.filter(
    (name) => has(partsOf(name), own) || has(own, partsOf(name)) || name.includes(word.toLowerCase()),
  );
}

/** A hint for a name that is not known: the nearest one, those that share its parts, or the first few there are. */
export function knownHint(word: string, known: Iterable<string>): string {
  const names = [...known];
  const near = nearest(word, names);
  if (near) return `did you mean "${near}"?`;
  const alike = kin(word, names).sort().slice(0, 3);
  if (alike.length) return `did you mean ${alike.map((name) => `"${name}"`).join(' or ')}?`;
  if (names.length === 0) return 'there are none yet';
  const few = [...names].sort().slice(0, 12);
  return `there are: ${few.join(', ')}${few.length < names.length ? ', …' : ''}`;
}
