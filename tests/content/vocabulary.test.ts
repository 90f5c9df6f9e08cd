import { describe, expect, test } from 'vitest';
import { attributesOf, VOCABULARY, wordOf } from '../../src/curriculum/index.ts';
import { printFaults } from '../../src/build/content/content-fault.ts';
import { BAR, faultsOf, lesson, LESSON, QUESTION } from './plant.ts';

describe.each(VOCABULARY)('<$name>', (word) => {
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
