import { expect, test } from 'vitest';
import { TEMPOS } from '../../src/curriculum/exercise-filter.ts';
import { TEMPO } from '../../components/islands/player/props.ts';
import { TEMPO_LIMITS } from '../../src/curriculum/index.ts';
import { LIMITS } from '../../src/storage/index.ts';
import { readAll } from '../../src/storage/kept.ts';

// Folders that may not import each other, and scripts that must stay small, each have these figures; they are one figure.

/** Whether a value is read back as it was kept. */
const isKept = (tempo: number): boolean => readAll({ version: 1, exercises: { a: { tempo } } }).leftOut.length === 0;

test('content, player, filters and storage (and so links) have the same slowest and fastest tempo', () => {
  const { min, max } = TEMPO_LIMITS;
  expect(TEMPO).toEqual({ min, max });
  expect(TEMPOS).toMatchObject({ min, max });
  expect(LIMITS.tempo).toEqual({ from: min, to: max });
  const kept = [min - 1, min, max, max + 1].map(isKept);
  expect(kept).toEqual([false, true, true, false]);
});
