import { expect, test } from 'vitest';
import { TEMPO_LIMITS } from '../../src/core/index.ts';
import { readAll } from '../../src/storage/kept.ts';

test('a tempo is kept within the limits of the site and left out beyond them', () => {
  const isKept = (tempo: number): boolean => readAll({ version: 1, exercises: { a: { tempo } } }).leftOut.length === 0;
  const { min, max } = TEMPO_LIMITS;
  expect([min - 1, min, max, max + 1].map(isKept)).toEqual([false, true, true, false]);
});
