import { describe, expect, it } from 'vitest';
import { readSumAddress } from '../../src/bar-math/address.ts';
import { answerOrders, ORDERS } from '../../src/bar-math/orders/orders.ts';
import { easiestOrders, neighborOrders, rankOrders } from '../../src/bar-math/orders/ranking.ts';
import { ON_PAGE } from '../../src/bar-math/limits.ts';
import { createCalculator } from '../../src/bar-math/calculator.ts';
import { withoutRow } from '../../src/bar-math/orders/rules.ts';
import type { Inputs, SumProps } from '../../src/bar-math/types.ts';
import {
  arrangements,
  loopArrangements,
  neighbors,
  rankArrangements,
  swapDistance,
  TooLarge,
  type ArrangeRequest,
  type ArrangeRules,
} from '../../src/core/index.ts';
import { rulesSay, scoreSays } from '../../src/words/bar-math-orders.ts';
import { stickingOf } from '../helpers/phrases.ts';

const props: SumProps = {
  named: [
    { id: 'kick', name: 'kick', text: 'K' },
    { id: 'flam-drag', name: 'flam drag', text: '>lR LL R' },
    { id: 'rll', name: 'R L L', text: 'R L L' },
    { id: 'paradiddle', name: 'paradiddle', text: 'R L R R' },
  ],
};

const ask = (change: Inputs) => answerOrders({ ...ORDERS, ...change }, props);

/** The problem the page begins with, as core has it. */
const sixty = (rules: ArrangeRules): ArrangeRequest => ({
  cells: ['K', '>lR LL R', 'R L L'].map((text, i) => ({
    id: String(i),
    slots: text.split(' ').length,
    sticking: stickingOf(text),
    times: [1, 3, 2][i],
  })),
  slots: 16,
  barSlots: 16,
  rules,
});
const numberOf = (ids: string[], rules: ArrangeRules = {}) => String(arrangements(sixty(rules)).indexOf(ids) + 1n);

/** Eight kinds with limits in two bars: more states than a page counts at once, and countable. */
const MANY = {
  cells: 'kick*1-8,flam-drag*1-8,rll*1-8,paradiddle*1-8,L*1-8,R R*1-8,R L R L*1-8,RR LL R L R*1-8',
  bars: '2',
  run: '2',
};
const TOO_MANY = { ...MANY, cells: MANY.cells.replaceAll('1-8', '0-16'), bars: '8' };

describe('the rules of an order', () => {
  it.each<[Inputs, ArrangeRules]>([
    [{ joins: '3-2' }, { noJoins: [['2', '1']] }],
    [
      { joins: '2-2,3-3', loop: 'yes' },
      {
        noJoins: [
          ['1', '1'],
          ['2', '2'],
        ],
        loop: true,
      },
    ],
    [
      { run: '2', graces: 'yes', loop: 'yes' },
      { maxRun: 2, graces: true, loop: true },
    ],
    [
      { run: '3', lead: 'alternating' },
      { maxRun: 3, lead: 'alternating' },
    ],
    [
      { accents: '1', quiet: '2', end: '4 a', within: 'yes' },
      { accentOn: [0], noAccentOn: [4], lastStrokeOn: 15, withinBars: true },
    ],
    [
      { first: '2', last: '3', run: '3', lead: 'left' },
      { first: '1', last: '2', maxRun: 3, lead: 'left' },
    ],
  ])('%j is what core counts', (change, rules) => {
    expect(ask(change).count).toBe(arrangements(sixty(rules)).count);
  });

  it('mean in an address of before what they always meant', () => {
    const { inputs } = readSumAddress(
      '#orders&cells=kick*1,flam-drag*3,rll*2&bars=1&meter=4/4&grid=4&run=2&graces=yes&order=6',
    );
    const { says, more } = ask(inputs);
    expect([says, more]).toEqual([
      'Six orders fill the bar and keep to the rules.',
      ['Number 6 of 6: flam drag × 3, R L L × 2, kick.'],
    ]);
  });

  it.each<[Inputs, string, string]>([
    [{ joins: '9-1' }, 'joins', '“9-1” cannot stand here: pairs of cells by their number, 1 to 3, such as 1-1, can.'],
    [{ lead: 'both' }, 'lead', '“both” cannot stand here: left, alternating or nothing can.'],
    [{ kept: '1,99' }, 'kept', '“99” cannot be kept: the orders are numbered from 1 to 60.'],
  ])('%j gets a sentence', (change, field, sentence) => expect(ask(change).faults[field].says).toBe(sentence));

  it('give the reason in a drummer’s words where nothing keeps to them', () => {
    expect(ask({ joins: '1-2,1-3,2-1,3-1' }).says).toBe(
      'None: no order keeps to the forbidden joins; without the forbidden joins there are some.',
    );
  });

  it('are told in a sentence', () => {
    const none = { accents: '', quiet: '', end: '', run: '', graces: false, within: false, lead: '', loop: false };
    expect(rulesSay({ ...none, joins: [] })).toBe('');
    expect(
      rulesSay({ ...none, first: 'kick', run: '2', graces: true, joins: [['R L L', 'flam drag']], loop: true }),
    ).toBe(
      'Rules: kick first; at most two in a row by one hand, grace notes counted; no R L L right before flam drag; round and round.',
    );
  });

  it('stay with their cells where a row is taken away', () => {
    const inputs = { ...ORDERS, first: '3', last: '2', joins: '1-3,2-3' };
    expect(withoutRow(inputs, 2)).toEqual({ first: '2', last: '', joins: '1-2' });
  });
});

describe('who leads', () => {
  it('turns what is drawn and what is played', () => {
    const { ruler, play } = ask({ lead: 'left', order: '60' });
    expect(ruler?.cells?.map(({ name }) => name)).toEqual(['L R R', 'L R R', ...Array(3).fill('flam drag'), 'kick']);
    expect(ruler?.cells?.[0].marks?.flat().map(({ letter }) => letter)).toEqual(['L', 'R', 'R']);
    expect(play?.timeline.strokes.slice(0, 3).map(({ limb }) => limb)).toEqual(['L', 'R', 'R']);
  });

  it('alternates cell by cell, however often a cell repeats a figure', () => {
    const { play, ruler } = ask({ cells: '{R L}2', lead: 'alternating', meter: '2/4' });
    const limbs = play?.timeline.strokes.map(({ limb }) => limb).join('');
    expect([limbs, ruler?.cells?.length]).toEqual(['RLRLLRLR', 4]);
  });
});

describe('loops', () => {
  it('count once however they are begun', () => {
    const { loops } = ask({ loop: 'yes' });
    const all = [...loopArrangements(sixty({}))];
    expect(loops?.says).toContain('there are ten loops');
    expect(loops?.rows.map(({ number }) => number)).toEqual(all.map((ids) => numberOf(ids, { loop: true })));
  });

  it('are not told apart where a rule names a place, nor asked for over several bars', () => {
    expect(ask({ loop: 'yes', first: '1' }).loops).toMatchObject({ rows: [] });
    expect(ask({ loop: 'yes', bars: '2' }).loops).toBeUndefined();
    expect(ask({}).loops).toBeUndefined();
  });
});

describe('what the hands like', () => {
  it('is what core ranks first and last, with its number and why', () => {
    const { easiest, hardest } = rankOrders(ORDERS, props);
    for (const [rows, order] of [[easiest, 'easiest'] as const, [hardest, 'hardest'] as const]) {
      const ranked = rankArrangements(sixty({}), { order, take: 3 });
      expect(rows.map(({ number }) => number)).toEqual(ranked.map(({ ids }) => numberOf(ids)));
      expect(rows.map(({ why }) => why)).toEqual(ranked.map(({ score }) => scoreSays(score, '4/4', 4)));
    }
    expect(easiest[0].why).toBe('At most two in a row, one join on the same hand, tightest gap one sixteenth (hand).');
  });

  it('is one list where there are few', () => {
    const { easiest, hardest } = rankOrders({ ...ORDERS, run: '2', graces: 'yes' }, props);
    expect([easiest.length, hardest.length]).toEqual([6, 0]);
  });

  it('makes a week of the cells that are shown', () => {
    const inputs = { ...ORDERS, cells: 'kick,flam-drag,rll', order: '100' };
    const five = easiestOrders(inputs, props);
    expect(five).toHaveLength(5);
    const { kept } = answerOrders({ ...inputs, kept: five.join() }, props);
    expect(kept?.rows.map(({ why }) => why)).not.toContain('Made of other cells.');
  });
});

describe('from one order to others', () => {
  it('one swap away are those that keep to the rules', () => {
    const shown = arrangements(sixty({})).at(16n);
    const near = neighborOrders({ ...ORDERS, order: '17' }, props);
    expect(near.rows.map(({ number }) => number)).toEqual(neighbors(shown).map((ids) => numberOf(ids)));
    expect(neighborOrders({ ...ORDERS, run: '2', graces: 'yes' }, props)).toEqual({
      says: 'Two cells that stand side by side change places, and all the rest stays. Two swaps make another order; one of them breaks a rule and is left out.',
      rows: [{ number: '2', key: '0', says: 'Cells 1 and 2 change places: flam drag before kick', why: '' }],
    });
  });

  it('a row to practice begins with the first that was kept and goes on to the nearest', () => {
    const { kept } = ask({ kept: '60,1,30,2' });
    const orders = kept!.rows.map(({ number }) => arrangements(sixty({})).at(BigInt(number) - 1n));
    const steps = orders.slice(1).map((order, i) => swapDistance(orders[i], order));
    expect(kept!.rows[0]).toMatchObject({ number: '60', why: 'Begin here.' });
    expect(kept!.rows.map(({ number }) => Number(number)).sort((a, b) => a - b)).toEqual([1, 2, 30, 60]);
    kept!.rows.slice(1).forEach(({ why, between }, i) => {
      if (steps[i] === 1) expect(why).toMatch(/^Cells \d and \d change places: /);
      else expect(between).toHaveLength(steps[i] - 1);
    });
    expect(kept?.says).toContain('Practice these four in this order');
  });

  it('orders of hundreds of cells are put in a row, without the steps between', () => {
    const many = { cells: 'R*480,L*480', bars: '8', meter: '15/4', grid: '8' };
    const { kept } = ask({ ...many, kept: `1,${'9'.repeat(200)}` });
    expect(kept?.rows[1].why).toMatch(/swaps from the one before/);
    expect(kept?.rows[1].between).toBeUndefined();
  });

  it('no swap leads to what is made of other cells: it stands at the end and says so', () => {
    const { kept } = ask({ cells: 'kick,flam-drag,rll', kept: '1,2,3' });
    expect(kept?.rows.at(-1)?.why).toBe('Made of other cells.');
  });
});

describe('what is too much', () => {
  it('is left to a worker where it would hold up the page', () => {
    const { onPage } = createCalculator();
    expect(onPage({ name: 'orders', inputs: ORDERS, props })?.count).toBe(60n);
    expect(onPage({ name: 'orders', inputs: { ...ORDERS, ...MANY }, props })).toBeUndefined();
    expect(() => answerOrders({ ...ORDERS, ...MANY }, props, { ...ON_PAGE, states: 100 })).toThrow(TooLarge);
    expect(ask(MANY).count).toBeGreaterThan(10n ** 6n);
  });

  it('gets a sentence with the reason where it cannot be counted at all', () => {
    expect(ask(TOO_MANY).faults.cells.says).toMatch(
      /^This is too much to count here: .* more than 300,000 half-laid bars/,
    );
  });
});
