import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  changesBetween,
  DEFAULTS,
  LARGEST_FILE,
  merged,
  openLessons,
  openOwnData,
  openPlayers,
  readFile,
  undone,
  writeFile,
  type Stored,
} from '../../src/storage/index.ts';
import { emptyStored } from '../../src/storage/kept.ts';
import { VERSION } from '../../src/storage/shelf.ts';
import { KEPT, leftOutSays, SETTINGS_KEPT, undoneSays } from '../../src/words/privacy.ts';
import { runs } from '../helpers/arbitrary.ts';
import { blocked, FakeArea } from './areas.ts';

const KEY = 'barwright:/';

const FULL: Stored = {
  version: VERSION,
  exercises: { 'flam-drag-slow': { tempo: 72, lead: 'left' }, other: { tempo: 90 } },
  site: { swing: 2 },
  done: ['where-is-one'],
  last: 'the-flam-drag',
  puzzles: [{ kind: 'fill', seed: 7, day: '2026-11-25', right: true, misses: 1, hints: 0 }],
};

const own = (area: FakeArea) => openOwnData({ area, base: '/' });
const fileOf = (stored: object) => JSON.stringify({ kind: 'barwright player data', ...stored });

/** Whatever a store may hold. */
const stored: fc.Arbitrary<Stored> = (() => {
  const id = fc.stringMatching(/^[a-z]{1,3}$/);
  const memory = fc.oneof(
    fc.record({ tempo: fc.integer({ min: 30, max: 300 }) }),
    fc.record({ lead: fc.constantFrom('written', 'left', 'alternating') }),
  );
  const puzzle = fc.record({
    kind: fc.constantFrom('fill', 'fix'),
    seed: fc.integer({ min: 1, max: 5 }),
    day: fc.constantFrom('2026-11-25', '2026-11-26'),
    right: fc.boolean(),
    misses: fc.nat(9),
    hints: fc.nat(9),
  });
  return fc
    .record({
      version: fc.constant(VERSION),
      exercises: fc.dictionary(id, memory, { noNullPrototype: true }),
      site: fc.constantFrom({}, { swing: 2 }, { ...DEFAULTS }),
      done: fc.uniqueArray(id),
      last: fc.option(id, { nil: undefined }),
      puzzles: fc.uniqueArray(puzzle, { selector: ({ kind, seed }) => `${kind} ${seed}` }),
    })
    .map(({ last, puzzles, ...rest }) => ({
      ...rest,
      ...(last ? { last } : {}),
      ...(puzzles.length ? { puzzles: puzzles.sort((a, b) => a.day.localeCompare(b.day)) } : {}),
    })) as fc.Arbitrary<Stored>;
})();

/** Regardless of the order in which ids and puzzles of one day stand. */
const unordered = ({ done, puzzles = [], ...rest }: Stored) => ({
  ...rest,
  done: [...done].sort(),
  puzzles: puzzles.map((one) => JSON.stringify(one)).sort(),
});

describe('a file', () => {
  test('holds everything, with the texts that could not be read, and gives it back', () => {
    const saved = { stored: FULL, unread: ['{"version":7}', 'torn'] };
    expect(readFile(writeFile(saved))).toEqual({ ok: true, leftOut: [], ...saved });
  });

  test('gives back whatever a store may hold', () => {
    fc.assert(
      fc.property(stored, (one) => {
        expect(readFile(writeFile({ stored: one, unread: [] }))).toEqual({
          ok: true,
          stored: one,
          leftOut: [],
          unread: [],
        });
      }),
      runs(100),
    );
  });

  const text = writeFile({ stored: FULL, unread: [] });
  test.each([
    ['is no data at all', 'a letter to the drum shop', 'no-data'],
    ['was cut off', text.slice(0, -20), 'no-data'],
    ['is empty', '', 'no-data'],
    ['comes from somewhere else', '{"version":1,"exercises":{},"site":{},"done":[]}', 'not-ours'],
    ['says no version', fileOf({}), 'not-ours'],
    ['says a version that never was', fileOf({ ...FULL, version: 0 }), 'not-ours'],
    ['comes from a newer site', fileOf({ ...FULL, version: VERSION + 1 }), 'newer'],
    ['holds nothing that can be used', fileOf({ version: 1, exercises: [], site: 7 }), 'nothing-fits'],
    ['is far too large', ' '.repeat(LARGEST_FILE + 1), 'too-large'],
  ])('that %s is refused, with the reason', (_, odd, why) => {
    expect(readFile(odd)).toEqual({ ok: false, why });
  });

  test('of which part cannot be used gives the rest, and says what was left out and what could stand there', () => {
    const reading = readFile(
      fileOf({
        ...FULL,
        exercises: { ...FULL.exercises, 'flam-drag-slow': { tempo: 'fast', lead: 'left' } },
        site: { swing: 900, click: 'loud', color: 'red' },
        puzzles: [{ ...FULL.puzzles![0], seed: 1.5 }],
      }),
    );
    expect(reading).toMatchObject({
      ok: true,
      stored: { exercises: { 'flam-drag-slow': { lead: 'left' } }, site: {} },
    });
    expect(reading.ok && reading.leftOut.slice(0, 5).map(leftOutSays)).toEqual([
      'exercises › flam-drag-slow › tempo: "fast" (it can be 30–300)',
      'site › swing: 900 (it can be 1–4)',
      'site › click: "loud" (it can be off, beats, slots)',
      'site › color: "red"',
      'puzzles › 0 › seed: 1.5 (it can be 1–999999999)',
    ]);
  });

  test.each(['__proto__', 'constructor', 'toString', '__defineGetter__', 'hasOwnProperty'])(
    'in which %s is the name of something says so',
    (name) => {
      for (const part of ['site', 'exercises', `a": {}, "${name}`]) {
        const odd = `{"kind":"barwright player data","version":1,"last":"l","${part}":{"${name}":{"${name}":1}}}`;
        const reading = readFile(odd);
        expect(reading).toMatchObject({ ok: true, stored: { last: 'l', site: {} } });
        expect(reading.ok && reading.leftOut.length).toBeGreaterThan(0);
      }
    },
  );

  test('never throws, whatever it holds', () => {
    fc.assert(
      fc.property(fc.string(), fc.jsonValue(), (odd, value) => {
        readFile(odd);
        readFile(JSON.stringify({ kind: 'barwright player data', version: VERSION, ...Object(value) }));
      }),
    );
  });
});

describe('an import', () => {
  const here: Stored = {
    ...emptyStored(),
    exercises: { 'flam-drag-slow': { tempo: 60 }, mine: { lead: 'left' } },
    site: { swing: 1, loop: false },
    done: ['a'],
    last: 'a',
  };

  test('the file goes before, and nothing that stands only here is lost', () => {
    expect(merged(here, FULL)).toEqual({
      version: VERSION,
      exercises: { 'flam-drag-slow': { tempo: 72, lead: 'left' }, mine: { lead: 'left' }, other: { tempo: 90 } },
      site: { swing: 2, loop: false },
      done: ['a', 'where-is-one'],
      last: 'the-flam-drag',
      puzzles: FULL.puzzles,
    });
  });

  test('an empty file changes nothing', () => {
    expect(merged(here, emptyStored())).toEqual(here);
  });

  test('neither of the two is changed', () => {
    const before = structuredClone([here, FULL]);
    merged(here, FULL);
    expect([here, FULL]).toEqual(before);
  });

  test('that is undone leaves what was there before', () => {
    fc.assert(
      fc.property(stored, stored, (before, file) => {
        const after = merged(before, file);
        const back = undone(after, changesBetween(before, after));
        expect(unordered(back.stored)).toEqual(unordered(before));
        expect(back.left).toEqual([]);
      }),
      runs(200),
    );
  });

  test('that is undone leaves what was changed since, and says what', () => {
    const after = merged(here, FULL);
    const changes = changesBetween(here, after);
    const since: Stored = {
      ...after,
      exercises: { ...after.exercises, 'flam-drag-slow': { tempo: 80, lead: 'left' }, fresh: { tempo: 40 } },
      done: [...after.done, 'b'],
    };
    const { stored: back, left } = undone(since, changes);
    expect(back).toEqual({
      ...here,
      exercises: { ...here.exercises, 'flam-drag-slow': { tempo: 80 }, fresh: { tempo: 40 } },
      done: ['a', 'b'],
    });
    expect(undoneSays(left)).toBe(
      'Import undone, except for what has changed since: exercises › flam-drag-slow › tempo.',
    );
  });

  test('undone brings back the puzzles that it pushed out', () => {
    const puzzle = (seed: number, day: string) => ({ ...FULL.puzzles![0], seed, day });
    const old = Array.from({ length: 500 }, (_, index) => puzzle(index + 1, '2026-01-01'));
    const before = { ...emptyStored(), puzzles: old };
    const after = merged(before, { ...emptyStored(), puzzles: [puzzle(999, '2026-02-02')] });
    expect(after.puzzles).toHaveLength(500);
    const { stored: back } = undone(after, changesBetween(before, after));
    expect(unordered(back)).toEqual(unordered(before));
  });
});

describe('everything kept', () => {
  test('is what the parts of the site kept', () => {
    const area = new FakeArea();
    openLessons({ area, base: '/', events: undefined }).setLast('x');
    openPlayers({ area, base: '/', events: undefined }).setSite({ swing: 2 });
    expect(own(area).read()).toEqual({
      stored: { ...emptyStored(), last: 'x', site: { swing: 2 } },
      leftOut: [],
      unread: [],
    });
  });

  test.each(['torn {', '{"version":2,"done":["a"]}', '{"version":1,"site":{"swing":900}}'])(
    'that cannot be read is shown, and kept when something takes its place: %s',
    (text) => {
      const area = new FakeArea({ [KEY]: text });
      const data = own(area);
      expect(data.read().unread).toEqual([text]);
      expect(data.write(FULL, ['from a file'])).toBe(true);
      expect(data.read()).toEqual({ stored: FULL, leftOut: [], unread: [text, 'from a file'] });
      expect(data.deleteUnread(['from a file'])).toBe(true);
      expect(data.read().unread).toEqual([text]);
      expect(data.deleteUnread()).toBe(true);
      expect(data.read()).toEqual({ stored: FULL, leftOut: [], unread: [] });
    },
  );

  test('that cannot be read in part can be deleted alone', () => {
    const area = new FakeArea({ [KEY]: '{"version":1,"site":{"swing":900,"loop":false}}' });
    expect(own(area).deleteUnread()).toBe(true);
    expect(JSON.parse(area.kept.get(KEY)!)).toEqual({ ...emptyStored(), site: { loop: false } });
    expect([...area.kept.keys()]).toEqual([KEY]);
  });

  test('goes altogether, with what could not be read; the data of another site stays', () => {
    const area = new FakeArea({ [KEY]: '{"version":1,"torn', 'barwright:/drums/': '{}', other: 'x' });
    openLessons({ area, base: '/', events: undefined }).setLast('x');
    expect(own(area).read().unread).toEqual(['{"version":1,"torn']);
    expect(own(area).deleteAll()).toBe(true);
    expect([...area.kept.keys()]).toEqual(['barwright:/drums/', 'other']);
  });

  test('where there is no room, everything is as it was', () => {
    const area = new FakeArea({ [KEY]: 'torn {' }, 10);
    const before = [...area.kept];
    expect(own(area).write(FULL, ['odd'])).toBe(false);
    expect([...area.kept]).toEqual(before);
  });

  test.each([
    ['is blocked', blocked],
    ['is not there', undefined],
  ])('where the browser’s storage %s, that is said and nothing throws', (_, area) => {
    const data = openOwnData({ area, base: '/' });
    expect([data.readable, data.write(FULL), data.deleteUnread(), data.deleteAll()]).toEqual([
      false,
      false,
      false,
      false,
    ]);
    expect(data.read()).toEqual({ stored: emptyStored(), leftOut: [], unread: [] });
  });
});

test('the page on privacy names everything that is kept, and nothing else', () => {
  expect(Object.keys(KEPT).sort()).toEqual(
    Object.keys(FULL)
      .filter((name) => name !== 'version')
      .sort(),
  );
  expect(Object.keys(SETTINGS_KEPT).sort()).toEqual(Object.keys(DEFAULTS).sort());
});
