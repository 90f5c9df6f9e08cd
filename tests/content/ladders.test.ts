import { expect, test } from 'vitest';
import { ladders } from '../../src/curriculum/index.ts';

const exercise = (id: string, ...tags: string[]) => ({ id, tags });

test('a lesson has its exercises in the order of its text, and those that only name it around them', () => {
  const lessons = [
    { id: 'singles', body: 'Text <Exercise id="slow" /> and <Exercise lead="left"\n id="fast" />.' },
    { id: 'doubles', body: '<Exercise id="pairs" />' },
  ];
  const all = [
    exercise('fast', 'singles'),
    exercise('later', 'singles'),
    exercise('opener', 'singles', 'first'),
    exercise('pairs', 'doubles'),
    exercise('slow', 'singles', 'first'),
    exercise('stray', 'gaps'),
  ];
  expect([...ladders(lessons, all)]).toEqual([
    ['singles', ['opener', 'slow', 'fast', 'later']],
    ['doubles', ['pairs']],
    ['', ['stray']],
  ]);
});

test('an exercise stands once: where it is shown first, whatever its tags say', () => {
  const lessons = [
    { id: 'a', body: '' },
    { id: 'b', body: '<Exercise id="x" />' },
    { id: 'c', body: '<Exercise id="x" /><Exercise id="unknown" />' },
  ];
  expect([...ladders(lessons, [exercise('x', 'a', 'c')])]).toEqual([
    ['a', []],
    ['b', ['x']],
    ['c', []],
    ['', []],
  ]);
});
