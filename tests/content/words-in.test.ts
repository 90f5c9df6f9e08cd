import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readLesson } from '../../src/build/content/lesson-file.ts';
import { listFiles } from '../../src/build/content/list-files.ts';
import { lessonText } from '../../src/build/new/skeletons.ts';
import { barsIn, exercisesIn, wordsIn } from '../../src/curriculum/index.ts';

test('an attribute is found behind an accent, over several lines and in any kind of quotes', () => {
  const text = `<Bar\n  sticking="{>lR LL R}4" meter='4/4'\n  grid={3}\n  name={"flam drag"} /> <Counts meter="6/8" grid={3} />`;
  const bar = { sticking: '{>lR LL R}4', meter: '4/4', grid: 3, name: 'flam drag' };
  expect(barsIn(text)).toEqual([bar]);
  expect(wordsIn(text, 'Counts', 'Question')).toEqual([{ name: 'Counts', attributes: { meter: '6/8', grid: 3 } }]);
});

test('what stands in a comment is no part of a lesson', () => {
  expect(exercisesIn('{/* Try <Exercise id="a" />. */} <Exercise id="b" />')).toEqual(['b']);
  expect(exercisesIn(lessonText({ id: 'new', part: 1, order: 1, title: 'New' }))).toEqual([]);
});

test('in every lesson of the course it finds the words that the checker finds', () => {
  const lessons = listFiles('.').filter(({ steps }) => steps.at(-1) === 'index.mdx');
  expect(lessons.length).toBeGreaterThan(50);
  for (const { file, path } of lessons) {
    const text = readFileSync(path, 'utf8');
    const checked = readLesson(file, text).words.filter(({ word }) => word.name === 'Bar' || word.name === 'Exercise');
    const found = wordsIn(text, 'Bar', 'Exercise').map(({ attributes }) => attributes);
    expect(found, file).toEqual(checked.map(({ attributes }) => attributes));
  }
});
