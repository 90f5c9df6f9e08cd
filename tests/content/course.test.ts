import { expect, test } from 'vitest';
import { arrange, neighbors, siteSchema } from '../../src/curriculum/index.ts';
import { readLibrary, writtenLessons } from '../../src/build/content/library.ts';
import { listFiles } from '../../src/build/content/files.ts';

const library = readLibrary(listFiles(new URL('../../', import.meta.url).pathname));
const course = library.course!.data!;
const ours = writtenLessons(library).filter(({ id }) => course.lessons.includes(id));
const lessons = arrange(course, siteSchema.parse({}), ours).flatMap((part) => part.lessons);

test('the course is at least ten parts and fifty-two lessons, each of them written', () => {
  expect(course.parts.length).toBeGreaterThanOrEqual(10);
  expect(course.lessons.length).toBeGreaterThanOrEqual(52);
  expect(lessons.map(({ id }) => id).sort()).toEqual(course.lessons);
});

test('lessons of a part are numbered from 1 without a gap', () => {
  for (const { number } of course.parts) {
    const orders = ours.filter(({ part }) => part === number).map(({ order }) => order);
    expect(orders.sort((a, b) => a - b)).toEqual(orders.map((_, index) => index + 1));
  }
});

test('what comes before and after goes on across parts and ends at the ends', () => {
  expect(neighbors(lessons, 'how-the-stick-moves').previous?.id).toBe('reading-a-sticking');
  expect(neighbors(lessons, lessons[0].id)).toEqual({ previous: undefined, next: lessons[1] });
  expect(neighbors(lessons, 'make-your-own').next).toBeUndefined();
  expect(neighbors(lessons, 'nowhere')).toEqual({});
});
