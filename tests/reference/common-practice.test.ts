/** Sums that every drum teacher knows: common practice, no source. */
import { describe, expect, it } from 'vitest';
import {
  cellStarts,
  countName,
  fit,
  handSpeed,
  hands,
  resolution,
  sameSpeed,
  secondsAt,
  slotMs,
} from '../../src/core/index.ts';
import { claimOf } from '../../src/words/proof.ts';
import { phraseOf, refusalOf, timelineOf } from '../helpers/phrases.ts';

const in44 = { meter: '4/4', grid: 4 };
const FLAM_DRAG = '>lR LL R';
const RLL = 'R L L';
const drags = (n: number): string => `{${FLAM_DRAG}}${n}`;

describe(`${claimOf('bars-add-up')} A flam drag takes three slots`, () => {
  it('and in a bar of 16 five of them leave 1, the a of 4', () => {
    expect(refusalOf(drags(5), in44)).toContain('15 of 16');
    const { times, left, from } = fit(3, 16);
    expect([times, left, countName('4/4', 4, from)]).toEqual([5, 1, '4 a']);
  });
  it('and four leave 4', () => expect(refusalOf(drags(4), in44)).toContain('12 of 16'));
  it('and two, four singles and two fill it', () => {
    expect(phraseOf(`${drags(2)} R L R L ${drags(2)}`, in44).bars).toHaveLength(1);
  });
  it('and four with one flam make 13; two singles more, and the next stroke is the a of 4', () => {
    expect(refusalOf(`${drags(4)} >rL`, in44)).toContain('13 of 16');
    const bar = timelineOf(`${drags(4)} >rL R L >R@crash+K`, in44);
    expect(bar.strokes.slice(-6).map((s) => `${s.limb} ${s.count}`)).toEqual([
      'R 4', 'L 4', 'R 4 e', 'L 4 &', 'R 4 a', 'K 4 a',
    ]); // prettier-ignore
  });
  it('and two with a kick or a flam are seven; twice that leaves 2 of 16', () => {
    expect(refusalOf(`${drags(2)} K ${drags(2)} lR`, in44)).toContain('14 of 16');
    expect(fit(7, 16)).toMatchObject({ times: 2, left: 2 });
  });
  it('and three, two R L L and a kick make 16', () => {
    expect(phraseOf(`K ${FLAM_DRAG} ${RLL} ${FLAM_DRAG} ${RLL} ${FLAM_DRAG}`, in44).slots).toHaveLength(16);
  });
  it('and five on sixteenths start on 1, 1 a, 2 &, 3 e and 4; the last single is the a of 4', () => {
    const bar = timelineOf(`${drags(5)} L`, in44);
    expect(bar.cells.map((c) => c.count)).toEqual(['1', '1 a', '2 &', '3 e', '4', '4 a']);
  });
});

describe('a doubled kick in one sixteenth', () => {
  it('is two thirty-seconds', () => {
    const { strokes } = timelineOf('KK', { meter: '1/4', grid: 4, fill: 'rests' });
    expect(strokes.map((s) => [s.tick, s.length])).toEqual([
      [0, 2520],
      [2520, 2520],
    ]);
  });
});

describe('the sixty orders of a kick, three flam drags and two R L L', () => {
  const orders = permutations(['K', FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, RLL, RLL]);
  const lefts = (cells: string[]): number => {
    const bar = timelineOf(
      cells.map((text) => ({ id: text, text })),
      in44,
    );
    return hands(bar, 60).limbs.L!.longestRunWithGraces!.length;
  };

  it('all fill the bar', () => expect(orders.every((o) => phraseOf(o.join(' '), in44).slots.length === 16)).toBe(true));
  it('are 6! / (3! 2! 1!)', () => expect(orders).toHaveLength(60));
  it('ask one hand for three in a row, grace notes counted, in 54 and not in 6', () => {
    expect(orders.filter((o) => lefts(o) >= 3)).toHaveLength(54);
    expect(orders.filter((o) => lefts(o) < 3)).toHaveLength(6);
  });
});

/** Every different order of a list. */
function permutations(cells: string[]): string[][] {
  if (cells.length === 0) return [[]];
  return [...new Set(cells)].flatMap((first) => {
    const rest = [...cells];
    rest.splice(rest.indexOf(first), 1);
    return permutations(rest).map((order) => [first, ...order]);
  });
}

describe(claimOf('resolves'), () => {
  it.each([
    [3, 16, 3, 16],
    [5, 16, 5, 16],
    [6, 16, 3, 8],
    [7, 16, 7, 16],
    [10, 16, 5, 8],
    [9, 12, 3, 4],
    [3, 12, 1, 4],
  ])('%i over %i after %i bars and %i cells', (cell, bar, bars, cells) => {
    expect(resolution(cell, bar)).toEqual({ bars, cells });
    expect(cellStarts(cell, bar)).toHaveLength(cells);
  });

  it('as the cell laid end to end does', () => {
    expect(phraseOf(drags(16), in44).bars).toHaveLength(3);
    expect(phraseOf('{>R L R L L}16', in44).bars).toHaveLength(5);
  });
});

describe('a tempo', () => {
  it('of 120 in sixteenths moves the hands as 160 in triplets does', () => {
    const slot = (grid: number, bpm: number): number =>
      secondsAt(timelineOf('R', { meter: '1/4', grid, fill: 'rests' }), { bpm })(20160 / grid);
    expect(slot(4, 120)).toBeCloseTo(slot(3, 160), 12);
    expect(sameSpeed(120, 4, 3)).toBe(160);
    expect(slotMs('4/4', 3, 160)).toBe(slotMs('4/4', 4, 120));
  });

  it('of 120 in single sixteenths gives each hand four strokes a second', () => {
    expect(handSpeed('singles', slotMs('4/4', 4, 120)).strokes).toBe(4);
  });
});
