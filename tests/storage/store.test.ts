import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  DEFAULTS,
  openLessons,
  openOwnData,
  openPlayers,
  openPuzzles,
  type StorageArea,
} from '../../src/storage/index.ts';
import { blocked, FakeArea } from './areas.ts';

const KEY = 'barwright:/';

const open = (area: StorageArea | undefined, events?: Window) => openPlayers({ area, base: '/', events });
const lessons = (area: StorageArea | undefined) => openLessons({ area, base: '/', events: undefined });
const puzzles = (area: StorageArea | undefined) => openPuzzles({ area, base: '/', events: undefined });
const everything = (area: StorageArea) => openOwnData({ area, base: '/' }).read();

describe('what a player chose', () => {
  test('is there when the page is opened again', () => {
    const area = new FakeArea();
    open(area).setExercise('five-and-one', { tempo: 72 });
    open(area).setExercise('five-and-one', { lead: 'left' });
    open(area).setSite({ swing: 2 });
    const again = open(area);
    expect(again.exercise('five-and-one')).toEqual({ tempo: 72, lead: 'left' });
    expect(again.exercise('another')).toEqual({});
    expect(again.site()).toEqual({ ...DEFAULTS, swing: 2 });
    expect(again.persistent).toBe(true);
  });

  test('can be forgotten for one exercise, and for all of them; lessons stay done', () => {
    const area = new FakeArea();
    const store = open(area);
    store.setExercise('a', { tempo: 60 });
    store.setExercise('b', { tempo: 61 });
    store.setSite({ loop: false });
    lessons(area).setDone('where-is-one', true);
    store.resetExercise('a');
    expect([store.exercise('a'), store.exercise('b')]).toEqual([{}, { tempo: 61 }]);
    store.resetPlayers();
    expect([store.exercise('b'), store.site(), lessons(area).done()]).toEqual([{}, DEFAULTS, ['where-is-one']]);
  });

  test('lessons are done once each, in the order they were done, and can be undone', () => {
    const store = lessons(new FakeArea());
    ['a', 'b', 'a'].forEach((id) => store.setDone(id, true));
    store.setLast('b');
    expect([store.done(), store.last()]).toEqual([['b', 'a'], 'b']);
    store.setDone('b', false);
    expect(store.done()).toEqual(['a']);
  });

  test('stays apart from the data of another site on the same host', () => {
    const area = new FakeArea();
    openLessons({ area, base: '/one/', events: undefined }).setLast('x');
    expect(openLessons({ area, base: '/two/', events: undefined }).last()).toBeUndefined();
  });
});

describe('another page of the same site', () => {
  test('does not lose what the other one wrote', () => {
    const area = new FakeArea();
    const [one, two] = [open(area), open(area)];
    one.setExercise('a', { tempo: 50 });
    two.setExercise('b', { tempo: 90 });
    expect(open(area).exercise('a')).toEqual({ tempo: 50 });
    expect(one.exercise('b')).toEqual({ tempo: 90 });
  });

  test('is told of a change, and of nothing else', () => {
    const area = new FakeArea();
    const events = new EventTarget() as unknown as Window;
    const store = open(area, events);
    let told = 0;
    const stop = store.on(() => (told += 1));
    const say = (key: string | null) => events.dispatchEvent(Object.assign(new Event('storage'), { key }));
    say('of another program');
    expect(told).toBe(0);
    say(KEY);
    say(null);
    expect(told).toBe(2);
    stop();
    say(KEY);
    expect(told).toBe(2);
  });
});

describe('a browser that keeps nothing', () => {
  test.each([
    ['has no storage', undefined],
    ['blocks it', blocked],
    ['has no room', new FakeArea({}, 0)],
  ])('%s: everything works until the page is left', (_, area) => {
    const store = open(area);
    store.setExercise('a', { tempo: 88 });
    store.setSite({ check: 2 });
    const marks = lessons(area);
    marks.setDone('l', true);
    expect([store.exercise('a').tempo, store.site().check, marks.done()]).toEqual([88, 2, ['l']]);
    expect([store.persistent, marks.persistent]).toEqual([false, false]);
  });
});

describe('data that cannot be read', () => {
  test.each([
    'not JSON',
    '[]',
    'null',
    '{"version":2,"exercises":{"a":{"tempo":60}},"site":{},"done":[]}',
    '{"version":0}',
    '{"__proto__":{"version":1}}',
  ])('is set aside whole before anything is written, by whichever part of the site writes: %s', (text) => {
    for (const write of [
      (area: StorageArea) => open(area).setExercise('b', { tempo: 70 }),
      (area: StorageArea) => open(area).resetPlayers(),
      (area: StorageArea) => lessons(area).setLast('l'),
      (area: StorageArea) => puzzles(area).notePuzzle(record),
    ]) {
      const area = new FakeArea({ [KEY]: text });
      write(area);
      expect(area.kept.get(`${KEY}:aside:1`)).toBe(text);
      expect(everything(area)).toMatchObject({ leftOut: [], unread: [text] });
    }
  });

  test('in a part is set aside before that part is written, and the rest holds', () => {
    const text =
      '{"version":1,"exercises":{"a":{"tempo":55,"lead":"upward"}},"site":{"loop":false,"x":1},"done":["l",""]}';
    const changes: ((area: StorageArea) => void)[] = [
      (area) => open(area).setExercise('a', { tempo: 60 }),
      (area) => open(area).setSite({ swing: 2 }),
      (area) => lessons(area).setDone('m', true),
    ];
    for (const change of changes) {
      const area = new FakeArea({ [KEY]: text });
      change(area);
      expect(area.kept.get(`${KEY}:aside:1`)).toBe(text);
    }
    const area = new FakeArea({ [KEY]: text });
    expect([open(area).exercise('a'), open(area).site().loop, lessons(area).done()]).toEqual([
      { tempo: 55 },
      false,
      ['l'],
    ]);
  });

  test.each(['""', 'null', '{}', '["a",""]'])(
    'is set aside where it stands for the lessons that are done: %s',
    (done) => {
      const text = `{"version":1,"done":${done}}`;
      const area = new FakeArea({ [KEY]: text });
      lessons(area).setDone('l', true);
      expect(everything(area).unread).toEqual([text]);
    },
  );

  test('in one part stays where it is while another part is written', () => {
    const area = new FakeArea({ [KEY]: '{"version":1,"site":{"swing":900},"later":{"a":1}}' });
    lessons(area).setLast('l');
    expect(JSON.parse(area.kept.get(KEY)!)).toEqual({
      version: 1,
      site: { swing: 900 },
      later: { a: 1 },
      last: 'l',
    });
  });

  test('is not overwritten where it cannot be set aside', () => {
    const area = new FakeArea({ [KEY]: 'precious' }, 3);
    const store = open(area);
    store.setExercise('a', { tempo: 40 });
    expect(area.kept.get(KEY)).toBe('precious');
    expect([store.exercise('a').tempo, store.persistent]).toEqual([40, false]);
  });

  test('is set aside once, however often it comes back', () => {
    const area = new FakeArea();
    for (let times = 0; times < 3; times += 1) {
      area.kept.set(KEY, 'odd');
      lessons(area).setLast('l');
    }
    expect([...area.kept.keys()]).toEqual([KEY, `${KEY}:aside:1`]);
  });

  test.each(['__proto__', 'constructor', 'toString', '__defineGetter__'])('%s is the name of nothing', (name) => {
    const area = new FakeArea({
      [KEY]: `{"version":1,"site":{"${name}":{}},"exercises":{"a":{"${name}":1},"${name}":{"${name}":2}}}`,
    });
    const store = open(area);
    expect([store.site(), store.exercise('a'), store.exercise(name)]).toEqual([DEFAULTS, {}, {}]);
    store.setSite({ swing: 2 });
    store.setExercise('a', { tempo: 60 });
    expect([open(area).site().swing, open(area).exercise('a')]).toEqual([2, { tempo: 60 }]);
    expect(area.kept.has(`${KEY}:aside:1`)).toBe(true);
  });

  test('never throws, whatever stands there', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(open(new FakeArea({ [KEY]: text })).site()).toMatchObject({ flamMs: expect.any(Number) });
      }),
    );
  });

  test('what was written is read whole', () => {
    const area = new FakeArea();
    const store = open(area);
    store.setExercise('a', { tempo: 30, lead: 'alternating' });
    store.setSite({ ...DEFAULTS, flams: 'on', heard: 'L' });
    lessons(area).setLast('l');
    puzzles(area).notePuzzle(record);
    expect(everything(area)).toMatchObject({ leftOut: [], unread: [] });
  });
});

const record = { kind: 'fill', seed: 7, day: '2026-11-25', right: true, misses: 1, hints: 0 };

describe('puzzles', () => {
  test('are remembered in the order they were answered, each once', () => {
    const store = puzzles(new FakeArea());
    store.notePuzzle(record);
    store.notePuzzle({ ...record, seed: 8 });
    store.notePuzzle({ ...record, misses: 0 });
    expect(store.puzzles()).toEqual([
      { ...record, seed: 8 },
      { ...record, misses: 0 },
    ]);
  });

  test.each([
    ['half a number', { ...record, seed: 1.5 }],
    ['number 0', { ...record, seed: 0 }],
    ['no kind', { seed: 1 }],
    ['no day', { ...record, day: '2026-13-01' }],
    ['fewer misses than none', { ...record, misses: -1 }],
  ])('of %s are left out, and the rest is kept', (_, odd) => {
    const area = new FakeArea({ [KEY]: JSON.stringify({ version: 1, puzzles: [record, odd, 3] }) });
    expect(puzzles(area).puzzles()).toEqual([record]);
    puzzles(area).notePuzzle({ ...record, seed: 8 });
    expect(everything(area).unread).toHaveLength(1);
  });

  test('are as many as there is room for, the latest', () => {
    const store = puzzles(new FakeArea());
    for (let seed = 1; seed <= 502; seed += 1) store.notePuzzle({ ...record, seed });
    expect(store.puzzles()).toHaveLength(500);
    expect(store.puzzles().at(-1)!.seed).toBe(502);
  });
});
