/**
 * Bar arithmetic against the outside: G. Toussaint, The Euclidean Algorithm Generates Traditional Musical Rhythms (BRIDGES
 * 2005; its table as two printings of it have it), and the package euclidean-rhythms, which follows that paper. Two
 * against each other were computed by hand; what every drum teacher knows is in common-practice.test.ts.
 */
import { getPattern } from 'euclidean-rhythms';
import { describe, expect, it } from 'vitest';
import { against, spread, turned } from '../../src/core/index.ts';
import { claimOf } from '../../src/words/proof.ts';

const slotsOfText = (text: string): number[] => [...text].flatMap((mark, slot) => (mark === 'x' ? [slot] : []));
const allTurns = (onsets: number[], slots: number): string[] =>
  Array.from({ length: slots }, (_, by) => turned(onsets, slots, by).join());

describe(`${claimOf('even-spreads')} Up to where the bar begins`, () => {
  // E(5,16) is misprinted with 17 symbols in both printings; its gaps are 3 3 3 3 4.
  it.each([['x..x..x.'], ['x.xx.xx.'], ['x.xx.x.xx.x.'], ['x.x.x.x..'], ['x..x.x..x.x.'], ['x..x..x..x..x...']])(
    '%s of the paper',
    (text) => {
      const onsets = slotsOfText(text);
      expect(allTurns(onsets, text.length)).toContain(spread(onsets.length, text.length).join());
    },
  );

  it('agree with euclidean-rhythms for all accents in 2 to 32 slots', () => {
    for (let slots = 2; slots <= 32; slots += 1)
      for (let accents = 1; accents <= slots; accents += 1) {
        const theirs = getPattern(accents, slots).flatMap((on: number, slot: number) => (on ? [slot] : []));
        expect(allTurns(theirs, slots)).toContain(spread(accents, slots).join());
      }
  });
});

describe(claimOf('polyrhythms'), () => {
  it.each([
    [4, 3, 12, [0, 3, 4, 6, 8, 9]],
    [5, 4, 20, [0, 4, 5, 8, 10, 12, 15, 16]],
    [3, 2, 6, [0, 2, 3, 4]],
  ])('%i:%i on %i', (a, b, slots, onsets) => expect(against(a, b)).toMatchObject({ slots, onsets }));
});
