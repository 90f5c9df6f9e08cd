import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrangements, loopArrangements, type ArrangeRequest } from '../../src/core/index.ts';
import { runs } from '../helpers/arbitrary.ts';
import { stickingOf } from '../helpers/phrases.ts';

const TEXTS = ['R', 'L', 'K', 'R L', 'R L L', 'R+L', '-', '>lR LL R'];

const times = fc.oneof(
  fc.constant(undefined),
  fc.nat(4),
  fc.record({ min: fc.nat(2) }),
  fc.tuple(fc.nat(2), fc.nat(4)).map(([min, more]) => ({ min, max: min + more })),
);
const cells = fc
  .uniqueArray(fc.constantFrom(...TEXTS), { minLength: 1, maxLength: 3 })
  .chain((texts) => fc.tuple(...texts.map((text) => times.map((n) => ({ text, n })))))
  .map((all) =>
    all.map(({ text, n }) => ({
      id: text,
      slots: text.split(' ').length,
      sticking: stickingOf(text),
      ...(n === undefined ? {} : { times: n }),
    })),
  );
const request = fc.tuple(cells, fc.nat(9)).chain(([all, slots]) => {
  const id = fc.constantFrom(...all.map((c) => c.id));
  return fc
    .record(
      {
        noJoins: fc.array(fc.tuple(id, id), { maxLength: 2 }),
        maxRun: fc.integer({ min: 1, max: 4 }),
        graces: fc.boolean(),
        lead: fc.constantFrom('written' as const, 'left' as const),
      },
      { requiredKeys: [] },
    )
    .map((rules): ArrangeRequest => ({ cells: all, slots, rules }));
});

const rotations = (order: string[]): string[][] => order.map((_, i) => [...order.slice(i), ...order.slice(0, i)]);

/** Of all orders those that come first among their rotations: orders stand in the order of the cells as given. */
function firstOnes(asked: ArrangeRequest): string[][] {
  const seen = new Set<string>();
  return [...arrangements({ ...asked, rules: { ...asked.rules, loop: true } })].filter((order) => {
    const known = seen.has(order.join());
    for (const same of [order, ...rotations(order)]) seen.add(same.join());
    return !known;
  });
}

describe('orders round a loop', () => {
  it('are one of each set of rotations, the one that comes first, and as many as are counted', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const found = loopArrangements(asked);
        const wanted = firstOnes(asked);
        expect([...found]).toEqual(wanted);
        expect(found.count).toBe(BigInt(wanted.length));
        expect(found.reason === undefined).toBe(wanted.length > 0);
      }),
      runs(400),
    );
  });

  it('are listed as they are asked for', () => {
    const many = loopArrangements({ cells: ['a', 'b', 'c'].map((id, i) => ({ id, slots: i + 1 })), slots: 200 });
    const [first, second] = many;
    expect([first.length, second.at(-1)]).toEqual([200, 'b']);
    expect(many.count.toString().length).toBeGreaterThan(40);
  });

  const a = { id: 'a', slots: 1, sticking: stickingOf('>R') };
  it.each([
    [{ first: 'a' }, 'first is "a"'],
    [{ last: 'a' }, 'last is "a"'],
    [{ accentOn: [0] }, 'accentOn is [0]'],
    [{ noAccentOn: [1] }, 'noAccentOn is [1]'],
    [{ lastStrokeOn: 0 }, 'lastStrokeOn is 0'],
    [{ withinBars: true }, 'withinBars is true'],
    [{ lead: 'alternating' as const }, 'lead is "alternating"'],
    [{ loop: false, maxRun: 2 }, 'loop is false'],
  ])('refuse a rule that rotation breaks: %j', (rules, message) => {
    const asked = { cells: [a], slots: 2, barSlots: 2, rules };
    expect(() => loopArrangements(asked)).toThrow(RangeError);
    expect(() => loopArrangements(asked)).toThrow(message);
  });

  it('say so where counting them would take too long, instead of hanging', () => {
    const cells = [1, 2].map((slots) => ({ id: `c${slots}`, slots }));
    expect(() => loopArrangements({ cells, slots: 20_000 })).toThrow('a loop of 20000 slots is too long; at most 4096');
    expect(() => loopArrangements({ cells, slots: 4000 })).toThrow('the loops take more than 10,000,000 sums');
  });

  it('refuse what is malformed', () => {
    expect(() => loopArrangements({ cells: [a], slots: -1 })).toThrow('slots is -1');
  });
});
