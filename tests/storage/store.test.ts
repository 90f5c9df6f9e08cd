import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openStorage, DEFAULTS, type StorageArea } from '../../src/storage/index.ts';
import { readStored } from '../../src/storage/shape.ts';
import { blocked, FakeArea } from './areas.ts';

const KEY = 'barwright:/';

const open = (area: StorageArea | undefined, events?: Window) => openStorage({ area, base: '/', events });

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
    const store = open(new FakeArea());
    store.setExercise('a', { tempo: 60 });
    store.setExercise('b', { tempo: 61 });
    store.setSite({ loop: false });
    store.setDone('where-is-one', true);
    store.resetExercise('a');
    expect([store.exercise('a'), store.exercise('b')]).toEqual([{}, { tempo: 61 }]);
    store.resetPlayers();
    expect([store.exercise('b'), store.site(), store.done()]).toEqual([{}, DEFAULTS, ['where-is-one']]);
  });

  test('lessons are done once each, in the order they were done, and can be undone', () => {
    const store = open(new FakeArea());
    ['a', 'b', 'a'].forEach((id) => store.setDone(id, true));
    store.setLast('b');
    expect([store.done(), store.last()]).toEqual([['b', 'a'], 'b']);
    store.setDone('b', false);
    expect(store.done()).toEqual(['a']);
  });

  test('stays apart from the data of another site on the same host', () => {
    const area = new FakeArea();
    openStorage({ area, base: '/one/', events: undefined }).setLast('x');
    expect(openStorage({ area, base: '/two/', events: undefined }).last()).toBeUndefined();
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
    store.setDone('l', true);
    expect([store.exercise('a').tempo, store.site().check, store.done()]).toEqual([88, 2, ['l']]);
    expect(store.persistent).toBe(false);
  });
});

describe('data that cannot be read', () => {
  test.each([
    'not JSON',
    '[]',
    'null',
    '{"version":99,"future":true}',
    '{"version":1,"exercises":{"a":{"tempo":"fast"}},"site":{},"done":[]}',
    '{"version":1,"exercises":{},"site":{"swing":900},"done":[7]}',
  ])('is kept aside whole before anything is written: %s', (text) => {
    const area = new FakeArea({ [KEY]: text });
    const store = open(area);
    store.setExercise('b', { tempo: 70 });
    expect(area.kept.get(`${KEY}:aside:1`)).toBe(text);
    expect(open(area).exercise('b')).toEqual({ tempo: 70 });
    expect(store.site()).toEqual(DEFAULTS);
  });

  test('loses only what is bad of it', () => {
    const text =
      '{"version":1,"exercises":{"a":{"tempo":55,"lead":"upward"}},"site":{"loop":false,"x":1},"done":["l",""]}';
    const store = open(new FakeArea({ [KEY]: text }));
    expect([store.exercise('a'), store.site().loop, store.done()]).toEqual([{ tempo: 55 }, false, ['l']]);
  });

  test('is not overwritten where it cannot be kept aside', () => {
    const area = new FakeArea({ [KEY]: 'precious' }, 3);
    const store = open(area);
    area.room = Infinity;
    store.setExercise('a', { tempo: 40 });
    expect(area.kept.get(KEY)).toBe('precious');
    expect([store.exercise('a').tempo, store.persistent]).toEqual([40, false]);
  });

  test('the same one is kept aside once', () => {
    const area = new FakeArea({ [KEY]: 'odd' });
    open(area);
    open(area);
    expect([...area.kept.keys()]).toEqual([KEY, `${KEY}:aside:1`]);
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
    store.setLast('l');
    expect(readStored(area.kept.get(KEY)!).whole).toBe(true);
  });
});

describe('puzzles', () => {
  const record = { kind: 'fill', seed: 7, day: '2026-11-25', right: true, misses: 1, hints: 0 };

  test('are remembered in the order they were answered, each once', () => {
    const store = open(new FakeArea());
    store.notePuzzle(record);
    store.notePuzzle({ ...record, seed: 8 });
    store.notePuzzle({ ...record, misses: 0 });
    expect(store.puzzles()).toEqual([
      { ...record, seed: 8 },
      { ...record, misses: 0 },
    ]);
  });

  test('that cannot be read are left out and the rest is kept', () => {
    const text = JSON.stringify({
      version: 1,
      exercises: {},
      site: {},
      done: [],
      puzzles: [record, { kind: 'fill' }, 3],
    });
    expect(readStored(text)).toMatchObject({ whole: false, stored: { puzzles: [record] } });
  });

  test('are as many as there is room for, the latest', () => {
    const store = open(new FakeArea());
    for (let seed = 1; seed <= 502; seed += 1) store.notePuzzle({ ...record, seed });
    expect(store.puzzles()).toHaveLength(500);
    expect(store.puzzles().at(-1)!.seed).toBe(502);
  });
});
