import { expect, test } from 'vitest';
import { ladders } from '../../src/curriculum/index.ts';

const exercise = (id: string, ...tags: string[]) => ({ id, tags });

test('a lesson has its exercises in the order of its text, and those that only name it around them', () => {
  const lessons = [
    { id: 'singles', shown: ['slow', 'fast'] },
    { id: 'doubles', shown: ['pairs'] },
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
    { id: 'a', shown: [] },
    { id: 'b', shown: ['x'] },
    { id: 'c', shown: ['x', 'unknown'] },
  ];
  expect([...ladders(lessons, [exercise('x', 'a', 'c')])]).toEqual([
    ['a', []],
    ['b', ['x']],
    ['c', []],
    ['', []],
  ]);
});
