import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  DEFAULTS,
  LARGEST_FILE,
  merged,
  openOwnData,
  openStorage,
  readFile,
  writeFile,
  type Stored,
} from '../../src/storage/index.ts';
import { emptyStored, VERSION } from '../../src/storage/shape.ts';
import { KEPT, SETTINGS_KEPT } from '../../src/words/privacy.ts';
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

describe('a file', () => {
  test('holds everything, and gives it back', () => {
    expect(readFile(writeFile(FULL))).toEqual({ ok: true, stored: FULL, whole: true });
  });

  test('gives back whatever a store may hold', () => {
    const memory = fc.record(
      { tempo: fc.integer({ min: 30, max: 300 }), lead: fc.constantFrom('written', 'left', 'alternating') },
      { requiredKeys: [] },
    );
    const id = fc.stringMatching(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    const stored = fc.record({
      version: fc.constant(VERSION),
      exercises: fc.dictionary(id, memory, { noNullPrototype: true }),
      site: fc.constantFrom({}, { swing: 2 }, { ...DEFAULTS }),
      done: fc.uniqueArray(id),
    }) as fc.Arbitrary<Stored>;
    fc.assert(
      fc.property(stored, (one) => {
        expect(readFile(writeFile(one))).toEqual({ ok: true, stored: one, whole: true });
      }),
    );
  });

  test.each([
    ['is no data at all', 'a letter to the drum shop', 'no-data'],
    ['was cut off', writeFile(FULL).slice(0, -20), 'no-data'],
    ['is empty', '', 'no-data'],
    ['comes from somewhere else', '{"version":1,"exercises":{},"site":{},"done":[]}', 'not-ours'],
    ['says no version', '{"kind":"barwright player data"}', 'not-ours'],
    ['comes from a newer site', writeFile({ ...FULL, version: (VERSION + 1) as typeof VERSION }), 'newer'],
    ['is far too large', ' '.repeat(LARGEST_FILE + 1), 'too-large'],
  ])('that %s is refused, with the reason', (_, text, why) => {
    expect(readFile(text)).toEqual({ ok: false, why });
  });

  test('of which part cannot be used gives the rest, and says so', () => {
    const text = writeFile(FULL).replace('72', '"fast"');
    const { ok, stored, whole } = readFile(text) as { ok: boolean; stored: Stored; whole: boolean };
    expect([ok, whole]).toEqual([true, false]);
    expect(stored).toEqual({ ...FULL, exercises: { ...FULL.exercises, 'flam-drag-slow': { lead: 'left' } } });
  });

  test('never throws, whatever it holds', () => {
    fc.assert(
      fc.property(fc.string(), fc.jsonValue(), (text, value) => {
        readFile(text);
        readFile(JSON.stringify({ kind: 'barwright player data', version: VERSION, ...Object(value) }));
      }),
    );
  });
});

describe('taken together with what is there', () => {
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
});

describe('everything kept', () => {
  test('is what the players kept', () => {
    const area = new FakeArea();
    openStorage({ area, base: '/', events: undefined }).setLast('x');
    expect(own(area).read()).toEqual({ ...emptyStored(), last: 'x' });
  });

  test('can be put back as it was', () => {
    const area = new FakeArea({ [KEY]: JSON.stringify(FULL) });
    const before = own(area).read();
    own(area).write(merged(before, { ...emptyStored(), exercises: { other: { tempo: 40 } } }));
    expect(own(area).read().exercises.other).toEqual({ tempo: 40 });
    own(area).write(before);
    expect(own(area).read()).toEqual(FULL);
  });

  test('goes altogether, with what could not be read; the data of another site stays', () => {
    const area = new FakeArea({ [KEY]: '{"version":1,"torn', 'barwright:/drums/': '{}', other: 'x' });
    openStorage({ area, base: '/', events: undefined }).setLast('x');
    expect(own(area).unread()).toEqual(['{"version":1,"torn']);
    expect(own(area).forget()).toBe(true);
    expect([...area.kept.keys()]).toEqual(['barwright:/drums/', 'other']);
  });

  test('where there is no room, what was kept is still there', () => {
    const area = new FakeArea({ [KEY]: JSON.stringify(FULL) }, 10);
    expect(own(area).write(emptyStored())).toBe(false);
    expect(own(area).read()).toEqual(FULL);
  });

  test.each([
    ['is blocked', blocked],
    ['is not there', undefined],
  ])('where the browser’s storage %s, that is said and nothing throws', (_, area) => {
    const data = openOwnData({ area, base: '/' });
    expect([data.readable, data.read(), data.unread(), data.write(FULL), data.forget()]).toEqual([
      false,
      emptyStored(),
      [],
      false,
      false,
    ]);
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
