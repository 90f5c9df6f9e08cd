import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { differing, type LinkSettings, printQuery, withoutSettings } from '../../components/islands/links/query.ts';
import { readQuery } from '../../components/islands/links/read-query.ts';
import { frameHtml, heightIn, resizeScript } from '../../components/islands/links/snippet.ts';
import { overridesSay, refusedSays } from '../../src/words/links.ts';
import { runs } from '../helpers/arbitrary.ts';

const ALL = { leads: ['right', 'left', 'alternating'], graces: true } as const;

const settings: fc.Arbitrary<LinkSettings> = fc.record(
  {
    tempo: fc.integer({ min: 30, max: 300 }),
    lead: fc.constantFrom('right' as const, 'left' as const, 'alternating' as const),
    flam: fc.integer({ min: 10, max: 80 }),
  },
  { requiredKeys: [] },
);

describe('settings in an address', () => {
  test('come back as they were written', () => {
    fc.assert(
      fc.property(settings, (set) => {
        expect(readQuery(printQuery(set), ALL)).toEqual({ settings: set, refused: [] });
      }),
      runs(300),
    );
  });

  test('are short, and nothing where nothing is set', () => {
    expect(printQuery({ tempo: 80, lead: 'left', flam: 45 })).toBe('?tempo=80&lead=left&flam=45');
    expect(printQuery({})).toBe('');
  });

  test('that cannot be had are left out with a reason, and the others hold', () => {
    const read = readQuery('?tempo=9999&lead=up&flam=45', ALL);
    expect(read.settings).toEqual({ flam: 45 });
    expect(read.refused.map(refusedSays)).toEqual([
      'The link’s tempo “9999” is left out: it can be 30 to 300.',
      'The link’s lead “up” is left out: it can be right, left or alternating.',
    ]);
  });

  test('are refused where the bar does not have them', () => {
    const read = readQuery('?lead=left&flam=45', { leads: ['right'], graces: false });
    expect(read.settings).toEqual({});
    expect(read.refused.map(refusedSays)).toEqual([
      'The link’s lead “left” is left out: here it is always right.',
      'The link’s flam width “45” is left out: there is no flam here.',
    ]);
  });

  test('never throw, whatever stands there', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (tempo, lead, flam) => {
        const search = `?${new URLSearchParams({ tempo, lead, flam })}`;
        for (const one of readQuery(search, ALL).refused)
          expect(refusedSays(one)).toMatch(/^The link’s .+ left out: .+\.$/s);
        readQuery(tempo, ALL);
      }),
      runs(300),
    );
  });

  test('are written only where the bar would begin otherwise', () => {
    const own = { tempo: 60, lead: 'right', flam: 30 } as const;
    expect(differing({ tempo: 60, lead: 'left', flam: undefined }, own)).toEqual({ lead: 'left' });
    expect(differing(own, own)).toEqual({});
  });

  test('leave the address one by one, and nothing else does', () => {
    expect(withoutSettings('?v=2&tempo=80&lead=left', ['tempo'])).toBe('?v=2&lead=left');
    expect(withoutSettings('?tempo=80', ['tempo', 'lead', 'flam'])).toBe('');
  });

  test('are said in a line', () => {
    expect(overridesSay({ tempo: 80, lead: 'left' })).toBe('Set by the link: tempo 80, left lead.');
    expect(overridesSay({})).toBe('');
  });
});

describe('the frame for another page', () => {
  const address = 'https://school.example/embed/flam-drag-slow/?tempo=72&lead=left';

  test('is one element, whatever the exercise is called', () => {
    const html = frameHtml({ address, title: 'A "slow" <drag> & more', height: 431 });
    expect(html).toContain('src="https://school.example/embed/flam-drag-slow/?tempo=72&amp;lead=left"');
    expect(html).toContain('title="A &quot;slow&quot; &lt;drag&gt; &amp; more"');
    expect(html).toMatch(/^<iframe [^>]*height="431"[^>]*><\/iframe>$/);
  });

  test('tells its height in one kind of message', () => {
    expect(heightIn({ barwright: 'height', id: 'a', height: 431 })).toBe(431);
    for (const odd of [0, -1, NaN, Infinity, '431', null, undefined])
      expect(heightIn({ barwright: 'height', id: 'a', height: odd })).toBeUndefined();
    for (const odd of [undefined, null, 'height', [], { barwright: 'ask' }, { barwright: 'height', height: 431 }])
      expect(heightIn(odd)).toBeUndefined();
  });

  test('gets its height from a script that hears one site alone', () => {
    const script = resizeScript('https://school.example');
    expect(script).toContain("origin !== 'https://school.example'");
    expect(() => new Function(script.replace(/<\/?script>/g, ''))).not.toThrow();
  });
});
