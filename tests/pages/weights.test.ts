import { describe, expect, test } from 'vitest';
import { kindOf, onePageOfEachKind, pagesOf, PLAIN } from '../helpers/built-site.ts';
import { type BuiltWeights, ImportGraph, openedWeight, weighBuilt } from '../helpers/import-graph.ts';
import { LIMITS } from '../helpers/limits.ts';
import { readSite } from '../helpers/links.ts';

const graph = new ImportGraph(PLAIN);
const weightsOf = (page: string) => weighBuilt(graph, page, readSite(PLAIN).html.get(page)!);
const pagesLike = (kind: string) => pagesOf(PLAIN).filter((page) => kindOf(page) === kind);

/** The pages of which something weighs more than it may, each with what it weighs. */
const tooHeavy = (pages: readonly string[], bytesOf: (weights: BuiltWeights) => number, limit: number) =>
  pages.map((page) => ({ page, bytes: bytesOf(weightsOf(page)) })).filter(({ bytes }) => bytes > limit);

test('there are lessons to weigh', () => {
  expect(pagesLike('lessons').length).toBeGreaterThanOrEqual(10);
});

test.each(['lessons', 'rudiments', 'bar-math'])('pages of %s are as light as a lesson is to be', (kind) => {
  expect(tooHeavy(pagesLike(kind), openedWeight, LIMITS.lesson)).toEqual([]);
});

test('lessons load little script, and no more fonts than a page may', () => {
  const lessons = pagesLike('lessons');
  expect(tooHeavy(lessons, ({ script, inline }) => script + inline, LIMITS.lessonScript)).toEqual([]);
  expect(tooHeavy(lessons, ({ fonts }) => fonts, LIMITS.fonts)).toEqual([]);
});

describe.each(['lessons', 'exercises', 'rudiments', 'embed'])('the players of pages of %s', (kind) => {
  const pages = pagesLike(kind).filter((page) => readSite(PLAIN).html.get(page)!.includes('class="player'));

  test('wake within their bytes', () => {
    expect(pages).not.toEqual([]);
    expect(tooHeavy(pages, ({ touch }) => touch ?? Infinity, LIMITS.firstTouch)).toEqual([]);
  });

  test('come when they are reached for, and the sound and the engraver later', () => {
    for (const { touch, later } of pages.map(weightsOf)) {
      expect(touch).toBeGreaterThan(5_000);
      expect(later).toBeGreaterThan(20_000);
    }
  });
});

test('the ladder of a rudiment adds nothing to its player', () => {
  const touchOf = (kind: string) => weightsOf(onePageOfEachKind(PLAIN).get(kind)!).touch;
  expect(touchOf('rudiments')).toBeLessThanOrEqual(touchOf('exercises')!);
});
