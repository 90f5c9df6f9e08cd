import type { ArrangeRules } from '../../arrange/types.ts';
import { slotsOf } from '../../time/meter.ts';
import type { Grid, MeterText } from '../../time/units.ts';
import { bankCells, cellsFor, onShelf, type PuzzleCell } from '../bank.ts';
import { BY_CELLS, type CellsHint } from '../by-cells.ts';
import { answersTo, fillings, longestRun, performCells, shelfLimits, slotsIn, type CellsPuzzle } from '../cells.ts';
import type { CellsWrong } from '../grade-cells.ts';
import type { PuzzleKindRecord } from '../kind.ts';
import { difficultyOf, levelOf, type Level } from '../level.ts';
import { puzzleChance, type Chance } from '../random.ts';

/** What is missing: cells are placed between others that are fixed. */
export type MissingPuzzle = CellsPuzzle<'missing'>;

const NUMBER = 1;

interface LevelSpec {
  bars: readonly (readonly [MeterText, Grid])[];
  /** Slots of the hole, from the first to the second. */
  hole: readonly [number, number];
  shelf: number;
  rules: number;
}

const BY_LEVEL: Record<Level, LevelSpec> = {
  1: { bars: [['2/4', 4], ['4/4', 2]], hole: [3, 5], shelf: 3, rules: 0 },
  2: { bars: [['4/4', 3], ['3/4', 4]], hole: [3, 5], shelf: 3, rules: 1 },
  3: { bars: [['4/4', 4]], hole: [4, 7], shelf: 4, rules: 2 },
  4: { bars: [['4/4', 4], ['5/4', 3], ['6/8', 6]], hole: [5, 9], shelf: 4, rules: 2 },
  5: { bars: [['5/4', 4], ['7/8', 2], ['4/4', 6]], hole: [6, 12], shelf: 5, rules: 3 },
}; // prettier-ignore

const TRIES = 80;

type Draft = Omit<MissingPuzzle, 'kind' | 'seed' | 'level' | 'difficulty'>;

/**
 * A bar with a hole: what stands on both sides is fixed, and the rules look over the joins. It is made from a whole bar.
 * @example
 * makePuzzle('missing', 4182).before.length // → 2
 */
function make(seed: number): MissingPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance(NUMBER, seed);
  const spec = BY_LEVEL[level];
  let best: { draft: Draft; rules: number } | undefined;
  for (let tries = 0; tries < TRIES && (best?.rules ?? -1) < spec.rules; tries += 1) {
    const bar = drawBar(chance, spec, level);
    const next = bar && withRules(bar, chance, spec.rules);
    if (next && next.rules > (best?.rules ?? -1)) best = next;
  }
  const { draft, rules } = best ?? { draft: plainBar(), rules: 0 };
  const facts = {
    answers: answersTo(draft).count,
    choices: fillings(draft).count,
    rules,
    depth: draft.solution.length,
  };
  return { kind: 'missing', seed, level, ...draft, difficulty: difficultyOf(facts, draft.grid) };
}

/** A bar of cells with some of them, side by side, taken out. */
function drawBar(chance: Chance, spec: LevelSpec, level: Level): Draft | undefined {
  const [meter, grid] = chance.pick(spec.bars);
  const slots = slotsOf(meter, grid);
  const fitting = cellsFor(level, slots / 2).filter(({ id }) => id !== 'single-left');
  const shelf = chance.shuffle(fitting).slice(0, spec.shelf);
  const bar = { shelf, before: [], after: [], slots, barSlots: slots, rules: {}, uses: [] };
  const all = fillings(bar);
  if (all.count < 2n) return undefined;
  const whole = bankCells(...all.sample(chance.unit));
  const from = chance.between(1, Math.max(1, whole.length - 2));
  // One cell alone fills a hole by its length: at least two are taken out.
  const to = whole.findIndex((_, i) => i > from && slotsIn(whole.slice(from, i + 1)) >= spec.hole[0]);
  return to < 0 ? undefined : cut({ ...bar, meter, grid, gap: 0, solution: [] }, whole, [from, to + 1], spec);
}

function cut(bar: Draft, whole: PuzzleCell[], [from, to]: [number, number], { hole }: LevelSpec): Draft | undefined {
  const taken = whole.slice(from, to);
  const gap = slotsIn(taken);
  const shelf = onShelf(bar.shelf.filter((cell) => cell.slots <= gap));
  const draft = {
    ...bar,
    before: whole.slice(0, from),
    after: whole.slice(to),
    gap,
    shelf,
    uses: shelfLimits(shelf),
    solution: taken.map(({ id }) => id),
  };
  return gap <= hole[1] && shelf.length > 1 && fillings(draft).count > 1n ? draft : undefined;
}

/** Rules read from the whole bar, kept only where they leave out some of the fillings. */
function withRules(draft: Draft, chance: Chance, wanted: number): { draft: Draft; rules: number } {
  const whole = [...draft.before, ...bankCells(...draft.solution), ...draft.after];
  let now = draft;
  let rules = 0;
  for (const rule of chance.shuffle([runRule, accentRule, noAccentRule, lastRule])) {
    if (rules >= wanted) break;
    const more = rule(whole, draft, chance);
    const next = more && { ...now, rules: { ...now.rules, ...more } };
    if (next && answersTo(next).count < answersTo(now).count) {
      now = next;
      rules += 1;
    }
  }
  return { draft: now, rules };
}

type RuleMaker = (whole: PuzzleCell[], draft: Draft, chance: Chance) => ArrangeRules | undefined;

const runRule: RuleMaker = (whole, draft) => {
  const longest = longestRun(performCells(whole, draft));
  return longest >= 1 && longest <= 3 ? { maxRun: longest } : undefined;
};

/** Slots of the hole, with an accent in the whole bar or without. */
function holeSlots(whole: PuzzleCell[], draft: Draft, accented: boolean): number[] {
  const from = slotsIn(draft.before);
  const slots = new Set(performCells(whole, draft).strokes.flatMap((s) => (s.accent ? [s.slot] : [])));
  return Array.from({ length: draft.gap }, (_, i) => from + i).filter((slot) => slots.has(slot) === accented);
}

const accentRule: RuleMaker = (whole, draft, chance) => {
  const slots = holeSlots(whole, draft, true);
  return slots.length ? { accentOn: [chance.pick(slots)] } : undefined;
};

const noAccentRule: RuleMaker = (whole, draft, chance) => {
  const slots = holeSlots(whole, draft, false);
  return slots.length ? { noAccentOn: [chance.pick(slots)] } : undefined;
};

const lastRule: RuleMaker = (whole, draft) => {
  const last = performCells(whole, draft).strokes.findLast(({ kind }) => kind !== 'grace');
  return draft.after.length || !last ? undefined : { lastStrokeOn: last.slot };
};

/** Where chance found nothing: the last beat of a bar. */
function plainBar(): Draft {
  const [before, shelf] = [
    bankCells('four-singles', 'four-singles', 'four-singles'),
    bankCells('two-singles', 'kick', 'single'),
  ];
  const base = { meter: '4/4', grid: 4 as Grid, slots: 16, barSlots: 16, before, after: [], shelf, gap: 4, rules: {} };
  return { ...base, uses: shelfLimits(shelf), solution: ['two-singles', 'two-singles'] };
}

/** The kind `missing`. */
export const record: PuzzleKindRecord<MissingPuzzle, readonly string[], CellsWrong, CellsHint> = {
  number: NUMBER,
  make,
  ...BY_CELLS,
};
