import { expect, test } from 'vitest';
import { LIMITS } from '../../components/islands/links/settings.ts';
import { USUAL_FLAM } from '../../components/islands/links/shown.ts';
import { TEMPOS } from '../../src/curriculum/exercise-filter.ts';
import { TEMPO } from '../../components/islands/player/props.ts';
import { TEMPO_LIMITS } from '../../src/curriculum/index.ts';
import { DEFAULTS } from '../../src/storage/index.ts';
import { readAll } from '../../src/storage/kept.ts';

// Folders that may not import each other, and scripts that must stay small, each have these figures; they are one figure.

/** Whether a value is read back as it was kept. */
const isKept = (where: 'exercises' | 'site', value: object): boolean =>
  readAll({ version: 1, [where]: value }).leftOut.length === 0;

test('content, player, links, filters and storage have the same slowest and fastest tempo', () => {
  const { min, max } = TEMPO_LIMITS;
  expect(TEMPO).toEqual({ min, max });
  expect(TEMPOS).toMatchObject({ min, max });
  expect(LIMITS.tempo).toEqual({ from: min, to: max });
  const kept = [min - 1, min, max, max + 1].map((tempo) => isKept('exercises', { a: { tempo } }));
  expect(kept).toEqual([false, true, true, false]);
});

test('links and storage have the same narrowest, widest and usual flam', () => {
  expect(USUAL_FLAM).toBe(DEFAULTS.flamMs);
  const { from, to } = LIMITS.flam;
  expect([from - 1, from, to, to + 1].map((flamMs) => isKept('site', { flamMs }))).toEqual([false, true, true, false]);
});
