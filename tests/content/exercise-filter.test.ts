import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  printFilters,
  readFilters,
  sift,
  TEMPOS,
  type Choice,
  type Field,
  type FilterRow,
} from '../../src/curriculum/exercise-filter.ts';
import { runs } from '../helpers/arbitrary.ts';

const FIELDS: Field[] = [
  { name: 'part', values: ['1', '2', '6', '10'] },
  { name: 'grid', values: ['2', '3', '4'] },
  { name: 'meter', values: ['4/4', '5/4', '2+2+3/8'] },
  { name: 'rudiment', values: ['flam', 'flam-drag'] },
  { name: 'with', values: ['flams', 'diddles', 'kicks'], several: true },
];

const read = (search: string) => readFilters(search, FIELDS);
const print = (choices: readonly Choice[], search = '') => printFilters(choices, search, FIELDS);

/** Choices as a form can make them, in the order of the form. */
const choices: fc.Arbitrary<Choice[]> = fc
  .tuple(
    ...FIELDS.map(({ name, values, several }) =>
      fc
        .subarray([...values], { maxLength: several ? values.length : 1 })
        .map((some) => some.map((v) => `${name}=${v}`)),
    ),
    fc.option(fc.integer({ min: TEMPOS.min, max: TEMPOS.max })).map((bpm) => (bpm === null ? [] : [`tempo=${bpm}`])),
  )
  .map((each) => each.flat());

const row: fc.Arbitrary<FilterRow> = fc.record({
  facts: fc
    .tuple(...FIELDS.map(({ name, values }) => fc.subarray([...values]).map((some) => some.map((v) => `${name}=${v}`))))
    .map((each) => new Set(each.flat())),
  from: fc.integer({ min: 30, max: 120 }),
  to: fc.integer({ min: 121, max: 300 }),
});
const rows = fc.array(row, { maxLength: 20 });

describe('the address of a filtered list', () => {
  test('is short and readable', () => {
    expect(print(['part=6', 'grid=4', 'with=flams', 'with=kicks'])).toBe('?part=6&grid=4&with=flams,kicks');
    expect(print(['meter=2+2+3/8', 'tempo=80'])).toBe('?meter=2+2+3/8&tempo=80');
    expect(print([])).toBe('');
  });

  test('is the same whatever order things were chosen in', () => {
    fc.assert(
      fc.property(
        choices.chain((some) => fc.tuple(fc.constant(some), fc.shuffledSubarray(some, { minLength: some.length }))),
        ([some, shuffled]) => {
          expect(read(print(shuffled)).choices).toEqual(some);
        },
      ),
      runs(300),
    );
  });

  test('brings back exactly what was chosen', () => {
    fc.assert(
      fc.property(choices, (some) => {
        expect(read(print(some))).toEqual({ choices: some, unknown: [] });
      }),
      runs(500),
    );
  });

  test('survives being encoded on its way', () => {
    fc.assert(
      fc.property(choices, (some) => {
        const encoded = new URLSearchParams(print(some)).toString();
        expect(read(encoded)).toEqual({ choices: some, unknown: [] });
      }),
      runs(200),
    );
  });

  test('names what is not to be had and keeps the rest', () => {
    expect(read('?part=6&grid=9&with=flams,bells&tempo=fast&meter=4/4')).toEqual({
      choices: ['part=6', 'meter=4/4', 'with=flams'],
      unknown: [
        { name: 'grid', value: '9' },
        { name: 'with', value: 'bells' },
        { name: 'tempo', value: 'fast' },
      ],
    });
  });

  test.each(['29', '301', '80.5', '-80', '1e2', '80 90'])('takes no tempo of %s', (tempo) => {
    expect(read(`?tempo=${encodeURIComponent(tempo)}`).choices).toEqual([]);
    expect(read(`?tempo=${encodeURIComponent(tempo)}`).unknown).toHaveLength(1);
  });

  test('leaves alone what belongs to others, and does not pass on what it does not know', () => {
    expect(print(['part=6'], '?set=a,b&grid=9&part=1')).toBe('?part=6&set=a%2Cb');
  });

  test('never throws, and finds nothing that is not there', () => {
    const possible = new Set(FIELDS.flatMap(({ name, values }) => values.map((value) => `${name}=${value}`)));
    fc.assert(
      fc.property(fc.string(), (text) => {
        const found = read(text).choices.filter((choice) => !choice.startsWith('tempo='));
        expect(found.filter((choice) => !possible.has(choice))).toEqual([]);
      }),
      runs(500),
    );
  });
});

describe('several filters at once', () => {
  const shown = (all: readonly FilterRow[], some: readonly Choice[]) => sift(all, some, FIELDS).shown;

  test('show what each of them alone would show', () => {
    fc.assert(
      fc.property(rows, choices, (all, some) => {
        const each = some.map((choice) => shown(all, [choice]));
        expect(shown(all, some)).toEqual(all.map((_, at) => each.every((one) => one[at])));
      }),
      runs(500),
    );
  });

  test('none show everything', () => {
    fc.assert(
      fc.property(rows, (all) => {
        expect(sift(all, [], FIELDS).total).toBe(all.length);
      }),
    );
  });

  test('hold a tempo that lies in the range of the exercise, its ends included', () => {
    const [one] = [{ facts: new Set<string>(), from: 50, to: 90 }];
    const at = (bpm: number) => shown([one], [`tempo=${bpm}`])[0];
    expect([49, 50, 70, 90, 91].map(at)).toEqual([false, true, true, true, false]);
  });

  test('the number beside a choice is how many there are once it is chosen', () => {
    const values = FIELDS.flatMap(({ name, values, several }) => values.map((value) => ({ name, value, several })));
    fc.assert(
      fc.property(rows, choices, fc.constantFrom(...values), (all, some, { name, value, several }) => {
        const choice = `${name}=${value}`;
        const others = some.filter((one) => (several ? one !== choice : !one.startsWith(`${name}=`)));
        const told = sift(all, some, FIELDS).counts.get(choice) ?? 0;
        expect(told).toBe(sift(all, [...others, choice], FIELDS).total);
      }),
      runs(500),
    );
  });

  test('the number beside a way out is how many there are without that filter', () => {
    fc.assert(
      fc.property(rows, choices, (all, some) => {
        const { without } = sift(all, some, FIELDS);
        const looser = some.map((choice) => [
          choice,
          sift(
            all,
            some.filter((one) => one !== choice),
            FIELDS,
          ).total,
        ]);
        expect([...without]).toEqual(looser);
      }),
      runs(500),
    );
  });
});
