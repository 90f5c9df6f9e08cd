import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { perform, readPhrase, type PerformOptions, type Timeline } from '../../src/core/index.ts';
import type { EngraveOptions } from '../../src/engraving/index.ts';

/** A named piece for the gallery and the tests. */
export interface Case {
  timeline: Timeline;
  options: EngraveOptions;
}

interface CaseText {
  meter?: string;
  grid?: number;
  pickup?: number;
  names?: (string | null)[];
  perform?: PerformOptions;
  options?: EngraveOptions;
  lead?: 'written' | 'left' | 'alternating';
  fill?: 'exact' | 'rests';
}

/** A case from cells in sticking text; `name: text` names a cell, and with `names` none is named by its text. */
function piece(cells: string | [name: string | null, text: string][], more: CaseText): Case {
  const named = typeof cells === 'string' ? [[null, cells] as [null, string]] : cells;
  const request = { meter: more.meter, grid: more.grid, pickup: more.pickup, lead: more.lead, fill: more.fill };
  const read = readPhrase({ cells: named.map(([name, text]) => ({ id: name ?? '', text })), ...request });
  if (!read.ok) throw new Error(`${JSON.stringify(cells)}: ${read.fault.message}`);
  const names = read.phrase.cells.map(({ id }) => id || null);
  return { timeline: perform(read.phrase, more.perform), options: { names, ...more.options } };
}

const FLAM_DRAG: [string, string] = ['flam drag', '>lR LL R'];
const RLL: [string, string] = ['R L L', 'R L L'];
const four = (grid: number): CaseText => ({ meter: '4/4', grid });
const plain = (grid: number): Case => piece(`{${'R L '.repeat(grid).trim()}}2`, four(grid));
const GROOVE = 'R@hat+K R@hat R@hat+L R@hat R@hat+K R@hat+K R@hat+L R@open';

/** Bars as a drummer meets them, by what they show. */
export const CASES: Record<string, () => Case> = {
  grid1: () => plain(1),
  grid2: () => plain(2),
  grid3: () => plain(3),
  grid4: () => plain(4),
  grid5: () => plain(5),
  grid6: () => plain(6),
  grid7: () => plain(7),
  grid8: () => plain(8),
  mixedGrids: () => piece('[4/4:2] R L R L R L R L [4/4:3] R L R L R L R L R L R L [4/4:4] {R L}8 [4/4:6] {R L}12', {}),
  mixedMeters: () =>
    piece('[4/4:4] {R L R R L R L L}2 [3/4:2] R L R L R L [6/8:3] R L L R L L [2/4:4] R - R R L - L L', {}),
  sixEight: () => piece('>R L R >L R L', { meter: '6/8', grid: 3 }),
  sixEightSixteenths: () => piece('>R L L R L L >R - R R - L', { meter: '6/8', grid: 6 }),
  sixEightDuplets: () => piece('>R L R R L L >R - - - R L', { meter: '6/8', grid: 6 }),
  sixEightFours: () => piece('R L R L R L R R', { meter: '6/8', grid: 4 }),
  sixEightFives: () => piece('R L R L R L R L R L', { meter: '6/8', grid: 5 }),
  twelveEight: () => piece('>R L L >R L L >R L L >R L L', { meter: '12/8', grid: 3 }),
  sevenEight: () => piece('>R L >R L >R L L', { meter: '2+2+3/8', grid: 1 }),
  sevenEightSixteenths: () => piece('>R L R R >L R L L >R L R L R R', { meter: '2+2+3/8', grid: 2 }),
  sevenEightUngrouped: () => piece('>R L >R L >R L L', { meter: '7/8', grid: 1 }),
  sevenEightTriplets: () => piece('{R L L}7', { meter: '2+2+3/8', grid: 3 }),
  fiveFour: () => piece('>R L R R >L R L L R L R R L R L L R - R L', { meter: '5/4', grid: 4 }),
  threeFour: () => piece('>R L L R L L', { meter: '3/4', grid: 2 }),
  twoTwo: () => piece('R L R L R L R L R L R L R - - L', { meter: '2/2', grid: 8 }),
  restsInFours: () => piece('R - - L - R L - - - R - - R - L', four(4)),
  restsInEights: () => piece('R - R R - - - L - R - - - - R -', { meter: '2/4', grid: 8 }),
  restsInTriplets: () => piece('R - L - R - - - L R L -', four(3)),
  restsInFives: () => piece('R - - - L - R - - -', { meter: '2/4', grid: 5 }),
  restsInSixes: () => piece('R - - L - - R - L - R - R - - R L L', { meter: '3/4', grid: 6 }),
  silentBar: () => piece('R L R L R L R L | - - - - - - - - | R L - - - - R L', four(2)),
  holds: () => piece('Rz _ _ _ _ _ R L | R _ _ _ L _ _ _', four(2)),
  heldOverBarLine: () => piece('R L R L R L Rz _ | _ _ R L R - - -', four(2)),
  heldInsideBeat: () => piece('R L _ _ _ _ R L _ R _ R L _ _ _', four(4)),
  splits: () => piece('RR LLLL RLR L R- -L R-R L', { meter: '4/4', grid: 2 }),
  splitSixteenths: () => piece('RR LL RR LL R LL R LL RR L RR L RLR L RLR L', four(4)),
  splitTriplets: () => piece('RR LL RR L RR L R L RR LL R L', four(3)),
  diddlesSlashed: () =>
    piece('R LL RR L RR LL RR LL R LL R LL RR LL R L', { ...four(4), options: { diddles: 'slash' } }),
  flams: () => piece('lR - rL - >lR - >rL -', four(2)),
  flamsInSixteenths: () => piece('lR rL lR rL >lR L R LL lR LL rL RR lR L R rL', four(4)),
  dragsAndRuffs: () => piece('llR L rrL R rlrL R lrlR >L', four(2)),
  dragsInSixteenths: () => piece('llR L llR L rrL R rrL R lrlR L R L llR LL rrL RR', four(4)),
  ghosts: () => piece('>R (L) (R) (L) >R (L) (lR) (L) ^R (L) (R) (LL) ^R (L) (R) L'.replace('(LL)', '(L)'), four(4)),
  buzzes: () => piece('Rz Lz Rz Lz R Lz lRz L', four(2)),
  buzzSixteenths: () => piece('Rz L Lz R Rz - Lz - R - - Lz Rz _ _ _', four(4)),
  twoHands: () => piece('R+L R L R+L | >R+L - R L', { meter: '2/4', grid: 2 }),
  heads: () => piece('R R@rimshot R@cross R@rim R@click L K L', four(2)),
  surfaces: () =>
    piece(
      '[4/4:2] R@snare R@rimshot R@cross R@rim R@click R@tom1 R@tom2 R@floor | R@hat R@open R@half H@pedal R@splash R@ride R@bell R@crash | R@choke R@china R@cowbell K R@crash+K lR@floor R@bell L',
      {},
    ),
  groove: () => piece(GROOVE, four(2)),
  grooveSixteenths: () =>
    piece(
      '>R@hat+K R@hat R@hat K >R@hat+L R@hat+K R@hat (L) R@hat+K R@hat R@hat+K (L) >R@hat+L R@hat R@open+K R@hat',
      four(4),
    ),
  grooveRide: () => piece('R@ride+K - - R@ride+H (L) R@ride R@ride - K R@ride+H - R@ride+L', four(3)),
  feetLine: () => piece('R@ride R@ride L R@ride R@ride L R@ride L\nfeet: K H K H KK H K -', four(2)),
  rollOverFeet: () => piece('Rz _ _ _ Lz _ _ _\nfeet: K - K - K K - -', four(2)),
  linearKit: () => piece('R@tom1 L K R@tom2 L K R@floor L@floor K R L K R@floor L K K', four(4)),
  kickOnPad: () =>
    piece([['kick', 'K'], FLAM_DRAG, FLAM_DRAG, ['kick', 'K'], FLAM_DRAG, FLAM_DRAG, ['K R', 'K R']], four(4)),
  kickUnderPad: () => piece('R+K L R L R+K L R LL R+K L R+K L R L KK L', four(4)),
  feetAlone: () => piece('K - K K K - - K KK - K - H - H -', four(4)),
  movedGraces: () => piece('{>l@tom1:R LL R}4', four(3)),
  movedPrimaries: () => piece('{>lR@floor LL R@floor}4', four(3)),
  crashWithKick: () => piece('{>l@crash:R+K LL R}4', four(3)),
  openedBefore: () => piece('{>lR LL R}4', { ...four(3), perform: { flams: 'before' } }),
  openedOn: () => piece('{>lR LL R}4', { ...four(3), perform: { flams: 'on' } }),
  openedDrags: () => piece('{llR L rrL R}2', { ...four(2), perform: { flams: 'before' } }),
  openedCrash: () => piece('{>l@crash:R+K LL R}4', { ...four(3), perform: { flams: 'on' } }),
  pickup: () =>
    piece([['KK', 'KK'], FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, ['L', 'L']], { ...four(4), pickup: 1 }),
  pickupOfTwoBeats: () => piece('R L R L R L | R L R L R L R L | R L R L R L R L', { ...four(2), pickup: 6 }),
  names: () =>
    piece(
      [
        ['a very long name for a cell', 'R'],
        ['kick', 'K'],
        ['paradiddle', 'R L R R'],
        RLL,
        FLAM_DRAG,
        ['tail of it', 'R L R L'],
      ],
      four(4),
    ),
  dense: () => piece('{llR LL rrL RR lR LL R LL RR LL RR LL RR LL RR LL}2', { meter: '4/4', grid: 8 }),
  leftLead: () => piece([FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, FLAM_DRAG], { ...four(3), lead: 'alternating' }),
  threeBars: () => piece([['flam drag', '{>lR LL R}16']], four(4)),
  fourBars: () => piece(`{${'R L R R L R L L'}}4`, four(2)),
  noCounts: () => piece('{R L R R L R L L}2', { ...four(4), options: { counts: false } }),
  noLetters: () => piece('{R L R R L R L L}2', { ...four(4), options: { letters: false } }),
  course11: () => piece('R L R L R L R L', four(2)),
  course14: () =>
    piece('[4/4:2] R L R L R L R L [4/4:3] R L R L R L R L R L R L [4/4:4] {R L}8 [4/4:5] {R L}10 [4/4:6] {R L}12', {}),
  course15: () => piece('>lR L R L >rL R L R', four(2)),
  course61: () => piece([FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, FLAM_DRAG], four(3)),
  course63: () => piece('R L R L R L R L R L R L | >lR LL R >lR LL R >lR LL R >lR LL R', four(3)),
  course64: () => piece('>R - >R >R - >R >R - >R >R - >R | >lR LL >R >lR LL >R >lR LL >R >lR LL >R', four(3)),
  course65: () => piece('>R LL RL >R LL RL >R LL RL >R LL R | L>R LL R L>R LL R L>R LL R L>R LL R', four(3)),
  course71: () => piece([FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, ['1', 'L']], four(4)),
  course82: () => piece([['kick', 'K'], FLAM_DRAG, RLL, FLAM_DRAG, RLL, FLAM_DRAG], four(4)),
  course87: () =>
    piece(
      [FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, FLAM_DRAG, ['flam', '>rL'], ['2 singles', 'R L'], ['crash', '>R@crash+K']],
      four(4),
    ),
};

const RUDIMENTS = new URL('../../content/rudiments/', import.meta.url);

interface RudimentFile {
  number: number;
  name: string;
  sticking: string;
  meter: string;
  grid: number;
  repeat?: number;
  alternates?: boolean;
}

/** The forty rudiments as the site draws them, in their order. */
export function rudimentCases(): [string, Case][] {
  const files = readdirSync(RUDIMENTS).map(
    (file) => parse(readFileSync(new URL(file, RUDIMENTS), 'utf8')) as RudimentFile,
  );
  files.sort((a, b) => a.number - b.number);
  return files.map(({ name, sticking, meter, grid, repeat, alternates }) => [
    name,
    piece(repeat && repeat > 1 ? `{${sticking}}${repeat}` : sticking, {
      meter,
      grid,
      fill: 'rests',
      lead: alternates ? 'alternating' : 'written',
    }),
  ]);
}
