import { expect, test } from 'vitest';
import { readingOf, sentencesOf } from '../helpers/prose.ts';

test('the prose of a lesson is its sentences, without bars, stickings, counts and headings', () => {
  const mdx = `---
title: One
---

## A heading

Play \`R L L\` and <Term id="count">count</Term> it. The a of 2 is late: R L L again!

<Bar sticking="R L L" meter="3/4" grid={1} />

- Slowly, at 60.
`;
  expect(sentencesOf(mdx)).toEqual([
    ['Play', 'and', 'count', 'it'],
    ['The', 'a', 'of', 'is', 'late', 'again'],
    ['Slowly', 'at'],
  ]);
});

test('the grade is that of the published formula', () => {
  // 0.39 × words a sentence + 11.8 × syllables a word − 15.59 (Kincaid and others, 1975): 6 words, 1 sentence, 6 syllables.
  expect(readingOf('The cat sat on the mat.').grade).toBeCloseTo(0.39 * 6 + 11.8 - 15.59, 6);
});
