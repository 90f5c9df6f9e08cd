import { expect, test } from 'vitest';
import { checkContent } from '../../src/build/check-content.ts';
import { GOOD, lesson, LESSON, planted, type Tree } from './plant.ts';

const two = (number: number) => String(number).padStart(2, '0');

/** How many lessons each of ten parts has. */
const LESSONS = process.env.LONG ? 50 : 15;

/** A course of ten parts with many lessons each. */
function manyLessons(): Tree {
  const text = (GOOD[LESSON] as string).split('---\n')[2].trim();
  const parts = Array.from({ length: 10 }, (_, part) => part + 1);
  const places = parts.flatMap((part) =>
    Array.from({ length: LESSONS }, (_, index) => ({ part, order: index + 1, id: `lesson-${part}-${index + 1}` })),
  );
  const course = [
    'parts:',
    ...parts.map((part) => `  - { number: ${part}, title: Part, idea: A part. }`),
    'lessons:',
    ...places.map(({ id }) => `  - ${id}`),
  ];
  const files = places.map(({ part, order, id }) => [
    `content/lessons/${two(part)}-part/${two(order)}-${id}/index.mdx`,
    lesson(text, { id, part: String(part), order: String(order) }),
  ]);
  return {
    ...GOOD,
    [LESSON]: null,
    'content/course.yaml': `${course.join('\n')}\n`,
    ...Object.fromEntries(files),
  };
}

test(`${10 * LESSONS} lessons are checked in one go`, () => {
  planted(manyLessons(), (root) => {
    const start = performance.now();
    expect(checkContent(root)).toEqual([]);
    console.log(`${10 * LESSONS} lessons checked in ${Math.round(performance.now() - start)} ms`);
  });
});
