import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countNames, layPhrase, meterOf, perform, slotsOf, slotTicks, type Sticking } from '../../src/core/index.ts';
import { grid, meter, runs, slots } from '../helpers/arbitrary.ts';

/** Bars of any meter and grid, filled exactly. */
const filled = fc
  .record({
    meter,
    grid,
    bars: fc.integer({ min: 1, max: 3 }),
    lead: fc.constantFrom('written', 'left', 'alternating'),
  })
  .chain((how) =>
    slots(slotsOf(how.meter, how.grid) * how.bars).map((hands) => ({ ...how, sticking: { hands } as Sticking })),
  );

describe('phrases of any meter and grid', () => {
  it('have ticks that sum to their bars, or are refused because a slot is split too finely', () => {
    fc.assert(
      fc.property(filled, ({ meter: m, grid: g, bars, lead, sticking }) => {
        const laid = layPhrase({ cells: [{ id: 'a', sticking }], meter: m, grid: g, lead: lead as 'written' });
        if (!laid.ok) {
          expect(laid.fault.message).toContain('cannot be split evenly');
          expect(meterOf(m).lower).toBe(16);
          return;
        }
        const timeline = perform(laid.phrase);
        expect(timeline.ticks).toBe(bars * meterOf(m).barTicks);
        expect(laid.phrase.slots).toHaveLength(bars * slotsOf(m, g));
        expect(timeline.strokes.every((s) => Number.isInteger(s.tick) && Number.isInteger(s.length))).toBe(true);
        expect(new Set(timeline.strokes.map((s) => s.id)).size).toBe(timeline.strokes.length);
      }),
      runs(600),
    );
  });

  it('count every stroke by the syllable of its slot', () => {
    fc.assert(
      fc.property(filled, fc.constantFrom('grace', 'before', 'on'), ({ meter: m, grid: g, sticking }, flams) => {
        const laid = layPhrase({ cells: [{ id: 'a', sticking }], meter: m, grid: g });
        if (!laid.ok) return;
        const names = countNames(m, g);
        const [bar, slot] = [meterOf(m).barTicks, slotTicks(m, g)];
        const strayed = perform(laid.phrase, { flams: flams as 'grace' }).strokes.filter((stroke) => {
          const into = stroke.tick - (stroke.bar - 1) * bar - stroke.slot * slot;
          return stroke.count !== names[stroke.slot] || into < 0 || into >= slot;
        });
        expect(strayed).toEqual([]);
      }),
      runs(400),
    );
  });

  it('are refused with the slot where they stop when slots are missing', () => {
    fc.assert(
      fc.property(filled, fc.nat(), ({ meter: m, grid: g, sticking }, cut) => {
        const kept = sticking.hands.slice(0, 1 + (cut % sticking.hands.length));
        const laid = layPhrase({ cells: [{ id: 'a', sticking: { hands: kept } }], meter: m, grid: g });
        if (kept.length % slotsOf(m, g) === 0 || (!laid.ok && laid.fault.message.includes('split'))) return;
        expect(laid).toMatchObject({ ok: false, fault: { at: kept.length } });
      }),
      runs(400),
    );
  });
});
