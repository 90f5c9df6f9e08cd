import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findSticking, mirror, slotsOnly, type Sticking } from '../../src/core/index.ts';
import { runs, slots, sticking } from '../helpers/arbitrary.ts';
import { stickingOf } from '../helpers/phrases.ts';

const find = (sought: string, within: string, options = {}): ReturnType<typeof findSticking> =>
  findSticking(stickingOf(sought), stickingOf(within), options);

describe('a sticking found in another', () => {
  it.each([
    ['R L L', '{R L L}4', 0],
    ['L L R', '{R L L}4', 1],
    ['R L L', '>R (L) Lz@tom1', 0],
    ['lR LL R', 'K {>lR LL R}5', 1],
    ['K', 'R K', 1],
    ['R R', '{L R}2 | R L', 3],
  ])('%s in %s', (sought, within, slot) => {
    expect(find(sought, within)).toEqual({ slot, rotation: 0, mirrored: false });
  });

  it.each([
    ['R L L', 'lR L L'],
    ['lR LL R', '>lR L R'],
    ['>R L', 'R L'],
    ['R@floor', 'R'],
    ['R L L', 'R L'],
    ['LL', 'L L'],
    ['R', 'R+K'],
  ])('%s is not in %s', (sought, within) => expect(find(sought, within)).toBeUndefined());

  it('is found turned round and mirrored where that is asked for', () => {
    expect(find('R L L', 'L R R', { mirrored: true })).toEqual({ slot: 0, rotation: 0, mirrored: true });
    expect(find('R L L', 'L L R', { rotated: true })).toEqual({ slot: 0, rotation: 1, mirrored: false });
    expect(find('R L L', 'R R L', { rotated: true })).toBeUndefined();
    expect(find('R L L', 'R R L', { rotated: true, mirrored: true })).toMatchObject({ mirrored: true });
  });

  it('is found across the end of what is played over and over, where that is said', () => {
    expect(find('L R L', 'L R R L')).toBeUndefined();
    expect(find('L L R', 'L R R L', { repeats: true })).toEqual({ slot: 3, rotation: 0, mirrored: false });
    expect(find('R L R', 'R L', { repeats: true })).toBeUndefined();
  });

  it('is looked for in proportion to both lengths, turned or not', () => {
    const from = process.cpuUsage();
    const [sought, within] = ['{R}1023 L', '{{R}1023 K}2'];
    expect(find(sought, within, { rotated: true, mirrored: true, repeats: true })).toBeUndefined();
    expect(process.cpuUsage(from).user / 1000).toBeLessThan(3000);
  });

  it('is found in anything that holds it', () => {
    const bare = (items: ReturnType<typeof slotsOnly>): Sticking => ({ hands: items });
    fc.assert(
      fc.property(slots(3), sticking, slots(2), (before, middle, after) => {
        const line = slotsOnly(middle.hands);
        const whole = [...slotsOnly(before), ...line, ...slotsOnly(after)];
        expect(findSticking(bare(line), bare(whole))).toMatchObject({ mirrored: false });
        expect(findSticking(mirror(bare(line)), bare(whole), { mirrored: true })).toBeDefined();
      }),
      runs(200),
    );
  });
});
