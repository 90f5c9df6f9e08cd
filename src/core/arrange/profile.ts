import { slotsOnly } from '../sticking/expand.ts';
import { HANDS, isHand, LIMBS } from '../sticking/limbs.ts';
import { mirror } from '../sticking/mirror.ts';
import type { Chord, Hand, HoldItem, Limb, SlotItem, Sticking } from '../sticking/types.ts';
import { cellHands, type CellHands } from '../phrase/lead.ts';

/** Per hand, R then L. */
export type Both<T> = readonly [T, T];

/** What the strokes of a cell add to the runs of each hand. */
export interface RunProfile {
  /** Moments at which a hand strikes. */
  moments: number;
  /** Moments of each hand at once from the beginning, the longest row inside, and at the end. */
  prefix: Both<number>;
  longest: Both<number>;
  suffix: Both<number>;
}

/** What the rules need to know of a cell's sticking. */
export interface CellProfile {
  /** Slots in which an accent falls, and slots in which any stroke begins. */
  accents: ReadonlySet<number>;
  strokes: ReadonlySet<number>;
  /** The last slot in which a stroke begins; below 0 where there is none. */
  lastStroke: number;
  /** Its runs as written and mirrored. */
  runs: Both<RunProfile>;
  hands: CellHands;
}

/** Reads a sticking once, for all the rules. */
export function profileOf(sticking: Sticking, graces: boolean): CellProfile {
  const hands = slotsOnly(sticking.hands);
  const feet = slotsOnly(sticking.feet ?? []);
  const chords = hands.map((item, i) => [...chordsOf(item), ...chordsOf(feet[i])]);
  const where = (test: (chord: Chord) => boolean): Set<number> =>
    new Set(chords.flatMap((slot, i) => (slot.some(test) ? [i] : [])));
  const strokes = where((chord) => chord.length > 0);
  return {
    accents: where((chord) => chord.some((s) => s.accent !== undefined)),
    strokes,
    lastStroke: Math.max(-Infinity, ...strokes),
    runs: [runsOf(sticking, graces), runsOf(mirror(sticking), graces)],
    hands: cellHands(sticking),
  };
}

/** The chords of a slot, none where nothing is struck anew. */
export const chordsOf = (item: SlotItem | HoldItem | undefined): Chord[] => (item?.kind === 'slot' ? item.parts : []);

/** Who strikes at each moment: grace notes, where they count, before their primary. */
function momentsOf(chord: Chord, graces: boolean): Hand[][] {
  const main = chord.map((s) => s.limb).filter(isHand);
  const before = graces ? chord.flatMap((s) => (s.graces ?? []).map((g) => [g.hand])) : [];
  return main.length ? [...before, main] : before;
}

/** Who strikes at each moment of the hands' line, in order of time. */
export function handMoments(sticking: Sticking, graces: boolean): Hand[][] {
  return slotsOnly(sticking.hands)
    .flatMap(chordsOf)
    .flatMap((chord) => momentsOf(chord, graces));
}

/** What a sticking adds to the runs of each hand. */
export function runsOf(sticking: Sticking, graces: boolean): RunProfile {
  const moments = handMoments(sticking, graces);
  const rows = HANDS.map((hand) => rowsOf(moments.map((m) => m.includes(hand))));
  const pick = (key: 'prefix' | 'longest' | 'suffix'): Both<number> => [rows[0][key], rows[1][key]];
  return { moments: moments.length, prefix: pick('prefix'), longest: pick('longest'), suffix: pick('suffix') };
}

function rowsOf(struck: boolean[]): { prefix: number; longest: number; suffix: number } {
  let longest = 0;
  let row = 0;
  for (const hit of struck) longest = Math.max(longest, (row = hit ? row + 1 : 0));
  const first = struck.indexOf(false);
  return { prefix: first < 0 ? struck.length : first, longest, suffix: row };
}

/** Parts of a slot in which gaps are measured: halves, thirds and quarters of a slot are whole numbers of them. */
export const PARTS = 12;

/** A stroke of one limb in a cell. */
export interface CellStroke {
  /** From the beginning of the cell, in parts of a slot. */
  at: number;
  slot: number;
  grace: boolean;
}

/** What a cell asks of the limbs, in one of its two leads. */
export interface StrokeProfile {
  /** In parts of a slot. */
  length: number;
  /** The strokes of each limb, R L K H, in order of time; grace notes stand at the tick of their primary. */
  limbs: readonly CellStroke[][];
  runs: RunProfile;
  /** The hands of the first and of the last moment: 1 right, 2 left, 3 both; 0 where no hand strikes. */
  first: number;
  last: number;
}

/** A sticking as written and mirrored. */
export const strokeProfiles = (sticking: Sticking): Both<StrokeProfile> => [
  strokeProfile(sticking),
  strokeProfile(mirror(sticking)),
];

function strokeProfile(sticking: Sticking): StrokeProfile {
  const lines = [slotsOnly(sticking.hands), slotsOnly(sticking.feet ?? [])];
  const moments = handMoments(sticking, true);
  return {
    length: lines[0].length * PARTS,
    limbs: LIMBS.map((limb) => lines.flatMap((line) => strokesOf(line, limb)).sort((a, b) => a.at - b.at)),
    runs: runsOf(sticking, true),
    first: maskOf(moments[0]),
    last: maskOf(moments[moments.length - 1]),
  };
}

const maskOf = (hands: Hand[] = []): number => (hands.includes('R') ? 1 : 0) + (hands.includes('L') ? 2 : 0);

function strokesOf(line: readonly (SlotItem | HoldItem)[], limb: Limb): CellStroke[] {
  return line.flatMap((item, slot) => {
    const parts = chordsOf(item);
    return parts.flatMap((chord, part) =>
      chordStrokes(chord, limb, slot, slot * PARTS + (part * PARTS) / parts.length),
    );
  });
}

function chordStrokes(chord: Chord, limb: Limb, slot: number, at: number): CellStroke[] {
  const graces = chord.flatMap((stroke) => stroke.graces ?? []).filter(({ hand }) => hand === limb);
  const main = chord.filter((stroke) => stroke.limb === limb);
  return [...graces.map(() => ({ at, slot, grace: true })), ...main.map(() => ({ at, slot, grace: false }))];
}
