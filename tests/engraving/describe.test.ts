import { expect, it } from 'vitest';
import { describe as inWords } from '../../src/words/describe.ts';
import { atSchool } from '../helpers/at-school.ts';
import { CASES, rudimentCases } from './cases.ts';

const said = (name: string) => inWords(CASES[name]().timeline, { names: CASES[name]().options.names });

it('labels a bar by what it is made of and who leads', () => {
  expect(said('course61').label).toBe('One bar of 4/4 in triplets: four flam drags, right hand leads');
  expect(said('leftLead').label).toBe('One bar of 4/4 in triplets: four flam drags, the lead alternates');
  expect(said('course82').label).toBe(
    'One bar of 4/4 in sixteenths: a kick, three flam drags, two R L L, right hand leads',
  );
  expect(said('mixedGrids').label).toMatch(
    /^Four bars of 4\/4 in eighths, then triplets, then sixteenths, then sextuplets/,
  );
});

it('says beats that are alike once', () => {
  expect(said('course61').reading).toBe('Beats 1 to 4: accented right flam; on trip left double; on let right.');
});

it('says a pickup, a silent bar and what is moved', () => {
  expect(said('pickup').reading).toMatch(/^Before it, on the a of 4 kick twice\. Beat 1: accented right flam/);
  expect(said('silentBar').reading).toContain('Bar 2: silence.');
  expect(said('movedGraces').reading).toContain('right flam with its grace note on the high tom');
  expect(said('groove').reading).toContain('right on the hi-hat and left');
});

it('leads by the hand of the primary, even where its grace note is written out', () => {
  expect(said('openedOn').label).toContain('right hand leads');
});

it('says measure where the school does', async () => {
  const { timeline } = CASES.silentBar();
  const words = await atSchool({ barWord: 'measure' }, () => import('../../src/words/describe.ts'));
  const { label, reading } = words.describe(timeline);
  expect(label).toMatch(/^Three measures of 4\/4/);
  expect(reading).toContain('Measure 2: silence.');
});

it.each([...Object.keys(CASES).map((name) => [name, CASES[name]()] as const), ...rudimentCases()])(
  '%s: is said in whole sentences',
  (_, { timeline }) => {
    const { label, reading } = inWords(timeline);
    expect(label + reading).not.toMatch(/undefined|NaN|null/);
    expect(reading).toMatch(/^[A-Z].*\.$/);
  },
);
