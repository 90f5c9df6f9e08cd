/**
 * Bar arithmetic against the outside: G. Toussaint, The Euclidean Algorithm Generates Traditional Musical Rhythms (BRIDGES
 * 2005; its table as two printings of it have it), the package euclidean-rhythms, which follows that paper, and what every
 * drum teacher knows (common practice, no source). The rest was computed by hand.
 */
import { getPattern } from 'euclidean-rhythms';
import { describe, expect, it } from 'vitest';
import {
  against,
  cellStarts,
  countName,
  fit,
  handSpeed,
  resolution,
  sameSpeed,
  slotMs,
  spread,
  turned,
} from '../../src/core/index.ts';

const slotsOfText = (text: string): number[] => [...text].flatMap((mark, slot) => (mark === 'x' ? [slot] : []));
const allTurns = (onsets: number[], slots: number): string[] =>
  Array.from({ length: slots }, (_, by) => turned(onsets, slots, by).join());

describe('even spreads, up to a turn', () => {
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

describe('a cell over a bar', () => {
  it.each([
    [3, 16, 3, 16],
    [5, 16, 5, 16],
    [6, 16, 3, 8],
    [7, 16, 7, 16],
    [10, 16, 5, 8],
    [9, 12, 3, 4],
    [3, 12, 1, 4],
  ])('%i over %i comes home after %i bars and %i cells', (cell, bar, bars, cells) => {
    expect(resolution(cell, bar)).toEqual({ bars, cells });
    expect(cellStarts(cell, bar)).toHaveLength(cells);
  });

  it('of three goes into sixteen five times and leaves the a of 4 (common practice)', () => {
    const { times, left, from } = fit(3, 16);
    expect([times, left, countName('4/4', 4, from)]).toEqual([5, 1, '4 a']);
  });

  it('of seven, two flam drags and one more, leaves two (common practice)', () => {
    expect(fit(7, 16)).toMatchObject({ times: 2, left: 2 });
  });
});

describe('two against each other', () => {
  it.each([
    [4, 3, 12, [0, 3, 4, 6, 8, 9]],
    [5, 4, 20, [0, 4, 5, 8, 10, 12, 15, 16]],
    [3, 2, 6, [0, 2, 3, 4]],
  ])('%i:%i on %i', (a, b, slots, onsets) => expect(against(a, b)).toMatchObject({ slots, onsets }));
});

describe('speed', () => {
  it('of sixteenths at 120 is that of triplets at 160', () => {
    expect(sameSpeed(120, 4, 3)).toBe(160);
    expect(slotMs('4/4', 3, 160)).toBe(slotMs('4/4', 4, 120));
  });

  it('of single strokes in sixteenths at 120 is four a second by each hand', () => {
    expect(handSpeed('singles', slotMs('4/4', 4, 120)).strokes).toBe(4);
  });
});
