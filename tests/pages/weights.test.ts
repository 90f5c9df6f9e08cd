import { describe, expect, test } from 'vitest';
import { kindOf, onePageOfEachKind, pagesOf, PLAIN } from '../helpers/built-site.ts';
import { ImportGraph, openedWeight, weighBuilt } from '../helpers/import-graph.ts';
import { LIMITS } from '../helpers/limits.ts';
import { readSite } from '../helpers/links.ts';

const graph = new ImportGraph(PLAIN);
const weightsOf = (page: string) => weighBuilt(graph, page, readSite(PLAIN).html.get(page)!);
const pagesLike = (...kinds: string[]) => pagesOf(PLAIN).filter((page) => kinds.includes(kindOf(page)));

describe.each(pagesLike('lessons'))('/%s', (page) => {
  const weights = weightsOf(page);

  test('weighs no more than a lesson may when it is opened', () => {
    expect(openedWeight(weights)).toBeLessThanOrEqual(LIMITS.lesson);
    expect(weights.script + weights.inline).toBeLessThanOrEqual(LIMITS.lessonScript);
    expect(weights.fonts).toBeLessThanOrEqual(LIMITS.fonts);
  });
});

test.each([...pagesLike('rudiments'), ...pagesLike('bar-math')])('/%s is as light as a lesson', (page) => {
  expect(openedWeight(weightsOf(page))).toBeLessThanOrEqual(LIMITS.lesson);
});

test.each(pagesLike('lessons', 'exercises', 'rudiments', 'embed'))(
  'the player of /%s wakes within its bytes',
  (page) => {
    const { touch, later } = weightsOf(page);
    if (touch === undefined) return expect(readSite(PLAIN).html.get(page)).not.toContain('class="player');
    expect(touch).toBeLessThanOrEqual(LIMITS.firstTouch);
    // The player itself comes, and the sound and the engraver do not.
    expect(touch).toBeGreaterThan(5_000);
    expect(later).toBeGreaterThan(20_000);
  },
);

test('the ladder of a rudiment adds nothing to its player', () => {
  const touchOf = (kind: string) => weightsOf(onePageOfEachKind(PLAIN).get(kind)!).touch;
  expect(touchOf('rudiments')).toBeLessThanOrEqual(touchOf('exercises')!);
});

test('there are lessons to weigh', () => {
  expect(pagesLike('lessons').length).toBeGreaterThanOrEqual(10);
});
