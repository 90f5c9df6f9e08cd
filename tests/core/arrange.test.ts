import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arrangements,
  layPhrase,
  perform,
  TooLarge,
  type ArrangeCell,
  type ArrangeRequest,
  type ArrangeRules,
  type Stroke,
} from '../../src/core/index.ts';
import { runs } from '../helpers/arbitrary.ts';
import { lehmer } from '../helpers/lehmer.ts';
import { stickingOf } from '../helpers/phrases.ts';

const TEXTS = ['K', 'R', '-', '>R L', 'R L L', '>lR LL R', 'R+L', 'rL R', 'RR', '>L - R'];
const slotsIn = (text: string): number => text.split(' ').length;

/** A few cells with stickings, some of them limited. */
const cells = fc.uniqueArray(fc.constantFrom(...TEXTS), { minLength: 1, maxLength: 4 }).chain((texts) =>
  fc.tuple(
    ...texts.map((text, i) =>
      fc
        .oneof(
          fc.constant(undefined),
          fc.nat(3),
          fc.record({ min: fc.nat(2) }),
          fc.tuple(fc.nat(2), fc.nat(3)).map(([min, more]) => ({ min, max: min + more })),
        )
        .map((times): ArrangeCell => ({
          id: `c${i}`,
          slots: slotsIn(text),
          sticking: stickingOf(text),
          ...(times === undefined ? {} : { times }),
        })),
    ),
  ),
);

const request = fc.tuple(cells, fc.nat(6), fc.integer({ min: 1, max: 5 })).chain(([all, slots, barSlots]) => {
  const id = fc.constantFrom(...all.map((c) => c.id));
  const slot = fc.nat(Math.max(0, slots - 1));
  const some = <T>(one: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(one, { nil: undefined, freq: 2 });
  const places = slots ? some(fc.array(slot, { maxLength: 2 })) : fc.constant(undefined);
  return fc
    .record({
      first: some(id),
      last: some(id),
      accentOn: places,
      noAccentOn: places,
      lastStrokeOn: slots ? some(slot) : fc.constant(undefined),
      withinBars: some(fc.boolean()),
      noJoins: some(fc.array(fc.tuple(id, id), { maxLength: 2 })),
      maxRun: some(fc.integer({ min: 1, max: 4 })),
      graces: some(fc.boolean()),
      loop: some(fc.boolean()),
      lead: some(fc.constantFrom('written', 'left', 'alternating')),
    })
    .map((rules): ArrangeRequest => ({ cells: all, slots, barSlots, rules: tidy(rules) as ArrangeRules }));
});

const tidy = (rules: object): object => Object.fromEntries(Object.entries(rules).filter(([, v]) => v !== undefined));

/** Every order of cells that fills the slots, whatever the uses and rules. */
function fillings(all: readonly ArrangeCell[], slots: number): string[][] {
  if (slots === 0) return [[]];
  return all
    .filter((c) => c.slots <= slots)
    .flatMap((c) => fillings(all, slots - c.slots).map((rest) => [c.id, ...rest]));
}

function obeysUses({ cells: all }: ArrangeRequest, ids: string[]): boolean {
  return all.every(({ id, times }) => {
    const n = ids.filter((one) => one === id).length;
    if (typeof times === 'number') return n === times;
    return n >= (times?.min ?? 0) && n <= (times?.max ?? Infinity);
  });
}

/** The rules, judged on the phrase as it is performed. */
function obeysRules({ cells: all, barSlots = 1, rules = {} }: ArrangeRequest, ids: string[]): boolean {
  const { first, last, accentOn = [], noAccentOn = [], lastStrokeOn, withinBars, noJoins = [], maxRun, loop } = rules;
  const laid = ids.map((id) => all.find((c) => c.id === id)!);
  const strokes = strokesOf(laid, rules);
  const main = strokes.filter((s) => s.kind !== 'grace');
  const accents = main.filter((s) => s.accent).map((s) => s.bar - 1);
  const starts = laid.map((_, i) => laid.slice(0, i).reduce((sum, c) => sum + c.slots, 0));
  const joins = ids.map((id, i) => [id, ids[i + 1] ?? (loop ? ids[0] : undefined)]);
  return (
    (first === undefined || ids.length === 0 || ids[0] === first) &&
    (last === undefined || ids.length === 0 || ids[ids.length - 1] === last) &&
    accentOn.every((slot) => accents.includes(slot)) &&
    noAccentOn.every((slot) => !accents.includes(slot)) &&
    (lastStrokeOn === undefined || Math.max(-1, ...main.map((s) => s.bar - 1)) === lastStrokeOn) &&
    (!withinBars || laid.every((c, i) => (starts[i] % barSlots) + c.slots <= barSlots)) &&
    joins.every(([a, b]) => !noJoins.some(([x, y]) => x === a && y === b)) &&
    (maxRun === undefined || longestRun(strokes, rules) <= maxRun)
  );
}

/** Each slot is a bar of its own, so that a stroke's bar tells its slot. */
function strokesOf(laid: ArrangeCell[], rules: ArrangeRules): Stroke[] {
  if (laid.length === 0) return [];
  const phrase = layPhrase({
    cells: laid.map((c) => ({ id: c.id, sticking: c.sticking! })),
    meter: '1/4',
    grid: 1,
    lead: rules.lead,
  });
  if (!phrase.ok) throw new Error(phrase.fault.message);
  return perform(phrase.phrase).strokes;
}

/** Plays a looped phrase often enough for a run without end to show. */
function longestRun(strokes: Stroke[], { graces, loop }: ArrangeRules): number {
  const hands = strokes.filter((s) => s.limb === 'R' || s.limb === 'L').filter((s) => graces || s.kind !== 'grace');
  const moments = hands
    .map((s) => (s.kind === 'grace' ? s.id : `${s.tick}`))
    .filter((key, i, keys) => keys.indexOf(key) === i)
    .map((key) => hands.filter((s) => (s.kind === 'grace' ? s.id : `${s.tick}`) === key).map((s) => s.limb));
  const line = loop ? Array.from({ length: 6 }, () => moments).flat() : moments;
  const longest = (hand: string): number =>
    Math.max(
      ...line
        .map((m) => (m.includes(hand as 'R') ? 'x' : ' '))
        .join('')
        .split(' ')
        .map((run) => run.length),
    );
  return line.length ? Math.max(longest('R'), longest('L')) : 0;
}

describe('arrangements', () => {
  it('are what brute force finds, in order, each once, each at its index', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const wanted = fillings(asked.cells, asked.slots).filter(
          (ids) => obeysUses(asked, ids) && obeysRules(asked, ids),
        );
        const found = arrangements(asked);
        expect([...found]).toEqual(wanted);
        expect(found.count).toBe(BigInt(wanted.length));
        wanted.forEach((ids, k) => {
          expect(found.at(BigInt(k))).toEqual(ids);
          expect(found.indexOf(ids)).toBe(BigInt(k));
        });
        expect(found.reason === undefined).toBe(wanted.length > 0);
      }),
      runs(500),
    );
  });

  it('know that what is none of them is none of them', () => {
    fc.assert(
      fc.property(request, fc.array(fc.constantFrom('c0', 'c1', 'c2', 'other'), { maxLength: 6 }), (asked, ids) => {
        const found = arrangements(asked);
        const index = found.indexOf(ids);
        if (index >= 0n) expect(found.at(index)).toEqual(ids);
        else expect([...found]).not.toContainEqual(ids);
      }),
      runs(200),
    );
  });

  const [a, b, c] = [1, 2, 3].map((slots, i) => ({ id: 'abc'[i], slots }));
  const many = Array.from({ length: 15 }, (_, i) => ({ id: `c${i}`, slots: 1, times: { max: 1 } }));
  // Of so many degrees of freedom the sum is passed once in a thousand draws of a fair source (quantiles of chi-square, computed).
  it.each<[string, ArrangeRequest, number, number]>([
    ['without limits', { cells: [a, b], slots: 6 }, 12, 32.9],
    [
      'in exact uses',
      {
        cells: [
          { ...a, times: 3 },
          { ...b, times: 2 },
        ],
        slots: 7,
      },
      9,
      27.9,
    ],
    ['under a rule', { cells: [a, b, c], slots: 6, rules: { noJoins: [['a', 'a']] } }, 10, 29.6],
    ['of very many possible uses', { cells: many, slots: 2 }, 209, 278],
  ])('are drawn fairly %s', (_, asked, freedom, most) => {
    const found = arrangements(asked);
    const random = lehmer(7);
    const draws = Math.max(4000, 20 * (freedom + 1));
    const seen = new Map<string, number>();
    for (let i = 0; i < draws; i += 1) {
      const key = found.sample(random).join();
      seen.set(key, (seen.get(key) ?? 0) + 1);
    }
    const each = draws / Number(found.count);
    const chi = [...seen.values()].reduce((sum, n) => sum + (n - each) ** 2 / each, 0);
    expect(found.count).toBe(BigInt(freedom + 1));
    expect(seen.size).toBe(freedom + 1);
    expect(chi).toBeLessThan(most);
  });

  it('are the same by a recurrence, by states and by types', () => {
    const cells = [1, 2, 3, 5, 5].map((slots, i) => ({ id: `c${i}`, slots }));
    const limited = cells.map((cell) => ({ ...cell, times: { min: 1, max: 8 } }));
    for (const asked of [
      { cells, slots: 700 },
      { cells: limited, slots: 60 },
    ]) {
      // No cell can cross the line of the only bar, but now the rule has to be looked at.
      const [quick, slow] = [asked, { ...asked, barSlots: asked.slots, rules: { withinBars: true } }].map(arrangements);
      expect(slow.count).toBe(quick.count);
      for (const k of [0n, quick.count / 7n, quick.count / 2n, quick.count - 1n]) {
        const ids = quick.at(k);
        expect(slow.at(k)).toEqual(ids);
        expect([quick.indexOf(ids), slow.indexOf(ids)]).toEqual([k, k]);
      }
    }
  });

  it('count without listing where there are very many', () => {
    const found = arrangements({
      cells: [
        { id: 'a', slots: 1 },
        { id: 'b', slots: 2 },
      ],
      slots: 1000,
    });
    expect(found.count.toString()).toHaveLength(209);
    const k = found.count / 3n;
    expect(found.indexOf(found.at(k))).toBe(k);
  });
});

describe('reasons', () => {
  const cell = (id: string, slots: number, times?: ArrangeCell['times']): ArrangeCell => ({
    id,
    slots,
    ...(times === undefined ? {} : { times }),
  });
  it.each([
    [{ cells: [cell('a', 3), cell('b', 5)], slots: 7 }, 'cells of 3 and 5 cannot fill 7'],
    [{ cells: [cell('a', 3, 5)], slots: 16 }, 'cells of 3 cannot fill 16'],
    [{ cells: [cell('a', 3, 5), cell('b', 1, 0)], slots: 16 }, 'the cells make 15 of 16 slots'],
    [{ cells: [cell('a', 1, { max: 3 })], slots: 4 }, 'the cells make at most 3 slots, fewer than 4'],
    [{ cells: [cell('a', 1, { min: 5 })], slots: 4 }, 'the cells make at least 5 slots, more than 4'],
    [{ cells: [], slots: 4 }, 'there are no cells, and 4 slots to fill'],
    [
      { cells: [cell('a', 1), cell('b', 2)], slots: 2, rules: { first: 'a', last: 'b' } },
      'no order keeps to first and last; without first or without last there are some',
    ],
  ])('%#', (asked, reason) => expect(arrangements(asked).reason).toBe(reason));

  it('are not given where there are arrangements', () => {
    expect(arrangements({ cells: [cell('a', 1)], slots: 3 }).reason).toBeUndefined();
  });
});

describe('malformed input', () => {
  const a = { id: 'a', slots: 1 };
  it.each<[unknown, string]>([
    [{ cells: [a], slots: -1 }, 'slots is -1'],
    [{ cells: [a], slots: 1.5 }, 'slots is 1.5'],
    [{ cells: [a], slots: NaN }, 'slots is NaN'],
    [{ cells: [{ id: 'a', slots: 0 }], slots: 1 }, 'slots of "a" is 0'],
    [{ cells: [a, a], slots: 1 }, 'cell id is "a"'],
    [{ cells: [{ id: '', slots: 1 }], slots: 1 }, 'cell id is ""'],
    [{ cells: [{ ...a, times: -1 }], slots: 1 }, 'least times of "a" is -1'],
    [{ cells: [{ ...a, times: { min: 3, max: 2 } }], slots: 1 }, 'least times of "a" is 3'],
    [{ cells: [a], slots: 1, rules: { first: 'b' } }, 'cell in a rule is "b"'],
    [{ cells: [a], slots: 1, rules: { noJoins: [['a', 'x']] } }, 'cell in a rule is "x"'],
    [{ cells: [a], slots: 1, rules: { accentOn: [1] } }, 'slot in a rule is 1; 0 to 0'],
    [{ cells: [a], slots: 1, rules: { lastStrokeOn: -1 } }, 'slot in a rule is -1'],
    [{ cells: [a], slots: 1, rules: { accentOn: [0] } }, 'sticking of "a" is undefined'],
    [
      { cells: [{ ...a, sticking: stickingOf('R L') }], slots: 2, rules: { maxRun: 2 } },
      'slots of "a" is 1; 2, as its sticking has',
    ],
    [{ cells: [a], slots: 1, rules: { maxRun: 0 } }, 'maxRun is 0'],
    [{ cells: [a], slots: 1, rules: { withinBars: true } }, 'barSlots is undefined'],
    [{ cells: [a], slots: 1, barSlots: 0 }, 'barSlots is 0'],
    [{ cells: [a], slots: 1, rules: { lead: 'both' } }, 'lead is "both"'],
    [{ cells: [a], slots: 1, rules: { maxrun: 2 } }, 'rule is "maxrun"'],
    [undefined, 'what is asked for is undefined'],
    [{ slots: 1 }, 'cells is undefined; a list of cells'],
    [{ cells: [null], slots: 1 }, 'cell is null'],
    [{ cells: [{ ...a, times: 'two' }], slots: 1 }, 'times of "a" is "two"'],
    [{ cells: [{ ...a, times: null }], slots: 1 }, 'times of "a" is null'],
    [{ cells: [{ ...a, sticking: stickingOf('R L') }], slots: 1 }, 'slots of "a" is 1; 2, as its sticking has'],
    [{ cells: [a], slots: 1, rules: { accentOn: 0 } }, 'accentOn is 0; a list'],
    [{ cells: [a], slots: 1, rules: { noJoins: 'aa' } }, 'noJoins is "aa"; a list'],
    [{ cells: [a], slots: 1, rules: { noJoins: [['a']] } }, 'pair in noJoins is a; two ids'],
    [{ cells: [a], slots: 1, rules: { loop: 1 } }, 'loop is 1; true or false'],
    [{ cells: [a], slots: 1, mostStates: 0 }, 'mostStates is 0'],
    [{ cells: [a], slots: 1, rules: { lastStrokeOn: null } }, 'slot in a rule is null; 0 to 0'],
    [{ cells: [a], slots: 0, rules: { lastStrokeOn: 0 } }, 'slot in a rule is 0; none, where there are no slots'],
    [{ cells: [{ ...a, times: { most: 2 } }], slots: 1 }, 'limit of "a" is "most"; one of min, max'],
    [{ cells: [{ ...a, sticking: 'R' }], slots: 1 }, 'sticking of "a" is "R"; a sticking, as parseSticking gives it'],
    [{ cells: [{ ...a, sticking: {} }], slots: 1 }, 'sticking of "a" is [object Object]'],
  ])('%j throws', (asked, message) => {
    expect(() => arrangements(asked as ArrangeRequest)).toThrow(RangeError);
    expect(() => arrangements(asked as ArrangeRequest)).toThrow(message);
  });

  it('throws outside the count', () => {
    const found = arrangements({ cells: [a], slots: 1 });
    expect(() => found.at(1n)).toThrow(RangeError);
    expect(() => found.at(-1n)).toThrow(RangeError);
    expect(() => arrangements({ cells: [a], slots: 1, rules: {} }).at(2n)).toThrow('k is 2; 0 to below 1');
    expect(() => arrangements({ cells: [{ id: 'a', slots: 2 }], slots: 1 }).sample(Math.random)).toThrow(RangeError);
  });

  it('throws for what is no index, no order and no source of chance', () => {
    const found = arrangements({ cells: [a], slots: 1 });
    expect(() => found.at(0 as unknown as bigint)).toThrow('k is 0; a bigint');
    expect(() => found.indexOf('a' as unknown as string[])).toThrow('order is "a"; a list of ids');
    expect(() => found.sample(1 as unknown as () => number)).toThrow('random is 1; a source of numbers');
  });

  it('gives an order even where a source of chance always says the same, instead of hanging', () => {
    const found = arrangements({ cells: [a, { id: 'b', slots: 2 }], slots: 4 });
    for (const drawn of [0, 0.5, 0.999]) expect(found.indexOf(found.sample(() => drawn))).toBeGreaterThan(-1n);
  });

  it.each([1, -0.1, NaN])('throws for a source of chance that gives %d, instead of hanging', (drawn) => {
    const found = arrangements({ cells: [a, { id: 'b', slots: 1 }], slots: 3 });
    expect(() => found.sample(() => drawn)).toThrow(RangeError);
  });

  it('says so where there are too many states, instead of hanging', () => {
    const limited = ['a', 'b'].map((id) => ({ id, slots: 1, times: { max: 2500 } }));
    expect(() => arrangements({ cells: limited, slots: 4000, rules: { first: 'a' } })).toThrow(
      'the states are more than 2,000,000',
    );
  });

  it('has a reason even where less is too much to be counted', () => {
    const cells = Array.from({ length: 7 }, (_, i) => ({ id: `c${i}`, slots: 1 + i, times: { max: 15 - i } }));
    const noJoins = cells.map(({ id }): [string, string] => ['c0', id]);
    const asked = { cells, slots: 256, mostStates: 1000, rules: { first: 'c0', noJoins } };
    expect(arrangements(asked)).toMatchObject({ count: 0n, reason: 'no order keeps to first and noJoins' });
  });

  it('says so where there is too much to be mixed', () => {
    const long = ['a', 'b'].map((id) => ({ id, slots: 1, times: { max: 25_000 } }));
    expect(() => arrangements({ cells: long, slots: 40_000 })).toThrow('orders of 40000 cells are too long');
    const kinds = Array.from({ length: 40 }, (_, i) => ({ id: `c${i}`, slots: 1 + i, times: { max: 100 } }));
    expect(() => arrangements({ cells: kinds, slots: 1000 })).toThrow('mix in more than 20,000,000 sums');
  });

  it('says so where a phrase is too long to be looked at slot by slot', () => {
    const asked = { cells: [{ id: 'a', slots: 1e8 }], slots: 1e8 };
    expect(() => arrangements({ ...asked, rules: { first: 'a' } })).toThrow('the states are more than 2,000,000');
  });

  it('says so sooner where fewer states are allowed, and counts all the same where they are enough', () => {
    const uses = Array.from({ length: 5 }, (_, i) => ({ id: `c${i}`, slots: 1 + i, times: { min: 1, max: 9 } }));
    const asked: ArrangeRequest = { cells: uses, slots: 20, rules: { first: 'c0' } };
    expect(() => arrangements({ ...asked, mostStates: 100 })).toThrow(TooLarge);
    expect(arrangements({ ...asked, mostStates: 5000 }).count).toBe(arrangements(asked).count);
  });
});
