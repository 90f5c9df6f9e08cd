import { slotsOnly } from '../sticking/expand.ts';
import { LIMBS } from '../sticking/limbs.ts';
import { mirror } from '../sticking/mirror.ts';
import type { Chord, Hand, HoldItem, Limb, SlotItem, Sticking } from '../sticking/types.ts';
import { chordsOf, handMoments, runsOf, type Both, type RunProfile } from './profile.ts';

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
  profileOf(sticking),
  profileOf(mirror(sticking)),
];

function profileOf(sticking: Sticking): StrokeProfile {
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
