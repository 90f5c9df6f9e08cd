import { turnLead, type CellHands, type LeadState } from '../phrase/lead.ts';
import { PARTS, type Both, type CellStroke, type StrokeProfile } from './profile.ts';
import type { ArrangeRules, HandScore } from './types.ts';

/** Gaps of so many slots and more are alike: nothing about them is tight. */
const WIDE = 4 * PARTS;

/**
 * A score as numbers of which each is harder the greater it is, the first one first: longest run, joins, and how much
 * tighter than wide the tightest gap of hands, grace notes and feet is. Joins are summed, the others are the greatest met.
 */
export type Weights = readonly [run: number, joins: number, hand: number, grace: number, foot: number];

/** Where they stand among the weights: what counts first, and the one that is summed. */
export const RUN = 0;
export const JOINS = 1;
/** Nothing is asked. */
export const NONE: Weights = [0, 0, 0, 0, 0];

/** What two stretches ask together. */
export const together = (a: Weights, b: Weights): Weights =>
  a.map((weight, i) => (i === JOINS ? weight + b[i] : Math.max(weight, b[i]))) as unknown as Weights;

/** Weights as what they mean. */
export const scoreOf = ([run, joins, hand, grace, foot]: Weights): HandScore => {
  const gap = (tightness: number): number => (WIDE - tightness) / PARTS;
  return { run, joins, gaps: { hand: gap(hand), grace: gap(grace), foot: gap(foot) } };
};

/** What has to be remembered of one limb. */
interface LimbMemory {
  /** Since its last stroke, at most wide, and whether that was a grace note. */
  since: number;
  grace: boolean;
  /** From the beginning of the phrase to its first stroke, or to here where it has none; at most wide. Only for loops. */
  first: number;
  struck: boolean;
}

/** What has to be remembered of the cells laid so far. */
export interface HandMemory {
  lead: LeadState;
  run: Both<number>;
  start: Both<number>;
  open: Both<boolean>;
  /** The hands of the last moment and of the first; 0 where there is none yet. */
  last: number;
  first: number;
  limbs: readonly LimbMemory[];
}

const FRESH: LimbMemory = { since: WIDE, grace: false, first: 0, struck: false };

/** Nothing is laid yet. */
export const HANDS_START: HandMemory = {
  lead: {},
  run: [0, 0],
  start: [0, 0],
  open: [true, true],
  last: 0,
  first: 0,
  limbs: [FRESH, FRESH, FRESH, FRESH],
};

/** A cell in its two leads. */
export interface ScoredCell {
  hands: CellHands;
  profiles: Both<StrokeProfile>;
}

/** The memory after one more cell, and what that cell asks with the join before it. */
export function laidOn(
  memory: HandMemory,
  cell: ScoredCell,
  { lead, loop = false }: ArrangeRules,
): { memory: HandMemory; weights: Weights } {
  const turned =
    lead === 'alternating' ? turnLead(memory.lead, cell.hands) : { mirrored: lead === 'left', state: memory.lead };
  const profile = cell.profiles[turned.mirrored ? 1 : 0];
  const limbs = memory.limbs.map((limb, i) => strikeOn(limb, profile.limbs[i], profile.length, loop));
  const weights: Weights = [
    longest(memory, profile),
    (memory.last & profile.first) > 0 ? 1 : 0,
    Math.max(...limbs.slice(0, 2).map((limb) => limb.tight[0])),
    Math.max(...limbs.slice(0, 2).map((limb) => limb.tight[1])),
    Math.max(...limbs.slice(2).map((limb) => limb.tight[0])),
  ];
  const ran = runOn(memory, profile, loop);
  return { memory: { ...ran, lead: turned.state, limbs: limbs.map((limb) => limb.memory) }, weights };
}

const BOTH = [0, 1] as const;
const both = <T>(of: (hand: 0 | 1) => T): Both<T> => [of(0), of(1)];

function longest({ run }: HandMemory, { runs }: StrokeProfile): number {
  return Math.max(
    ...BOTH.map((hand) => Math.max(runs.prefix[hand] && run[hand] + runs.prefix[hand], runs.longest[hand])),
  );
}

type Ran = Pick<HandMemory, 'run' | 'start' | 'open' | 'last' | 'first'>;

function runOn(memory: HandMemory, { runs, first, last }: StrokeProfile, loop: boolean): Ran {
  if (runs.moments === 0) return memory;
  const whole = (hand: 0 | 1): boolean => runs.prefix[hand] === runs.moments;
  const run = both((hand) => (whole(hand) ? memory.run[hand] + runs.prefix[hand] : runs.suffix[hand]));
  if (!loop) return { ...memory, run, last };
  return {
    run,
    start: both((hand) => memory.start[hand] + (memory.open[hand] ? runs.prefix[hand] : 0)),
    open: both((hand) => memory.open[hand] && whole(hand)),
    last,
    first: memory.first || first,
  };
}

/** One limb through a cell: how tight its gaps are, after main strokes and after grace notes. */
function strikeOn(
  before: LimbMemory,
  strokes: readonly CellStroke[],
  length: number,
  loop: boolean,
): { memory: LimbMemory; tight: Both<number> } {
  const tight: [number, number] = [0, 0];
  let last: CellStroke = { at: -before.since, slot: -1, grace: before.grace };
  for (const stroke of strokes) {
    if (last.grace ? stroke.at > last.at : stroke.slot !== last.slot) meet(tight, stroke.at - last.at, last.grace);
    last = stroke;
  }
  const since = Math.min(WIDE, length - last.at);
  const started = before.struck || strokes.length === 0 ? before.first : before.first + strokes[0].at;
  const struck = before.struck || strokes.length > 0;
  const first = Math.min(WIDE, struck ? started : before.first + length);
  // What is wide is alike, whatever stroke it came from.
  const grace = since < WIDE && last.grace;
  return { memory: loop ? { since, grace, first, struck } : { ...FRESH, since, grace }, tight };
}

function meet(tight: [number, number], gap: number, grace: boolean): void {
  const kind = grace ? 1 : 0;
  tight[kind] = Math.max(tight[kind], WIDE - gap);
}

/** What the seam of a loop asks: the last strokes against the first ones of the next pass. */
export function seamWeights({ run, start, open, last, first, limbs }: HandMemory): Weights {
  const gap = (limb: LimbMemory): number => (limb.struck ? Math.max(0, WIDE - limb.since - limb.first) : 0);
  const tightest = (of: readonly LimbMemory[], grace: boolean): number =>
    Math.max(0, ...of.filter((limb) => limb.grace === grace).map(gap));
  // A hand that never pauses is counted once round.
  const runs = BOTH.map((hand) => (open[hand] ? run[hand] : run[hand] + start[hand]));
  return [
    Math.max(...runs),
    (last & first) > 0 ? 1 : 0,
    tightest(limbs.slice(0, 2), false),
    tightest(limbs.slice(0, 2), true),
    tightest(limbs.slice(2), false),
  ];
}

/** A memory as one text, the same for memories that are alike. */
export function handKey({ lead, run, start, open, last, first, limbs }: HandMemory): string {
  const hands = [lead.leader, lead.last, ...run, ...start, ...open.map(Number), last, first];
  return [
    ...hands,
    ...limbs.flatMap((limb) => [limb.since, Number(limb.grace), limb.first, Number(limb.struck)]),
  ].join();
}
