import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { attributesOf, VOCABULARY, wordOf } from '../../src/curriculum/index.ts';
import { printFaults } from '../../src/build/content/content-fault.ts';
import { BAR, faultsOf, lesson, LESSON, QUESTION } from './plant.ts';

const COMPONENTS = new URL('../../components/lesson/', import.meta.url);

test('the components that a lesson is handed are the words of the vocabulary', () => {
  const list = /lessonWords = \{([^}]*)\}/.exec(readFileSync(new URL('vocabulary.ts', COMPONENTS), 'utf8'))?.[1] ?? '';
  const handed = list
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  expect([...handed].sort()).toEqual(VOCABULARY.map(({ name }) => name).sort());
});

describe.each(VOCABULARY)('<$name>', (word) => {
  test('has a component', () => {
    expect(existsSync(new URL(`${word.name}.astro`, COMPONENTS))).toBe(true);
  });

  test('has an example that the checker takes', () => {
    const example = word.example.replace('flam-drag-slow', 'slow').replaceAll('diddle', 'cell');
    const beside = {
      [LESSON.replace('index.mdx', 'hands.jpg')]: 'jpg',
      [LESSON.replace('index.mdx', 'hands.mp4')]: 'mp4',
    };
    const faults = faultsOf({ [LESSON]: lesson(`${BAR}\n\n${example}\n\n${BAR}\n\n${QUESTION}`), ...beside });
    expect(faults, printFaults(faults)).toEqual([]);
  });

  test('says of each attribute what it is', () => {
    for (const { says } of attributesOf(wordOf(word.name)!)) expect(says).not.toBe('');
  });
});

test('what must be written is known', () => {
  const needed = (name: string) =>
    attributesOf(wordOf(name)!)
      .filter(({ required }) => required)
      .map((rule) => rule.name);
  expect(needed('Bar')).toEqual([]);
  expect(needed('Counts')).toEqual(['meter', 'grid']);
  expect(needed('Question')).toEqual(['ask']);
  expect(needed('Exercise')).toEqual(['id']);
});
