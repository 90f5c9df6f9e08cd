import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layPhrase, perform, slotsOf, type PerformOptions } from '../../src/core/index.ts';
import { engrave } from '../../src/engraving/index.ts';
import { describe as inWords } from '../../src/words/describe.ts';
import { grid, meter, runs, slots } from '../helpers/arbitrary.ts';
import { layoutsOf, shownIn } from './read-svg.ts';

/** A bar of any meter and grid, filled with anything the grammar can write. */
const anyBar = fc
  .tuple(meter, grid)
  .filter(([m, g]) => slotsOf(m, g) <= 40)
  .chain(([m, g]) => slots(slotsOf(m, g)).map((hands) => ({ meter: m, grid: g, hands })));

const flams = fc.constantFrom<PerformOptions['flams']>('grace', 'before', 'on');
const diddles = fc.constantFrom<'notes' | 'slash'>('notes', 'slash');

it('draws and says any bar, every stroke once', () => {
  fc.assert(
    fc.property(anyBar, flams, diddles, (bar, how, asOne) => {
      const laid = layPhrase({
        cells: [{ id: 'any', sticking: { hands: bar.hands } }],
        meter: bar.meter,
        grid: bar.grid,
      });
      fc.pre(laid.ok);
      if (!laid.ok) return;
      const timeline = perform(laid.phrase, { flams: how });
      const { html } = engrave(timeline, { names: ['any'], diddles: asOne });
      for (const columns of layoutsOf(html)) {
        const ids = [...shownIn(html, columns).matchAll(/ data-stroke="([^"]*)"/g)].map(([, id]) => id);
        expect(ids.sort()).toEqual(timeline.strokes.map((stroke) => stroke.id).sort());
      }
      expect(html).not.toMatch(/NaN|undefined|Infinity/);
      expect(inWords(timeline).reading).not.toContain('undefined');
    }),
    runs(60),
  );
}, 60_000);
