/** How many letters must be put in, left out or changed to make one word of another. */
function distance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (const [at, letter] of [...from].entries()) {
    const next = [at + 1];
    for (let index = 0; index < to.length; index += 1) {
      const change = row[index] + (letter === to[index] ? 0 : 1);
      next.push(Math.min(change, row[index + 1] + 1, next[index] + 1));
    }
    row = next;
  }
  return row[to.length];
}

/**
 * The known name that is most like a word, if one is like enough to have been meant.
 *
 * @example `nearest('flam-drga', ['flam', 'flam-drag'])` is `'flam-drag'`
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  const limit = Math.max(1, Math.floor(Math.min(word.length, 60) / 3));
  const ranked = [...known]
    .map((name) => ({ name, steps: distance(word.slice(0, 60).toLowerCase(), name.toLowerCase()) }))
    .sort((a, b) => a.steps - b.steps || (a.name < b.name ? -1 : 1));
  return ranked[0] && ranked[0].steps <= limit ? ranked[0].name : undefined;
}

/** A hint for a name that is not known: the nearest one, or the first few there are. */
export function knownHint(word: string, known: Iterable<string>): string {
  const names = [...known];
  const near = nearest(word, names);
  if (near) return `did you mean "${near}"?`;
  if (names.length === 0) return 'there are none yet';
  const few = [...names].sort().slice(0, 12);
  return `there are: ${few.join(', ')}${few.length < names.length ? ', …' : ''}`;
}
