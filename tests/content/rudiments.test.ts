import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { playedHands, playedRhythm, rudimentFaults } from '../../src/build/content/rudiment-facts.ts';
import {
  barOfRudiment,
  handLoop,
  layBar,
  mainHands,
  otherHands,
  rudimentSchema,
  strokesOf,
} from '../../src/curriculum/index.ts';
import type { RudimentData } from '../../src/curriculum/index.ts';
import { claimOf } from '../../src/words/proof.ts';

/*
 * The forty International Drum Rudiments, Percussive Arts Society, 1984. What each row rests on stands in its `basis`:
 * read in public listings, recalled from the chart, or following from the name. The invariants below are true by
 * definition of the trade's words, or where they say so common practice.
 */

const FOLDER = new URL('../../content/rudiments/', import.meta.url);
const slugs = readdirSync(FOLDER).map((name) => name.replace(/\.yaml$/, ''));
const all = slugs.map((slug) => ({
  slug,
  ...rudimentSchema.parse(parse(readFileSync(new URL(`${slug}.yaml`, FOLDER), 'utf8'))),
}));
const one = (slug: string) => all.find((rudiment) => rudiment.slug === slug)!;
const family = (name: RudimentData['family']) => all.filter((rudiment) => rudiment.family === name);

function lay(rudiment: RudimentData & { slug: string }) {
  const { spec, cellOf } = barOfRudiment(rudiment.slug, rudiment);
  const laid = layBar(spec, cellOf);
  if (!laid.ok) throw new Error(`${rudiment.slug}: ${laid.fault.message}`);
  return laid;
}

describe(claimOf('forty-rudiments'), () => {
  test('are numbered from 1 to 40, each once', () => {
    expect(all.map(({ number }) => number).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 40 }, (_, index) => index + 1),
    );
  });

  test('each say what they rest on', () => {
    for (const { basis } of all)
      expect(basis).toMatch(/^(follows from the name|two public listings read|recalled from )/);
  });

  test('are 1 to 15 rolls, 16 to 19 diddles, 20 to 30 flams, 31 to 40 drags', () => {
    const kinds = [...all].sort((a, b) => a.number - b.number).map((rudiment) => rudiment.family);
    expect(kinds.slice(0, 15).every((kind) => kind.endsWith('roll'))).toBe(true);
    expect(new Set(kinds.slice(15, 19))).toEqual(new Set(['diddle']));
    expect(new Set(kinds.slice(19, 30))).toEqual(new Set(['flam']));
    expect(new Set(kinds.slice(30))).toEqual(new Set(['drag']));
  });
});

describe.each(all)('$number $name', (rudiment) => {
  const laid = lay(rudiment);

  test('plays the hands, accents, lengths and beats of its row', () => {
    expect(rudimentFaults(rudiment, laid)).toEqual([]);
  });

  test('fills whole bars when it is drawn', () => {
    const slots = laid.phrase.bars.reduce((sum, bar) => sum + bar.slots, 0);
    expect(laid.phrase.slots).toHaveLength(slots);
    expect(laid.phrase.cells).toHaveLength(rudiment.repeat);
  });

  test('has as many lengths as main strokes, and they sum to its beats', () => {
    const lengths = rudiment.rhythm.split(' ');
    expect(lengths).toHaveLength(mainHands(rudiment.hands).length);
    const quarters = lengths.map((length) => (4 / parseInt(length, 10)) * (length.endsWith('t') ? 2 / 3 : 1));
    const rests = rudiment.beats - quarters.reduce((sum, quarter) => sum + quarter, 0);
    expect(Math.abs(rests)).toBeLessThan(1e-9);
  });

  test('has every last grace note by the hand that does not play its primary', () => {
    for (const { graces, hand } of strokesOf(rudiment.hands))
      if (graces) expect(graces.at(-1)!.toUpperCase()).not.toBe(hand);
  });

  test('where it alternates, the second statement is the first by the other hand', () => {
    if (!rudiment.alternates) return;
    const second = laid.timeline.strokes.filter(({ cell }) => cell === 1);
    expect(playedHands(second)).toBe(otherHands(rudiment.hands));
  });
});

const NUMBERS = ['five', 'six', 'seven', 'nine', 'ten', 'eleven', 'thirteen', 'fifteen', 'seventeen'];
const COUNTS = [5, 6, 7, 9, 10, 11, 13, 15, 17];

describe('rolls', () => {
  test.each(NUMBERS.map((word, index) => [word, COUNTS[index]] as const))(
    'a %s stroke roll has %i strokes',
    (word, count) => {
      expect(mainHands(one(`${word}-stroke-roll`).hands)).toHaveLength(count);
    },
  );

  test.each(['five', 'nine', 'thirteen', 'seventeen'])(
    'a %s stroke roll begins and ends on one hand, and alternates',
    (word) => {
      const { hands, alternates } = one(`${word}-stroke-roll`);
      expect(hands.at(0)).toBe(hands.at(-1));
      expect(alternates).toBe(true);
    },
  );

  test.each(['seven', 'eleven', 'fifteen'])('a %s stroke roll begins on one hand and ends on the other', (word) => {
    const { hands, alternates } = one(`${word}-stroke-roll`);
    expect(hands.at(0)).not.toBe(hands.at(-1));
    expect(alternates).toBe(false);
  });

  test('a single stroke four has four, a single stroke seven seven', () => {
    expect(mainHands(one('single-stroke-four').hands)).toHaveLength(4);
    expect(mainHands(one('single-stroke-seven').hands)).toHaveLength(7);
  });
});

describe('paradiddles', () => {
  // One statement is written with both leads, but for the paradiddle-diddle, which keeps its lead.
  test.each([
    ['single-paradiddle', 4, 2],
    ['double-paradiddle', 6, 2],
    ['triple-paradiddle', 8, 2],
    ['single-paradiddle-diddle', 6, 1],
  ])('%s has %i strokes', (slug, strokes, leads) => {
    expect(mainHands(one(slug).hands)).toHaveLength(strokes * leads);
  });

  test.each(['single-paradiddle', 'double-paradiddle', 'triple-paradiddle'])('%s turns its lead', (slug) => {
    const hands = one(slug).hands;
    const half = (hands.length - 1) / 2;
    expect(hands.slice(half + 1)).toBe(otherHands(hands.slice(0, half)));
  });
});

describe('grace notes', () => {
  test('a flam has one', () => {
    for (const { hands } of family('flam'))
      for (const { graces } of strokesOf(hands)) expect(graces.length).toBeLessThan(2);
    for (const { hands } of family('flam'))
      expect(strokesOf(hands).some(({ graces }) => graces.length === 1)).toBe(true);
  });

  test('a drag has two', () => {
    for (const { hands } of family('drag'))
      for (const { graces } of strokesOf(hands)) expect([0, 2]).toContain(graces.length);
    // The dragadiddle begins with a measured double instead; some sources write a drag.
    const written = family('drag').filter(({ hands }) => strokesOf(hands).some(({ graces }) => graces.length === 2));
    expect(family('drag').length - written.length).toBe(1);
  });

  test('rolls and paradiddles have none', () => {
    for (const { family: kind, hands } of all)
      if (kind.endsWith('roll') || kind === 'diddle') expect(hands).toMatch(/^[RL ]+$/);
  });
});

describe('lengths', () => {
  test.each(['flam-accent', 'swiss-army-triplet', 'flam-drag'])(
    '%s fills one beat of triplets with each lead',
    (slug) => {
      const { beats, rhythm } = one(slug);
      expect(beats).toBe(2);
      expect(rhythm.split(' ').every((length) => length.endsWith('t'))).toBe(true);
    },
  );

  test('a single ratamacue is a triplet and an eighth', () => {
    const rudiment = one('single-ratamacue');
    expect(playedRhythm(rudiment, lay(rudiment))).toBe('16t 16t 16t 8 16t 16t 16t 8');
  });
});

describe('hands that do the same', () => {
  test('a flam tap is a double stroke roll with grace notes, an inverted one begins elsewhere in it', () => {
    expect(handLoop(one('flam-tap'))).toBe(handLoop(one('double-stroke-open-roll')));
    expect(handLoop(one('inverted-flam-tap'))).toBe(handLoop(one('double-stroke-open-roll')));
  });

  test('a flammed mill is a paradiddle begun on its diddle', () => {
    expect(handLoop(one('single-flammed-mill'))).toBe(handLoop(one('single-paradiddle')));
  });

  test('a five stroke roll is not an open roll: its ends are singles', () => {
    expect(handLoop(one('five-stroke-roll'))).not.toBe(handLoop(one('double-stroke-open-roll')));
  });
});
