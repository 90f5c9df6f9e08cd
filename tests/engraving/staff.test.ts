import { describe, expect, it } from 'vitest';
import { perform, readPhrase, SURFACES, type Surface } from '../../src/core/index.ts';
import { staffFor } from '../../src/core/index.ts';
import { engrave } from '../../src/engraving/index.ts';
import { claimOf } from '../../src/words/proof.ts';
import { strokeGroups } from './read-svg.ts';

function timelineOf(text: string) {
  const read = readPhrase({ cells: [{ id: 'a', text }], meter: '1/4', grid: 1 });
  if (!read.ok) throw new Error(read.fault.message);
  return perform(read.phrase);
}

const foot = (surface: Surface): string => (surface === 'kick' ? 'K' : surface === 'pedal' ? 'H' : `R@${surface}`);

/** Glyph and height of the head of one stroke on five lines. */
function headOf(surface: Surface): [code: string, y: number] {
  const [{ markup }] = strokeGroups(engrave(timelineOf(foot(surface)), { staff: 'kit' }).html);
  const [, code, y] = /<use href="#g(E0[A-D][0-9A-F])" x="[^"]*" y="([^"]*)"/.exec(markup)!;
  return [code, Number(y)];
}

/** Height of a note name with the middle line, B4, at 0 and five pixels a step. */
const heightOf = (name: string): number => -5 * (Number(name[1]) * 7 + 'CDEFGAB'.indexOf(name[0]) - 34) + 0;

const BLACK = 'E0A4';
const CROSS = 'E0A9';
const DIAMOND = 'E0DB';

describe(claimOf('staff-positions'), () => {
  // N. Weinberg, Guidelines for Drumset Notation, Percussive Notes, June 1994 (opening pages read); toms of a five-piece kit on E5, D5 and A4: common practice.
  it.each([
    ['china', CROSS, 'B5'],
    ['crash', CROSS, 'A5'],
    ['hat', CROSS, 'G5'],
    ['ride', CROSS, 'F5'],
    ['bell', DIAMOND, 'F5'],
    ['tom1', BLACK, 'E5'],
    ['tom2', BLACK, 'D5'],
    ['snare', BLACK, 'C5'],
    ['cross', CROSS, 'C5'],
    ['floor', BLACK, 'A4'],
    ['kick', BLACK, 'F4'],
    ['pedal', CROSS, 'D4'],
  ] as const)('%s has head U+%s on %s', (surface, code, name) => {
    expect(headOf(surface)).toEqual([code, heightOf(name)]);
  });

  it('tells all surfaces apart by head, height or sign', () => {
    const looks = SURFACES.map((surface) => {
      const { glyphs } = engrave(timelineOf(foot(surface)), { staff: 'kit', counts: false });
      return [...headOf(surface), ...glyphs].join();
    });
    expect(new Set(looks).size).toBe(SURFACES.length);
  });

  it.each([
    ['R', 'pad'],
    ['R+K', 'pad'],
    ['R@cross', 'pad'],
    ['R@tom1', 'kit'],
    ['l@crash:R', 'kit'],
    ['H', 'kit'],
  ])('%s stands on the %s staff', (text, staff) => {
    expect(staffFor(timelineOf(text))).toBe(staff);
    expect(engrave(timelineOf(text)).html).toContain(`class="score ${staff} `);
  });

  it('puts a moved grace note on its own place with a ledger line of its own', () => {
    const [grace] = strokeGroups(engrave(timelineOf('l@crash:R')).html);
    expect(grace.id).toMatch(/g0$/);
    expect(grace.markup).toMatch(/#gE0A9" transform="translate\([\d.]+ -30\)scale\(0.67\)"/);
    expect(grace.markup).toMatch(/M[\d.]+ -30H[\d.]+" stroke-width="1.6"/);
  });
});
