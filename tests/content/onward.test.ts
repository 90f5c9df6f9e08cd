import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { whereToGoOn } from '../../src/curriculum/onward.ts';

const COURSE = ['a', 'b', 'c', 'd'];

describe('where to go on', () => {
  test.each([
    ['nowhere where nothing was read', [], undefined, undefined],
    ['nowhere where the lesson last read is not here any more', ['a'], 'x', undefined],
    ['with the lesson last read', [], 'b', { id: 'b', next: false }],
    ['with it even where later ones are done', ['c'], 'b', { id: 'b', next: false }],
    ['with the next one once it is done', ['b'], 'b', { id: 'c', next: true }],
    ['past what is done already', ['b', 'c'], 'b', { id: 'd', next: true }],
    ['with what was left out, at the end', ['a', 'c', 'd'], 'd', { id: 'b', next: true }],
    ['nowhere once all is done', COURSE, 'd', undefined],
  ])('%s', (_, done, last, onward) => {
    expect(whereToGoOn(COURSE, done, last)).toEqual(onward);
  });

  test('is never to a lesson that is done or that is not here', () => {
    fc.assert(
      fc.property(fc.subarray([...COURSE, 'x']), fc.constantFrom(...COURSE, 'x', undefined), (done, last) => {
        const onward = whereToGoOn(COURSE, done, last);
        expect(onward === undefined || (COURSE.includes(onward.id) && !done.includes(onward.id))).toBe(true);
      }),
    );
  });
});
