import { expect, test } from 'vitest';
import { said } from '../../src/catalogue/said.ts';
import { countsApart, sayBar } from '../../src/words/index.ts';

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
  const text = ['1', 'e', '&', 'a'];
  expect(countsApart(text, ['1', 'ta', 'te', 'ta'])).toBe(
    'This text counts 1 e & a; under the notes stands 1 ta te ta.',
  );
  expect(countsApart(text, [...text])).toBeUndefined();
});
