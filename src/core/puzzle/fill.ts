import { slotsOf } from '../time/meter.ts';
import type { Grid, MeterText } from '../time/units.ts';
import { levelOf, puzzleChance, type Level } from './address.ts';
import { bankCells, cellsFor, onShelf } from './bank.ts';
import { difficultyOf } from './difficulty.ts';
import { answersOf, fillingsOf, rulesIn, RULES, type Bar, type Draft } from './fill-rules.ts';
import { slotsIn } from './lay.ts';
import type { Chance } from './random.ts';
import type { LayPuzzle } from './types.ts';
import { shelfLimits } from './uses.ts';

/** Whole numbers from the first to the second. */
type Span = readonly [low: number, high: number];

interface Plan {
  bars: readonly (readonly [MeterText, Grid, bars: number])[];
  shelf: Span;
  /** How many rules there are to be, and how many answers they are to leave. */
  rules: Span;
  answers: Span;
}

const PLANS: Record<Level, Plan> = {
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
 * makeFill(4182).slots // → 16
 */
export function makeFill(seed: number): LayPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance('fill', seed);
  const plan = PLANS[level];
  let best: Draft | undefined;
  for (let tries = 0; tries < TRIES && !(best && suits(best, plan)); tries += 1) {
    const draft = ruled(drawBar(chance, plan, level), chance, plan);
    if (draft && (!best || nearer(draft, best, plan))) best = draft;
  }
  return finished(best ?? plainBar(chance, plan), seed, level);
}

/** A bar, a shelf and one order that fills it with more than one kind of cell; nothing where the shelf does not do. */
function drawBar(chance: Chance, { bars, shelf: [least, most] }: Plan, level: Level): Draft | undefined {
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
function ruled(draft: Draft | undefined, chance: Chance, plan: Plan): Draft | undefined {
  if (!draft) return undefined;
  const wanted = chance.between(...plan.rules);
  let now = draft;
  for (const rule of chance.shuffle(RULES)) {
    if (rulesIn(now) >= wanted) break;
    const next = rule(now, chance);
    const answers = next && answersOf(next).count;
    if (answers !== undefined && answers < now.answers && answers >= BigInt(plan.answers[0]))
      now = { ...next!, answers };
  }
  return now;
}

const within = (n: number, [low, high]: Span): boolean => n >= low && n <= high;
const suits = (draft: Draft, { rules, answers }: Plan): boolean =>
  within(rulesIn(draft), rules) && within(Number(draft.answers), answers);

/** More rules are nearer as long as they are too few; then what leaves fewer answers too many. */
function nearer(a: Draft, b: Draft, { rules, answers }: Plan): boolean {
  const lack = (draft: Draft): number => Math.max(0, rules[0] - rulesIn(draft));
  const surplus = (draft: Draft): number => Math.max(0, Number(draft.answers) - answers[1]);
  return lack(a) !== lack(b) ? lack(a) < lack(b) : surplus(a) < surplus(b);
}

/** Where chance found nothing: cells that always fill. */
function plainBar(chance: Chance, plan: Plan): Draft {
  const [meter, grid, count] = plan.bars[0];
  const barSlots = slotsOf(meter, grid);
  const shelf = bankCells('rll', 'two-singles', 'kick');
  return (
    drawn({ meter, grid, slots: barSlots * count, barSlots, shelf, rules: {}, uses: shelfLimits(shelf) }, chance) ??
    plainBar(chance, plan)
  );
}

function finished({ solution, answers, ...draft }: Draft, seed: number, level: Level): LayPuzzle {
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
