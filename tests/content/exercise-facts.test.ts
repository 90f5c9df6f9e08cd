import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { exerciseFacts, exerciseSchema, type ExerciseFacts, type FactSource } from '../../src/curriculum/index.ts';

const CELLS: Record<string, string> = { five: 'R L L R L', kick: 'K' };
const cellOf = (id: string) => (id in CELLS ? { name: id, sticking: CELLS[id] } : undefined);

/** The facts of a sticking in 4/4, sixteenths where nothing else is said. */
const facts = (sticking: string, more: Partial<FactSource> = {}): ExerciseFacts =>
  exerciseFacts({ sticking, meter: '4/4', grid: 4, leads: ['right'], ...more }, cellOf);

const SINGLES = '{R L R L}4';

describe('the lengths of an exercise', () => {
  test('are its bars in slots, and the cells it is laid of', () => {
    expect(facts('{>lR LL R}4', { grid: 3 })).toMatchObject({ slots: 12, cells: [3], grids: [3], meters: ['4/4'] });
    expect(facts('{R L R L}4 | {R L R L}4')).toMatchObject({ slots: 32, cells: [4] });
  });

  test('leave the pickup out', () => {
    expect(facts(`R L ${SINGLES}`, { pickup: 2 }).slots).toBe(16);
  });

  test('name no cell where there is but one', () => {
    expect(facts('R L R L R L R L R L R L R L R L').cells).toEqual([]);
  });

  test('are told from cells with names as from groups', () => {
    const cells = ['five', 'five', 'five', 'kick'];
    expect(facts('', { sticking: undefined, cells })).toMatchObject({ slots: 16, cells: [1, 5] });
  });

  test('name every meter and subdivision on the way', () => {
    const change = '[4/4:2] R L R L R L R L | [3/4:3] R L R L R L R L R';
    expect(facts(change, { meter: undefined, grid: undefined })).toMatchObject({
      grids: [2, 3],
      meters: ['4/4', '3/4'],
      slots: 17,
    });
  });
});

describe('what an exercise has in it', () => {
  test.each([
    [SINGLES, []],
    ['{lR L rL R}4', ['flams']],
    ['{llR L R L}4', ['drags']],
    ['{lrlR L R L}4', ['drags']],
    ['{R LL R L}4', ['diddles']],
    ['{Rz L R L}4', ['rolls']],
    ['{>R L R L}4', ['accents']],
    ['{^R L R L}4', ['accents']],
    ['{R (L) R (L)}4', ['ghosts']],
    ['{R L R K}4', ['kicks']],
    ['{R L R H}4', []],
    ['{R L R L}4\nfeet: {K - - -}4', ['kicks']],
    ['{>lR LL R K}4', ['flams', 'diddles', 'accents', 'kicks']],
    // Two strokes of one hand in slots of their own are a double, not a diddle.
    ['{R R L L}4', []],
  ])('%s: %j', (sticking, ingredients) => {
    expect(facts(sticking).ingredients).toEqual(ingredients);
  });
});

describe('who plays an exercise', () => {
  test.each([
    [SINGLES, ['hands']],
    ['{R - R -}4', ['hands', 'right']],
    ['{- L - L}4', ['hands', 'left']],
    // A grace note is a stroke of the other hand.
    ['{lR - R -}4', ['hands']],
    ['{R L K K}4', ['feet']],
    ['{R - R -}4\nfeet: {H - - -}4', ['feet']],
    ['{K - H -}4', ['feet']],
  ])('%s: %j', (sticking, playedBy) => {
    expect(facts(sticking).playedBy).toEqual(playedBy);
  });

  test('is one hand or the other where the exercise offers both leads', () => {
    expect(facts('{R - R -}4', { leads: ['right', 'left'] }).playedBy).toEqual(['hands', 'right', 'left']);
    expect(facts('{R - R -}4', { leads: ['left'] }).playedBy).toEqual(['hands', 'left']);
  });
});

describe('one pad is enough', () => {
  test.each([
    [SINGLES, true],
    ['{R@floor L R L}4', false],
    ['{l@tom1:R L R L}4', false],
    ['{R L R K}4', false],
  ])('%s: %s', (sticking, pad) => {
    expect(facts(sticking).pad).toBe(pad);
  });
});

test('bars that do not add up are refused, the fault under its place', () => {
  expect(() => facts('R L R')).toThrow(RangeError);
  expect(() => facts('R L R')).toThrow(/3 of 16 sixteenths/);
});

test('every exercise of this site has a length, a subdivision, a meter and somebody to play it', () => {
  const content = new URL('../../content/', import.meta.url).pathname;
  const read = (kind: string, file: string) => parse(readFileSync(`${content}${kind}/${file}`, 'utf8')) as unknown;
  const cells = new Map(
    readdirSync(`${content}cells`).map((file) => [file.replace('.yaml', ''), read('cells', file) as never]),
  );
  const all = readdirSync(`${content}exercises`).map((file) =>
    exerciseFacts(exerciseSchema.parse(read('exercises', file)), (id) => cells.get(id)),
  );
  expect(all.length).toBeGreaterThan(160);
  const bare = all.filter(
    ({ slots, grids, meters, playedBy }) => !slots || !grids.length || !meters.length || !playedBy.length,
  );
  expect(bare).toEqual([]);
});
