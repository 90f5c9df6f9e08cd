import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { makePuzzle, PUZZLE_KINDS } from '../../../src/core/index.ts';

/** The puzzles 1 to 60 of a kind as one short text. */
function digestOf(kind: (typeof PUZZLE_KINDS)[number]): string {
  const hash = createHash('sha256');
  for (let seed = 1; seed <= 60; seed += 1) {
    // How hard it is said to be may be measured better one day.
    const { difficulty: _, ...puzzle } = makePuzzle(kind, seed);
    hash.update(JSON.stringify(puzzle));
  }
  return hash.digest('hex').slice(0, 16);
}

/** An address that was sent leads to the same puzzle for ever: where one of these changes, it is a new version. */
test('the puzzles of version 1 are what they were', () => {
  expect(Object.fromEntries(PUZZLE_KINDS.map((kind) => [kind, digestOf(kind)]))).toEqual({
    fill: 'bff88ac906cf16d1',
    missing: '47b3f39925e04a33',
    start: '1aa474f1cb3be02d',
    fix: '2faca06fe6d4abeb',
    ear: '3793bf354a69b779',
    resolves: '707e5cb89d1cc5a4',
    which: 'a37d41e69d389da1',
  });
});
