import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellsOf, mirror, parseSticking, printSticking, slotCount } from '../../src/core/index.ts';
import { nearText, runs, sticking } from '../helpers/arbitrary.ts';
import { stickingOf } from '../helpers/phrases.ts';

describe('sticking text, whatever it is', () => {
  it('is read back from its print as the same sticking', () => {
    fc.assert(
      fc.property(sticking, (s) => {
        expect(parseSticking(printSticking(s))).toEqual({ ok: true, sticking: s });
      }),
      runs(1500),
    );
  });

  it('prints to a normal form, which prints to itself', () => {
    fc.assert(
      fc.property(fc.oneof(nearText, sticking.map(printSticking)), (text) => {
        const read = parseSticking(text);
        const once = read.ok && printSticking(read.sticking);
        return !once || printSticking(stickingOf(once)) === once;
      }),
      runs(2000),
    );
  });

  it('is itself again when mirrored twice', () => {
    fc.assert(
      fc.property(sticking, (s) => {
        expect(mirror(mirror(s))).toEqual(s);
      }),
      runs(1000),
    );
  });

  it('stays legal when mirrored', () => {
    fc.assert(
      fc.property(sticking, (s) => parseSticking(printSticking(mirror(s))).ok),
      runs(1000),
    );
  });

  it('is cut into cells that are legal alone and have its slots', () => {
    fc.assert(
      fc.property(sticking, (s) => {
        const cells = cellsOf(s);
        expect(cells.reduce((sum, cell) => sum + slotCount(cell.hands), 0)).toBe(slotCount(s.hands));
        for (const cell of cells) {
          const alone = parseSticking(printSticking(cell));
          expect(alone, printSticking(cell)).toMatchObject({ ok: true });
        }
      }),
      runs(800),
    );
  });

  it.each([
    ['any text', fc.string({ unit: 'binary', maxLength: 60 })],
    ['letters and signs', fc.string({ unit: 'grapheme', maxLength: 60 })],
    ['text that is nearly right', nearText],
  ])('never throws, and a fault points into it: %s', (_, text) => {
    fc.assert(
      fc.property(text, (t) => {
        const read = parseSticking(t);
        if (read.ok) return true;
        const { at, found, expected, message } = read.fault;
        const inside = at >= 0 && at < Math.max(1, t.length);
        return inside && [found, expected, message].every((part) => part.length > 0);
      }),
      runs(34_000),
    );
  });
});
