import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printSumAddress, readSumAddress } from '../../src/bar-math/address.ts';
import { AGAINST, answerAgainst } from '../../src/bar-math/against.ts';
import { answerCount, COUNT } from '../../src/bar-math/count.ts';
import { answerFit, FIT } from '../../src/bar-math/fit.ts';
import { answerOrders, randomOrder, ORDERS } from '../../src/bar-math/orders/orders.ts';
import { plainCells } from '../../src/bar-math/cells.ts';
import { answerResolve, RESOLVE } from '../../src/bar-math/resolve.ts';
import { readRows, writeRows } from '../../src/bar-math/orders/rows.ts';
import { answerSpeed, SPEED } from '../../src/bar-math/speed.ts';
import { answerSpread, SPREAD } from '../../src/bar-math/spread.ts';
import type { Answer, Inputs, SumProps } from '../../src/bar-math/types.ts';
import { TooLarge } from '../../src/core/index.ts';
import { ON_PAGE } from '../../src/bar-math/limits.ts';
import { beatsOf } from '../../src/bar-math/ruler.ts';
import { runs } from '../helpers/arbitrary.ts';
import { atSchool } from '../helpers/at-school.ts';

const props: SumProps = {
  named: [
    { id: 'flam-drag', name: 'flam drag', text: '>lR LL R' },
    { id: 'kick', name: 'kick', text: 'K' },
    { id: 'rll', name: 'R L L', text: 'R L L' },
    { id: 'single-left', name: 'single', text: 'L' },
  ],
};

/** The seven, each with what stands in its fields at first. */
const SUMS: [string, Inputs, (inputs: Inputs, props: SumProps) => Answer][] = [
  ['fit', FIT, answerFit],
  ['resolve', RESOLVE, answerResolve],
  ['count', COUNT, answerCount],
  ['speed', SPEED, answerSpeed],
  ['orders', ORDERS, answerOrders],
  ['spread', SPREAD, answerSpread],
  ['against', AGAINST, answerAgainst],
];

const NONSENSE = ['', ' ', '0', '-1', '1e9', '2.5', '1/2', 'abc', '99999999999999999999', '٣', '🥁', '<b>'];
const told = (answer: Answer): string =>
  JSON.stringify([
    answer.says,
    answer.more,
    answer.faults,
    answer.ruler?.label,
    answer.ruler?.cells?.map((c) => c.name),
  ]);

describe('whatever is typed', () => {
  it.each(SUMS)('%s answers, or says at the field why it cannot', (_name, first, answer) => {
    for (const field of Object.keys(first))
      for (const typed of NONSENSE) {
        const given = answer({ ...first, [field]: typed }, props);
        expect(told(given)).not.toMatch(/NaN|undefined|Infinity/);
        if (!given.says)
          expect(
            Object.values(given.faults)
              .map(({ says }) => says)
              .join(''),
          ).not.toBe('');
      }
  });

  it.each(SUMS)('%s never throws', (_name, first, answer) => {
    const typed = fc.record(
      Object.fromEntries(Object.keys(first).map((field) => [field, fc.string({ maxLength: 12 })])),
    );
    fc.assert(
      fc.property(typed, (inputs) => void answer(inputs, props)),
      runs(100),
    );
  });

  it.each(SUMS)('%s has an answer to begin with', (_name, first, answer) => {
    const given = answer(first, props);
    expect(given.faults).toEqual({});
    expect(given.says).toMatch(/^[A-Z].*\.$/);
    expect(given.ruler?.label).not.toBe('');
  });
});

describe('where a school says measure', () => {
  const modules = import.meta.glob<Record<string, unknown>>([
    '../../src/bar-math/*.ts',
    '../../src/bar-math/orders/orders.ts',
  ]);

  it.each(SUMS)('%s does', async (name, first, { name: exported }) => {
    const module = await atSchool(
      { barWord: 'measure' },
      modules[`../../src/bar-math/${name === 'orders' ? 'orders/orders' : name}.ts`],
    );
    const answer = module[exported] as (typeof SUMS)[number][2];
    const bars: Inputs = 'bars' in first ? { bars: '2' } : {};
    expect(told(answer({ ...first, ...bars }, props))).not.toMatch(/\bbars?\b/i);
  });

  it('so does the page', async () => {
    const words = await atSchool({ barWord: 'measure' }, () => import('../../src/words/bar-math.ts'));
    expect(words.BAR_MATH_PAGE.title).toBe('Measure math');
    expect(JSON.stringify(words.BAR_SUMS)).not.toMatch(/\bbars?\b/i);
  });
});

describe('does it fit', () => {
  const says = (change: Inputs) => answerFit({ ...FIT, ...change }, props).says;

  it.each<[Inputs, string]>([
    [{}, 'Three into sixteen goes five times and leaves one, the a of 4.'],
    [{ cell: '3', grid: '3' }, 'Three into twelve goes four times and leaves nothing.'],
    [{ bars: '2' }, 'Three into thirty-two goes ten times and leaves two, from the & of 4 in bar 2.'],
    [{ cell: '17' }, 'Seventeen into sixteen does not go: the cell is one too long.'],
    [{ cell: '{>lR LL R}2 K' }, 'Seven into sixteen goes twice and leaves two, from the & of 4.'],
  ])('%j', (change, sentence) => expect(says(change)).toBe(sentence));

  it('says what could stand in the gap, and lays it there', () => {
    const { more, fillings, ruler, play } = answerFit({ ...FIT, rest: 'kick' }, props);
    expect(more).toEqual(['One can be filled in two ways by a single or a kick.']);
    expect(fillings?.some.map(({ value }) => value)).toEqual(['single-left', 'kick']);
    expect(ruler?.cells?.at(-1)).toMatchObject({ name: 'kick', slots: 1 });
    expect(play?.timeline.strokes.at(-1)).toMatchObject({ limb: 'K', count: '4 a' });
  });

  it('shows a fault of the sticking with its place', () => {
    const { faults } = answerFit({ ...FIT, cell: 'R rR' }, props);
    expect(faults.cell.caret).toBe('  R rR\n    ^');
  });
});

describe('where it resolves', () => {
  it('tells the starts bar by bar', () => {
    const { says, starts } = answerResolve(RESOLVE, props);
    expect(says).toBe('Three over sixteen is back on beat 1 after three bars and sixteen cells.');
    expect(starts?.[1].says).toBe('the & of 1, the e of 2, beat 3, the a of 3 and the & of 4.');
  });

  it('draws no more bars than one can read, and says so', () => {
    const { ruler, more } = answerResolve({ ...RESOLVE, cell: '31' }, props);
    expect([ruler?.bars, more]).toEqual([8, ['The first 8 bars are drawn.']]);
  });
});

describe('the largest cells', () => {
  const most = { meter: '15/4', grid: '8' };

  it('are told, drawn up to 128 slots and not played where they are too long', () => {
    const { says, more, ruler, starts, play } = answerResolve({ ...most, cell: '{R}4091' }, props);
    expect(says).toContain('after 4,091 bars');
    expect(more).toEqual([
      'The first bar is drawn.',
      'Where the cells start is told for the first 32 bars.',
      'This is too long to be played here: at most 32 bars and 8,192 strokes can be.',
    ]);
    expect([ruler?.bars, starts?.length, play]).toEqual([1, 32, undefined]);
    expect(ruler?.cells?.flatMap(({ marks = [] }) => marks)).toHaveLength(120);
    expect(beatsOf(ruler!)).toHaveLength(15);
  });

  it.each<[Inputs, typeof answerResolve]>([
    [{ ...RESOLVE, ...most, cell: '{lR}4095' }, answerResolve],
    [{ ...FIT, ...most, bars: '8', cell: 'lR+K lR+K lR+K' }, answerFit],
  ])('%j is left to a worker', (inputs, answer) => {
    expect(() => answer(inputs, props, ON_PAGE)).toThrow(TooLarge);
    expect(answer(inputs, props).says).not.toBe('');
  });

  it.each(SUMS)('%s says of every field how much it can hold', (_name, first, answer) => {
    for (const field of Object.keys(first).filter((name) => name !== 'cells')) {
      const { says, faults } = answer({ ...first, [field]: '1'.repeat(5000) }, props);
      expect(faults[field].says).toBe('5,000 characters are too many here: at most 4,096 can stand.');
      expect(says).toMatch(/^$|One of the rules/);
    }
  });
});

describe('what count is it', () => {
  it.each<Inputs>([
    { as: 'count', at: '4 a' },
    { as: 'count', at: 'the a of 4' },
    { as: 'slot', at: '16' },
    { as: 'tick', at: '75600' },
  ])('%j is one place', (change) => {
    const { place, says } = answerCount({ ...COUNT, ...change });
    expect(place).toEqual({ count: '4 a', slot: '16', tick: '75600' });
    expect(says).toContain('the last is on the e of 2 in bar 2, and the next stroke comes on the & of 2 in bar 2.');
  });

  it('says between which slots a tick lies', () => {
    const { faults } = answerCount({ ...COUNT, as: 'tick', at: '75601' });
    expect(faults.at.says).toBe('No sixteenth starts there: it is 1 tick after the sixteenth at 75600.');
  });
});

describe('how fast is that', () => {
  it('keeps turns and rebounds apart', () => {
    const { says, more } = answerSpeed({ ...SPEED, way: 'diddles' });
    expect(says).toBe(
      'Sixteenths at 120 with a diddle in each: each hand turns 4 times a second and plays 8 strokes; the rebound comes 62.5 ms after the first.',
    );
    expect(more).toContain('For the hands, 120 in sixteenths is 160 in triplets.');
  });

  it('knows that a flam is never wider than half the slot before it', () => {
    expect(answerSpeed({ ...SPEED, flam: '80' }).more?.[1]).toContain('64 % of the sixteenth: more than half');
  });
});

describe('how many orders', () => {
  const ask = (change: Inputs) => answerOrders({ ...ORDERS, ...change }, props);

  it.each<[Inputs, string]>([
    [{}, 'Sixty orders fill the bar.'],
    [{ run: '2', graces: 'yes' }, 'Six orders fill the bar and keep to the rules.'],
    [{ first: '1', last: '2' }, 'Six orders fill the bar and keep to the rules.'],
    [{ cells: '3,5', meter: '7/4', grid: '1' }, 'None: cells of 3 and 5 cannot fill 7.'],
    [{ cells: 'kick,flam-drag', bars: '2' }, '125,491 orders fill the two bars.'],
  ])('%j', (change, sentence) => expect(ask(change).says).toBe(sentence));

  it('shows any of them, and draws one fairly', () => {
    expect(ask({ order: '60' }).more).toEqual(['Number 60 of 60: R L L × 2, flam drag × 3, kick.']);
    expect(ask({ order: '61' }).faults.order.says).toBe('“61” cannot stand here: a whole number from 1 to 60 can.');
    expect([0, 0.25, 0.5].map((drawn) => randomOrder(ORDERS, props, () => drawn))).toEqual([1n, 17n, 33n]);
  });

  it('says in the open what is wrong with a rule that may be folded away', () => {
    expect(ask({ accents: '9' }).says).toBe(
      'One of the rules cannot be kept. “9” is no count here: the beats are 1 to 4.',
    );
  });
});

describe('even spreads and two against each other', () => {
  it('say where they fall', () => {
    expect(answerSpread(SPREAD).says).toBe('Three accents in eight, as even as can be: 3 3 2, on 1, 2 & and 4.');
    expect(answerAgainst(AGAINST)).toMatchObject({
      says: 'Four against three takes twelve slots: the right hand plays every third, the left every fourth, and they meet on 1 alone.',
      sticking: 'R+L - - R L - R - L R - -',
    });
  });

  it('say what no bar can hold', () => {
    expect(answerSpread({ ...SPREAD, slots: '17' }).faults.slots.says).toContain('Seventeen slots make no bar');
    expect(answerAgainst({ right: '9', left: '10' }).says).toContain('cannot be written here');
  });

  it('go on hand to hand after an odd bar', () => {
    const { play, ruler } = answerSpread({ ...SPREAD, slots: '7' });
    const limbs = play!.timeline.strokes.map(({ limb }) => limb);
    expect(ruler?.bars).toBe(2);
    expect(limbs).toEqual([...'RLRLRLRLRLRLRL']);
  });
});

describe('the address', () => {
  it('can be read, and comes back as it was', () => {
    const inputs = { cell: '>lR LL R', bars: '2', meter: '2+2+3/8', accents: '1, 2 &' };
    expect(printSumAddress({ name: 'fit', inputs })).toBe(
      '#fit&cell=%3ElR+LL+R&bars=2&meter=2%2B2%2B3/8&accents=1,+2+%26',
    );
    fc.assert(
      fc.property(fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), fc.string({ unit: 'grapheme' })), (any) => {
        expect(readSumAddress(printSumAddress({ name: 'fit', inputs: any }))).toEqual({
          name: 'fit',
          inputs: { ...any },
        });
      }),
      runs(300),
    );
  });

  it('holds whatever can be typed, half a character as a sign for it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (cell, field) => {
        const typed = { name: cell, inputs: { cell: `${cell}\udfff`, [`x${field}`]: `\ud800${field}` } };
        const read = readSumAddress(printSumAddress(typed));
        expect(Object.values(read.inputs)).toEqual(
          [`${cell}\udfff`, `\ud800${field}`].map((text) => text.toWellFormed()),
        );
      }),
      runs(300),
    );
    expect(printSumAddress({ name: 'fit', inputs: { cell: 'R \ud800' } })).toBe('#fit&cell=R+%EF%BF%BD');
  });

  it('is read whatever stands in it', () => {
    fc.assert(
      fc.property(fc.string(), (hash) => void readSumAddress(hash)),
      runs(300),
    );
    expect(readSumAddress('#fit&cell=%E0%A4%A&&x')).toEqual({ name: 'fit', inputs: { cell: '%E0%A4%A', x: '' } });
  });

  it('holds rows of cells', () => {
    const text = 'kick*1,flam-drag*3,R L L';
    expect(writeRows(readRows(text))).toBe(text);
    expect(writeRows([{ cell: 'R,L', uses: '' }])).toBe('R L');
  });
});

describe('cells to build with', () => {
  it('are short, on no surface, each once', () => {
    const cells = { a: 'R L', b: 'R L', c: 'R@ride L', d: '- -', e: 'R L R L R L R L R', f: 'R L\nfeet: K -' };
    const map = new Map(Object.entries(cells).map(([id, sticking]) => [id, { name: id, sticking }]));
    expect(plainCells(map)).toEqual([{ id: 'a', name: 'a', text: 'R L' }]);
  });
});
