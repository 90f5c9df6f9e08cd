import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arrangements,
  gapsOf,
  hands,
  layPhrase,
  perform,
  rankArrangements,
  scoreOrder,
  type ArrangeCell,
  type ArrangeRequest,
  type ArrangeRules,
  type HandScore,
  type Limb,
  type Stroke,
  type Timeline,
} from '../../src/core/index.ts';
import { runs } from '../helpers/arbitrary.ts';
import { stickingOf } from '../helpers/phrases.ts';

const TEXTS = ['K', 'R', 'L', '-', '>R L', 'R L L', '>lR LL R', 'R+L', 'rL R', 'RR', 'llR - L', 'KK R', 'R+K - H+L'];

const cells = fc.uniqueArray(fc.constantFrom(...TEXTS), { minLength: 1, maxLength: 4 }).chain((texts) =>
  fc.tuple(
    ...texts.map((text) =>
      fc.constantFrom(undefined, 1, 2, { max: 2 }).map((times): ArrangeCell => ({
        id: text,
        slots: text.split(' ').length,
        sticking: stickingOf(text),
        ...(times === undefined ? {} : { times }),
      })),
    ),
  ),
);

const request = fc.tuple(cells, fc.nat(6)).chain(([all, slots]) => {
  const id = fc.constantFrom(...all.map((c) => c.id));
  const slot = fc.nat(Math.max(0, slots - 1));
  const places = slots ? { accentOn: fc.array(slot, { maxLength: 1 }), lastStrokeOn: slot } : {};
  const rules = fc.record(
    {
      first: id,
      last: id,
      noJoins: fc.array(fc.tuple(id, id), { maxLength: 1 }),
      maxRun: fc.integer({ min: 2, max: 5 }),
      graces: fc.boolean(),
      loop: fc.boolean(),
      lead: fc.constantFrom('written' as const, 'left' as const, 'alternating' as const),
      ...places,
    },
    { requiredKeys: [] },
  );
  return rules.map((asked): ArrangeRequest => ({ cells: all, slots, rules: asked as ArrangeRules }));
});

/** Each slot is a bar of its own, so that gaps in slots can be read off. */
function timelineOf({ cells: all, rules = {} }: ArrangeRequest, ids: string[]): Timeline {
  const laid = ids.map((id) => ({ id, sticking: all.find((c) => c.id === id)!.sticking! }));
  const phrase = layPhrase({ cells: laid, meter: '1/4', grid: 1, lead: rules.lead });
  if (!phrase.ok) throw new Error(phrase.fault.message);
  return perform(phrase.phrase);
}

/** The score, judged on the phrase as it is performed. */
function scoreByHand(asked: ArrangeRequest, ids: string[]): HandScore {
  if (ids.length === 0) return { run: 0, joins: 0, gaps: { hand: 4, grace: 4, foot: 4 } };
  const timeline = timelineOf(asked, ids);
  const loop = asked.rules?.loop ?? false;
  const { limbs } = hands(timeline, 60, { loop });
  const run = Math.max(0, ...[limbs.R, limbs.L].map((limb) => limb?.longestRunWithGraces?.length ?? 0));
  const gap = (of: Limb[], grace: boolean): number =>
    Math.min(4, ...of.flatMap((limb) => ways(timeline, limb, loop, grace)));
  return {
    run,
    joins: joinsIn(timeline, loop),
    gaps: { hand: gap(['R', 'L'], false), grace: gap(['R', 'L'], true), foot: gap(['K', 'H'], false) },
  };
}

function ways(timeline: Timeline, limb: Limb, loop: boolean, grace: boolean): number[] {
  if (!timeline.strokes.some((s) => s.limb === limb)) return [];
  const strokes = new Map(timeline.strokes.map((s) => [s.id, s]));
  return gapsOf(timeline, limb, { bpm: 60, loop })
    .filter((g) => (g.kind === 'grace') === grace)
    .filter((g) => (grace ? g.ticks > 0 : !withinSlot(strokes.get(g.from)!, strokes.get(g.to)!)))
    .map((g) => g.slots);
}

const withinSlot = (from: Stroke, to: Stroke): boolean => from.bar === to.bar && to.part > from.part;

function joinsIn({ strokes }: Timeline, loop: boolean): number {
  const line = strokes.filter((s) => s.limb === 'R' || s.limb === 'L');
  const key = (s: Stroke): string => (s.kind === 'grace' ? s.id : `${s.tick}`);
  const moments = [...new Set(line.map(key))].map((one) => line.filter((s) => key(s) === one));
  const next = moments.map((_, i) => moments[i + 1] ?? (loop ? moments[0] : undefined));
  return moments.filter(
    (here, i) =>
      next[i]?.some((s) => here.some(({ limb }) => limb === s.limb)) &&
      (i === moments.length - 1 || next[i][0].cell !== here[0].cell),
  ).length;
}

const inOrder = ({ run, joins, gaps }: HandScore): number[] => [run, joins, -gaps.hand, -gaps.grace, -gaps.foot];

function compare(a: HandScore, b: HandScore): number {
  const [x, y] = [inOrder(a), inOrder(b)];
  const i = x.findIndex((n, at) => n !== y[at]);
  return i < 0 ? 0 : x[i] - y[i];
}

describe('the score of an order', () => {
  it('is what the performed phrase asks of the hands', () => {
    fc.assert(
      fc.property(request, (asked) => {
        for (const ids of arrangements({ ...asked, rules: {} }))
          expect(scoreOrder(asked, ids), ids.join(' | ')).toEqual(scoreByHand(asked, ids));
      }),
      runs(200),
    );
  });

  it('needs cells that it knows, with stickings', () => {
    const a = { id: 'a', slots: 1 };
    expect(() => scoreOrder({ cells: [a], slots: 1 }, ['a'])).toThrow('sticking of "a" is undefined');
    expect(() => scoreOrder({ cells: [a], slots: 1 }, ['b'])).toThrow('id is "b"; one of a');
  });
});

describe('the ranking by the hands', () => {
  it.each(['easiest', 'hardest'] as const)(
    'puts all orders as sorting them by their score does, the %s first',
    (order) => {
      fc.assert(
        fc.property(request, (asked) => {
          const all = [...arrangements(asked)].map((ids) => ({ ids, score: scoreOrder(asked, ids) }));
          const turn = order === 'easiest' ? 1 : -1;
          const wanted = all.sort((a, b) => turn * compare(a.score, b.score));
          expect(rankArrangements(asked, { order, take: all.length + 1 })).toEqual(wanted);
          expect(rankArrangements(asked, { order, take: 2 })).toEqual(wanted.slice(0, 2));
        }),
        runs(150),
      );
    },
  );

  it('finds the six of sixty orders that never ask one hand for three in a row', () => {
    const cell = (id: string, text: string, times: number): ArrangeCell => ({
      id,
      slots: text.split(' ').length,
      times,
      sticking: stickingOf(text),
    });
    const asked = {
      cells: [cell('kick', 'K', 1), cell('flam drag', '>lR LL R', 3), cell('R L L', 'R L L', 2)],
      slots: 16,
    };
    const found = rankArrangements(asked, { order: 'easiest', take: 7 });
    expect(found.map(({ score }) => score.run)).toEqual([2, 2, 2, 2, 2, 2, 3]);
  });

  it('finds a few of very many', () => {
    const texts = ['R L R R', 'L R L L', 'R L', '>lR LL R'];
    const cellsOf = texts.map((text) => ({ id: text, slots: text.split(' ').length, sticking: stickingOf(text) }));
    const asked = { cells: cellsOf, slots: 64 };
    expect(arrangements(asked).count).toBeGreaterThan(10n ** 9n);
    const [first, ...rest] = rankArrangements(asked, { order: 'easiest', take: 5 });
    expect(first.score).toMatchObject({ run: 1, joins: 0 });
    expect(rest).toHaveLength(4);
    expect(rankArrangements(asked, { order: 'hardest', take: 1 })[0].score.run).toBe(3);
  });

  const one = { id: 'R', slots: 1, sticking: stickingOf('R') };
  it.each([
    [{ order: 'best', take: 1 }, 'order is "best"; one of easiest, hardest'],
    [{ order: 'easiest', take: -1 }, 'take is -1'],
    [{ order: 'easiest', take: 0.5 }, 'take is 0.5'],
  ])('refuses %j', (options, message) => {
    const asked = (): unknown => rankArrangements({ cells: [one], slots: 1 }, options as { order: 'easiest'; take: 1 });
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(message);
  });

  it('says so where there are too many states to rank', () => {
    const many = ['R', 'L', 'R L', 'R L L', 'R R L'].map((id) => ({
      id,
      slots: id.split(' ').length,
      sticking: stickingOf(id),
    }));
    const asked = { cells: many, slots: 64, rules: { loop: true } };
    expect(() => rankArrangements(asked, { order: 'hardest', take: 1 })).toThrow('the states are more than 50,000');
  });
});
