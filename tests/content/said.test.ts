import { expect, test } from 'vitest';
import { said } from '../../src/catalogue/said.ts';
import { beatsApart } from '../../src/curriculum/index.ts';
import { sayBar } from '../../src/words/grammar.ts';
import { countsApart } from '../../src/words/lessons.ts';

test('sentences of the content say the school’s word; ids, stickings and addresses stay', () => {
  const exercise = {
    title: 'Two bars',
    purpose: 'Fill the bar up to the bar line.',
    sticking: 'R L',
    tags: ['the-bar'],
  };
  expect(said(exercise, 'measure')).toEqual({
    title: 'Two measures',
    purpose: 'Fill the measure up to the bar line.',
    sticking: 'R L',
    tags: ['the-bar'],
  });
  expect(said(exercise, 'bar')).toBe(exercise);
});

test('what a bar is also called is then the other word', () => {
  expect(said({ term: 'bar', also: ['measure', 'x'] }, 'measure')).toEqual({ term: 'measure', also: ['bar', 'x'] });
});

test('a bar line is one at every school', () => {
  expect(sayBar('Bar 2 ends at the bar line; bar lines part bars.', 'measure')).toBe(
    'Measure 2 ends at the bar line; bar lines part measures.',
  );
});

test('a lesson says where its text and its notes count in different syllables, and only there', () => {
  const bars = [
    { meter: '4/4', grid: 4 },
    { meter: '3/4', grid: 4 },
    { meter: '4/4', grid: 3 },
    { meter: '4/4', grid: 5 },
  ];
  expect(countsApart(beatsApart(bars, '1 ta te ta'))).toBe(
    'This text counts 1 e & a where the notes have 1 ta te ta, and 1 trip let where they have 1 la li.',
  );
  expect(countsApart(beatsApart([...bars, { meter: '4/4', grid: 2 }], '1 ta te ta'))).toBe(
    'This text counts 1 e & a where the notes have 1 ta te ta, 1 trip let where they have 1 la li, and 1 & where they have 1 te.',
  );
  expect(countsApart(beatsApart(bars, '1 e & a'))).toBeUndefined();
});
