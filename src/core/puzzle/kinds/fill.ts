import type { ArrangeRules } from '../../arrange/types.ts';
import { slotsOf } from '../../time/meter.ts';
import type { Grid, MeterText } from '../../time/units.ts';
import { bankCells, cellsFor, onShelf, type PuzzleCell } from '../bank.ts';
import { BY_CELLS, type CellsHint } from '../by-cells.ts';
import {
  answersTo,
  fillings,
  isUseRule,
  longestRun,
  performCells,
  shelfLimits,
  slotOfStroke,
  slotsIn,
  type CellsPuzzle,
  type Uses,
} from '../cells.ts';
import type { CellsWrong } from '../grade-cells.ts';
import type { PuzzleKindRecord } from '../kind.ts';
import { difficultyOf, levelOf, type Level } from '../level.ts';
import { puzzleChance, type Chance } from '../random.ts';

/** Fill the bar: cells are placed until it is full and every rule of the card holds. */
export type FillPuzzle = CellsPuzzle<'fill'>;

const NUMBER = 0;

/** Whole numbers from the first to the second. */
type Span = readonly [low: number, high: number];

interface LevelSpec {
  bars: readonly (readonly [MeterText, Grid, bars: number])[];
  shelf: Span;
  /** How many rules there are to be, and how many answers they are to leave. */
  rules: Span;
  answers: Span;
}

const BY_LEVEL: Record<Level, LevelSpec> = {
  1: { bars: [['2/4', 4, 1], ['4/4', 2, 1], ['3/4', 2, 1]], shelf: [2, 3], rules: [0, 0], answers: [2, 60] },
  2: { bars: [['4/4', 3, 1], ['3/4', 4, 1], ['2/4', 4, 1]], shelf: [3, 3], rules: [1, 1], answers: [2, 40] },
  3: { bars: [['4/4', 4, 1]], shelf: [3, 4], rules: [2, 2], answers: [2, 60] },
  4: { bars: [['4/4', 4, 1], ['5/4', 3, 1], ['6/8', 6, 1]], shelf: [4, 4], rules: [2, 3], answers: [1, 40] },
  5: { bars: [['5/4', 4, 1], ['7/8', 2, 1], ['4/4', 3, 2], ['4/4', 6, 1]], shelf: [4, 5], rules: [3, 4], answers: [1, 24] },
}; // prettier-ignore

/** How often chance may try before the best bar so far is taken. */
const TRIES = 40;
/** Fewer ways than these to fill a bar make no puzzle. */
const LEAST_FILLINGS = 4n;

/**
 * A bar to be filled from a shelf of cells. It is made from an answer, and its rules are read from that answer, so there
 * always is one. Throws RangeError for what is no number of a puzzle.
 * @example
 * makePuzzle('fill', 4182).slots // → 16
 */
function make(seed: number): FillPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance(NUMBER, seed);
  const spec = BY_LEVEL[level];
  let best: Draft | undefined;
  for (let tries = 0; tries < TRIES && !(best && suits(best, spec)); tries += 1) {
    const draft = ruled(drawBar(chance, spec, level), chance, spec);
    if (draft && (!best || nearer(draft, best, spec))) best = draft;
  }
  return finished(best ?? plainBar(chance, spec), seed, level);
}

/** A bar, a shelf and one order that fills it with more than one kind of cell; nothing where the shelf does not do. */
function drawBar(chance: Chance, { bars, shelf: [least, most] }: LevelSpec, level: Level): Draft | undefined {
  const [meter, grid, count] = chance.pick(bars);
  const barSlots = slotsOf(meter, grid);
  const slots = barSlots * count;
  const size = chance.between(least, most);
  const fitting = cellsFor(level, slots / 2).filter(({ id }) => id !== 'single-left');
  const shelf = onShelf(chance.shuffle(fitting).slice(0, size));
  return drawn({ meter, grid, slots, barSlots, shelf, rules: {}, uses: shelfLimits(shelf) }, chance);
}

function drawn(bar: Bar, chance: Chance): Draft | undefined {
  const all = fillingsOf(bar);
  if (all.count < LEAST_FILLINGS) return undefined;
  const solution = bankCells(...all.sample(chance.unit));
  const kinds = new Set(solution.map(({ id }) => id)).size;
  return kinds < Math.min(2, bar.shelf.length) ? undefined : { ...bar, solution, answers: all.count };
}

/** Adds rules that the order keeps and others do not, until there are enough of them. */
function ruled(draft: Draft | undefined, chance: Chance, spec: LevelSpec): Draft | undefined {
  if (!draft) return undefined;
  const wanted = chance.between(...spec.rules);
  let now = draft;
  for (const rule of chance.shuffle(RULES)) {
    if (rulesIn(now) >= wanted) break;
    const next = rule(now, chance);
    const answers = next && answersOf(next).count;
    if (answers !== undefined && answers < now.answers && answers >= BigInt(spec.answers[0]))
      now = { ...next!, answers };
  }
  return now;
}

const within = (n: number, [low, high]: Span): boolean => n >= low && n <= high;
const suits = (draft: Draft, { rules, answers }: LevelSpec): boolean =>
  within(rulesIn(draft), rules) && within(Number(draft.answers), answers);

/** More rules are nearer as long as they are too few; then what leaves fewer answers too many. */
function nearer(a: Draft, b: Draft, { rules, answers }: LevelSpec): boolean {
  const lack = (draft: Draft): number => Math.max(0, rules[0] - rulesIn(draft));
  const surplus = (draft: Draft): number => Math.max(0, Number(draft.answers) - answers[1]);
  return lack(a) !== lack(b) ? lack(a) < lack(b) : surplus(a) < surplus(b);
}

/** Where chance found nothing: cells that always fill. */
function plainBar(chance: Chance, spec: LevelSpec): Draft {
  const [meter, grid, count] = spec.bars[0];
  const barSlots = slotsOf(meter, grid);
  const shelf = bankCells('rll', 'two-singles', 'kick');
  return (
    drawn({ meter, grid, slots: barSlots * count, barSlots, shelf, rules: {}, uses: shelfLimits(shelf) }, chance) ??
    plainBar(chance, spec)
  );
}

function finished({ solution, answers, ...draft }: Draft, seed: number, level: Level): FillPuzzle {
  const facts = { answers, choices: fillingsOf(draft).count, rules: rulesIn(draft), depth: solution.length };
  return {
    kind: 'fill',
    seed,
    level,
    ...draft,
    before: [],
    after: [],
    gap: slotsIn(solution),
    solution: solution.map(({ id }) => id),
    difficulty: difficultyOf(facts, draft.grid),
  };
}

/** A bar with its shelf, one order that fills it, and the rules so far. */
interface Draft {
  meter: MeterText;
  grid: Grid;
  slots: number;
  barSlots: number;
  shelf: PuzzleCell[];
  solution: PuzzleCell[];
  rules: ArrangeRules;
  uses: Uses[];
  answers: bigint;
}

const withoutSides = (draft: Bar) => ({ ...draft, before: [], after: [] });

/** What a draft is before it has an order. */
type Bar = Omit<Draft, 'solution' | 'answers'>;

/** Right answers, and all ways to fill the bar. */
const answersOf = (draft: Bar) => answersTo(withoutSides(draft));
const fillingsOf = (draft: Bar) => fillings(withoutSides(draft));

/** Rules besides what the shelf allows. */
const rulesIn = ({ rules, uses }: Bar): number => Object.keys(rules).length + uses.filter(isUseRule).length;

/** Another rule for a draft, one its own order keeps; nothing where there is none of its kind. */
type RuleMaker = (draft: Draft, chance: Chance) => Draft | undefined;

const withRules = (draft: Draft, more: ArrangeRules): Draft => ({ ...draft, rules: { ...draft.rules, ...more } });
const playedOf = (draft: Draft) => performCells(draft.solution, draft);

/** Rules that the draft's own order keeps, each from something it does. */
const RULES: readonly RuleMaker[] = [
  (draft) => withRules(draft, { first: draft.solution[0].id }),
  (draft) => withRules(draft, { last: draft.solution.at(-1)!.id }),
  lastStroke,
  noLongRun,
  noLongRun,
  accentsOn,
  accentsOn,
  noAccent,
  useExactly,
  withinBars,
];

function lastStroke(draft: Draft): Draft {
  const stroke = playedOf(draft).strokes.findLast(({ kind }) => kind !== 'grace')!;
  return withRules(draft, { lastStrokeOn: slotOfStroke(draft, stroke) });
}

/** Twice or three times in a row by one hand is still a rule worth keeping. */
function noLongRun(draft: Draft): Draft | undefined {
  const longest = longestRun(playedOf(draft));
  return longest >= 1 && longest <= 3 ? withRules(draft, { maxRun: longest }) : undefined;
}

function accentSlots(draft: Draft): number[] {
  const { strokes } = playedOf(draft);
  return [...new Set(strokes.filter(({ accent }) => accent).map((stroke) => slotOfStroke(draft, stroke)))];
}

function accentsOn(draft: Draft, chance: Chance): Draft | undefined {
  const slots = accentSlots(draft);
  if (!slots.length) return undefined;
  const some = chance.shuffle(slots).slice(0, chance.between(1, 3));
  return withRules(draft, { accentOn: some.sort((a, b) => a - b) });
}

/** Beats and their halves are what one keeps free of accents. */
function noAccent(draft: Draft, chance: Chance): Draft | undefined {
  const taken = new Set(accentSlots(draft));
  const step = draft.grid % 2 ? draft.grid : draft.grid / 2;
  const free = Array.from({ length: draft.slots / step }, (_, i) => i * step).filter((slot) => !taken.has(slot));
  return taken.size && free.length ? withRules(draft, { noAccentOn: [chance.pick(free)] }) : undefined;
}

function useExactly(draft: Draft, chance: Chance): Draft {
  const cell = chance.pick(draft.solution).id;
  const times = draft.solution.filter(({ id }) => id === cell).length;
  const others = draft.uses.filter((use) => use.cell !== cell);
  return { ...draft, uses: [...others, { cell, min: times, max: times }] };
}

function withinBars(draft: Draft): Draft | undefined {
  if (draft.slots === draft.barSlots) return undefined;
  let slot = 0;
  const crosses = draft.solution.some(({ slots }) => {
    const from = slot;
    slot += slots;
    return Math.floor(from / draft.barSlots) !== Math.floor((slot - 1) / draft.barSlots);
  });
  return crosses ? undefined : withRules(draft, { withinBars: true });
}

/** The kind `fill`. */
export const record: PuzzleKindRecord<FillPuzzle, readonly string[], CellsWrong, CellsHint> = {
  number: NUMBER,
  make,
  ...BY_CELLS,
};
