import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { printFaults } from '../../src/build/content/content-fault.ts';
import {
  ALPHABET,
  attributesOf,
  fieldsOf,
  layBar,
  lessonSchema,
  sourceOf,
  specimens,
  VOCABULARY,
  wordOf,
} from '../../src/curriculum/index.ts';
import { LESSON_HEAD } from '../../src/words/write.ts';
import { BAR, faultsOf, lesson, LESSON, QUESTION } from './plant.ts';

const KNOWN = { exercise: 'slow', term: 'cell', rudiment: 'flam-drag', cell: 'flam-drag' };
const ALL = specimens(KNOWN);
const beside = (name: string) => LESSON.replace('index.mdx', name);
const FILES = { [beside('heights.svg')]: '<svg/>', [beside('heights.webm')]: 'webm' };

describe('the specimens for authors', () => {
  test.each(ALL.map((specimen, index) => [index + 1, specimen.of, specimen] as const))(
    '%i, of <%s>, is taken by the checker as it is shown',
    (_, of, specimen) => {
      expect(specimen.words.some(({ word }) => word === of)).toBe(true);
      const faults = faultsOf({ [LESSON]: lesson([BAR, QUESTION, sourceOf(specimen)].join('\n\n')), ...FILES });
      expect(faults, printFaults(faults)).toEqual([]);
    },
  );

  test.each(VOCABULARY.map(({ name }) => name))('there is one of <%s>', (name) => {
    expect(ALL.some(({ of }) => of === name)).toBe(true);
  });

  test.each(['Bar', 'Counts', 'Picture'])('each attribute of <%s> stands in one of them', (name) => {
    const used = new Set(
      ALL.flatMap(({ words }) => words.flatMap((one) => (one.word === name ? Object.keys(one.attributes) : []))),
    );
    expect([...used].sort()).toEqual(
      attributesOf(wordOf(name)!)
        .map((rule) => rule.name)
        .sort(),
    );
  });

  test('what a course does not have is not named', () => {
    const sources = specimens({}).map(sourceOf).join('\n');
    expect(sources).not.toMatch(/undefined|<Exercise|<Term|<Rudiment|cells?="/);
  });
});

test('the head that is shown is taken, and has every field', () => {
  const said: unknown = parse(LESSON_HEAD.replaceAll('---', ''));
  expect(lessonSchema.parse(said)).toMatchObject({ id: 'ghosts-on-the-way', listen: [{ at: '0:03' }] });
  expect(Object.keys(said as object)).toEqual(fieldsOf(lessonSchema).map(({ name }) => name));
});

describe('the alphabet of sticking text', () => {
  test.each(ALPHABET.map((sign) => [sign.sign, sign] as const))(
    '%s: its bar is full and has it',
    (sign, { sticking, meter, grid }) => {
      const laid = layBar({ sticking, meter, grid }, () => undefined);
      expect(laid.ok ? '' : laid.fault.message).toBe('');
      for (const part of sign.split(' ')) expect(sticking).toContain(part === ':' ? ':' : part);
    },
  );

  test('says of each field of a head and each sign what it is', () => {
    for (const { says } of [...ALPHABET, ...fieldsOf(lessonSchema)]) expect(says).not.toBe('');
  });
});
