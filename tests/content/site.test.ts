import { describe, expect, it, test } from 'vitest';
import { lookAtContent } from '../../src/build/check-content.ts';
import { contrast, siteSchema } from '../../src/curriculum/index.ts';
import { BAR, EXERCISE, faultsOf, GOOD, lesson, LESSON, planted, QUESTION, type Tree } from './plant.ts';

const SITE = 'content/site.yaml';
const site = (more: string): Tree => ({ [SITE]: `${GOOD[SITE] as string}\n${more}\n` });
const own = (part: number, order: number, id: string): Tree => ({
  [`content/lessons/${part < 10 ? `0${part}` : part}-ours/0${order}-${id}/index.mdx`]: lesson(`${BAR}\n\n${QUESTION}`, {
    id,
    part: `${part}`,
    order: `${order}`,
  }),
});
const warningsOf = (changes: Tree) =>
  planted({ ...GOOD, ...changes }, lookAtContent).warnings.map(
    ({ file, line, message }) => `${file}:${line} ${message}`,
  );

test('a school may leave out everything, and says nothing wrong by it', () => {
  expect(siteSchema.parse({})).toMatchObject({
    counting: '1 e & a',
    barWord: 'bar',
    hide: { lessons: [], exercises: [], parts: [] },
    parts: [],
    order: { parts: [], lessons: {} },
    aliases: {},
  });
  expect(faultsOf({ [SITE]: 'name: Ours\n' })).toEqual([]);
});

test('a lesson file alone is enough, beside our lessons or among them', () => {
  expect(faultsOf(own(1, 3, 'third'))).toEqual([]);
  expect(faultsOf(own(1, 1, 'between'))).toEqual([]);
});

test('everything a school can set, at once', () => {
  const settings = [
    'parts:',
    '  - { number: 20, title: Our ensemble, idea: What we play together. }',
    'hide: { lessons: [third], exercises: [slow], parts: [1] }',
    'order:',
    '  parts: [20, 1]',
    '  lessons:',
    '    20: [first]',
    'aliases: { flam-drag: galloping flam }',
  ].join('\n');
  expect(faultsOf({ ...site(settings), ...own(20, 1, 'ours'), ...own(1, 3, 'third') })).toEqual([]);
});

test('a lesson of the course without a file is told, with what may be meant', () => {
  const course = {
    'content/course.yaml': (GOOD['content/course.yaml'] as string).replace('[first]', '[first, second]'),
  };
  const { warnings } = planted({ ...GOOD, ...course, ...own(1, 3, 'secnd') }, lookAtContent);
  expect(warnings.find(({ file }) => file === 'content/course.yaml')).toMatchObject({
    line: 5,
    message: 'there is no lesson "second"',
    hint: 'was "secnd" meant?',
  });
});

test('a part without lessons, and a part that the text speaks of and nobody finds', () => {
  expect(warningsOf(site('parts: [{ number: 20, title: Ours, idea: Ours. }]'))).toContain(
    `${SITE}:7 part 20 has no lesson yet, so it is not shown`,
  );
  const spoken = lesson(`You will need this in Part 4.\n\n${BAR}\n\n${QUESTION}`);
  expect(warningsOf({ [LESSON]: spoken })).toContain(`${LESSON}:15 the text speaks of Part 4, which is not shown`);
  expect(warningsOf({ [LESSON]: spoken.replace('Part 4', 'Part 1') }).join()).not.toContain('speaks of');
});

test('a goal that hands do not reach is told, and refuses nothing', () => {
  const fast = { [EXERCISE]: (GOOD[EXERCISE] as string).replace('to: 80', 'to: 290') };
  expect(faultsOf(fast)).toEqual([]);
  expect(warningsOf(fast).join('\n')).toMatch(/slow.yaml:7 at 290, the (right|left) hand has \d+ ms between/);
  expect(warningsOf({}).join('\n')).not.toContain('ms between');
});

test('an exercise of the school’s own that no lesson shows is told, ours are not', () => {
  const unused = { [LESSON]: lesson(`${BAR}\n\n${QUESTION}`) };
  expect(warningsOf(unused)).toContain('content/exercises:1 1 of the exercises is in no lesson:');
  const ours = { ...unused, [EXERCISE]: (GOOD[EXERCISE] as string).replace('tags: [flams]', 'tags: [first]') };
  expect(warningsOf(ours)).toEqual([]);
});

test('the colors may stand under the name they had first, and are the same', () => {
  const warm = { warm: '#a8431a', warmDark: '#f0936a' };
  expect(siteSchema.parse({ colours: warm })).toEqual(siteSchema.parse({ colors: warm }));
  expect(siteSchema.parse({ colours: warm }).colors).toEqual(warm);
  expect(siteSchema.parse({}).colors).toBeUndefined();
  expect(faultsOf(site('colours: { warm: "#a8431a" }'))).toEqual([]);
  expect(warningsOf(site('colours: { warm: "#a8431a" }'))).toEqual([]);
});

test('contrast is that of WCAG 2.2: 21 for black on white, 4.54 for the lightest gray that passes (common practice)', () => {
  expect(contrast('#000000', '#ffffff')).toBe(21);
  expect(contrast('#ffffff', '#767676')).toBeCloseTo(4.54, 2);
});

describe('slips that hurt no build', () => {
  const front = (from: string, to: string): Tree => ({ [LESSON]: (GOOD[LESSON] as string).replace(from, to) });
  it.each([
    ['a # in a title', front('title: First', 'title: Our groove #1'), `${LESSON}:5 "#1" is taken as a remark`],
    ['the template’s idea', front('One idea.', 'Say here, in one sentence.'), `${LESSON}:6 this is still the text`],
    ['the template’s text', front('Some text.', 'Say here what it is.'), `${LESSON}:15 this is still the text`],
    ['a pale color', site('colors: { warm: "#f0c0a0" }'), `${SITE}:7 #f0c0a0 on light paper has a contrast of`],
    [
      'a pale color under the older name of the setting',
      site('colours:\n  warm: "#f0c0a0"'),
      `${SITE}:8 #f0c0a0 on light paper has a contrast of`,
    ],
    [
      'a color too dark for dark paper',
      site('colors: { warm: "#a8431a", warmDark: "#5a2410" }'),
      `${SITE}:7 #5a2410 on dark paper has a contrast of`,
    ],
    [
      'a large picture',
      { 'content/lessons/01-one/01-first/hands.png': new Uint8Array(1_200_001) },
      'content/lessons/01-one/01-first/hands.png:1 this picture has 1.2 MB',
    ],
  ])('%s is told', (_, changes, says) => {
    expect(faultsOf(changes)).toEqual([]);
    expect(warningsOf(changes).join('\n')).toContain(says);
  });

  it('are not seen where there are none: a remark behind a number, a # in quotes, the colors the site comes with', () => {
    const fine = {
      ...site('colors: { warm: "#a8431a", warmDark: "#f0936a" }'),
      ...front('title: First', 'title: "Our groove #1"'),
      [EXERCISE]: (GOOD[EXERCISE] as string).replace('grid: 3', 'grid: 3 # triplets'),
    };
    expect(warningsOf(fine)).toEqual([]);
  });
});

test('the same bar led by the other hand is another exercise', () => {
  const left = (GOOD[EXERCISE] as string).replace('leads: [right, left, alternating]', 'leads: [left]');
  expect(faultsOf({ 'content/exercises/left.yaml': left })).toEqual([]);
});
