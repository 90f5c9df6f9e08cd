/**
 * The page about hearing against the rule its table comes from: NIOSH, recommended exposure limit for noise, 85 dBA over
 * eight hours with a 3 dB exchange rate (read).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { claimOf } from '../../src/words/proof.ts';

const PAGE = new URL('../../content/pages/hearing.md', import.meta.url);
const rows = [...readFileSync(PAGE, 'utf8').matchAll(/^\| (\d+) dBA\s*\| (\d+) (hours?|minutes)\s*\|$/gm)];

describe(claimOf('noise-limits'), () => {
  it('has a table', () => expect(rows.length).toBeGreaterThanOrEqual(5));

  it.each(rows.map(([, level, time, unit]) => [Number(level), Number(time), unit]))(
    '%i dBA for %i %s',
    (level, time, unit) => {
      const minutes = Number(time) * (String(unit).startsWith('hour') ? 60 : 1);
      expect(minutes).toBe((8 * 60) / 2 ** ((Number(level) - 85) / 3));
    },
  );
});
