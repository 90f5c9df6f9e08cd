import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { madeOf, partsOf, rudimentSchema, soughtIn } from '../../src/curriculum/index.ts';

const FOLDER = new URL('../../content/rudiments/', import.meta.url);
const all = readdirSync(FOLDER).map((name) => ({
  id: name.replace(/\.yaml$/, ''),
  data: rudimentSchema.parse(parse(readFileSync(new URL(name, FOLDER), 'utf8'))),
}));
const one = (id: string) => all.find((rudiment) => rudiment.id === id)!;
const is = (whole: string, part: string) => madeOf(one(whole).data, one(part).data);

describe('what a rudiment is made of', () => {
  // Common practice: so they are taught, or so their names say it.
  test.each([
    ['flam-paradiddle', ['flam', 'single-paradiddle']],
    ['flam-paradiddle-diddle', ['flam-paradiddle', 'single-paradiddle-diddle']],
    ['double-paradiddle', ['single-paradiddle', 'single-stroke-four']],
    ['drag-paradiddle-1', ['drag', 'single-paradiddle']],
    ['drag-paradiddle-2', ['drag', 'single-paradiddle']],
    ['single-ratamacue', ['drag', 'single-stroke-four']],
    ['double-ratamacue', ['single-ratamacue']],
    ['triple-ratamacue', ['double-ratamacue']],
    ['flam-tap', ['flam']],
    ['single-drag-tap', ['drag']],
    ['six-stroke-roll', ['five-stroke-roll']],
    ['flam', []],
    ['single-stroke-roll', []],
    ['single-paradiddle', []],
  ])('%s is made of %j', (whole, parts) => {
    expect(
      partsOf(one(whole), all)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(parts);
  });

  test.each([
    ['single-paradiddle', 'single-stroke-four', 'the hands double before four singles are through'],
    ['flam-drag', 'drag', 'its diddle is no grace note'],
    ['single-flammed-mill', 'single-paradiddle', 'the diddle stands first'],
    ['swiss-army-triplet', 'flam-accent', 'the hands are others'],
  ])('%s is not made of %s: %s', (whole, part) => {
    expect(is(whole, part)).toBe(false);
  });

  test('every flam rudiment is made of flams, or of one that is; so with every drag rudiment that has grace notes', () => {
    for (const { id, data } of all)
      for (const [family, part] of [
        ['flam', 'flam'],
        ['drag', 'drag'],
      ])
        if (data.family === family && id !== part && /[rl]/.test(data.hands)) expect(is(id, part), id).toBe(true);
  });

  test('none is made of itself, and no two of each other', () => {
    for (const whole of all)
      for (const part of all)
        if (madeOf(whole.data, part.data)) expect(madeOf(part.data, whole.data), whole.id).toBe(false);
  });
});

describe('where a rudiment’s sticking stands', () => {
  const sought = (id: string) => soughtIn(one(id).data);

  test('is told by either hand, whatever the accents', () => {
    expect(sought('single-paradiddle')?.('L R L L R L >R R L R L R')).toBe(true);
    expect(sought('five-stroke-roll')?.('LL RR L R')).toBe(true);
    expect(sought('flam-drag')?.('{lR LL R rL RR L}2')).toBe(true);
  });

  test('is not told of other strokes in the same hands', () => {
    expect(sought('single-paradiddle')?.('lR L R R rL R L L')).toBe(false);
    expect(sought('flam-drag')?.('lR L L R rL R R L')).toBe(false);
  });

  test('of singles nothing is told: they stand in nearly everything', () => {
    expect([sought('single-stroke-roll'), sought('single-stroke-seven')]).toEqual([undefined, undefined]);
  });

  test('a text that is none has nothing in it', () => {
    expect(sought('flam')?.('?')).toBe(false);
  });
});
