import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { courseSchema, inOrder, neighbours } from '../../src/curriculum/index.ts';

const ROOT = new URL('../../', import.meta.url).pathname;
const course = courseSchema.parse(parse(readFileSync(`${ROOT}content/course.yaml`, 'utf8')));

test('the course is ten parts and fifty-two lessons', () => {
  expect(course.parts).toHaveLength(10);
  expect(inOrder(course)).toHaveLength(52);
});

test('every lesson of the plan is written', () => {
  const written = readdirSync(`${ROOT}content/lessons`).flatMap((part) =>
    readdirSync(`${ROOT}content/lessons/${part}`).map((lesson) => lesson.slice(3)),
  );
  expect(
    inOrder(course)
      .map(({ id }) => id)
      .filter((id) => !written.includes(id)),
  ).toEqual([]);
});

test('what comes before and after goes on across parts and ends at the ends', () => {
  const lessons = inOrder(course);
  expect(neighbours(lessons, 'how-the-stick-moves').previous?.id).toBe('reading-a-sticking');
  expect(neighbours(lessons, lessons[0].id)).toEqual({ previous: undefined, next: lessons[1] });
  expect(neighbours(lessons, 'make-your-own').next).toBeUndefined();
  expect(neighbours(lessons, 'nowhere')).toEqual({});
});
