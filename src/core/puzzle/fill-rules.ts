import type { ArrangeRules } from '../arrange/types.ts';
import type { Grid, MeterText } from '../time/units.ts';
import type { PuzzleCell } from './bank.ts';
import { answersTo, fillings, longestRun, performCells, slotOver } from './lay.ts';
import type { Chance } from './random.ts';
import { isRule } from './uses.ts';
import type { Uses } from './types.ts';

/** A bar with its shelf, one order that fills it, and the rules so far. */
export interface Draft {
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

const asked = (draft: Bar) => ({ ...draft, before: [], after: [] });

/** What a draft is before anything is laid. */
export type Bar = Omit<Draft, 'solution' | 'answers'>;

/** Right answers, and all ways to fill the bar. */
export const answersOf = (draft: Bar) => answersTo(asked(draft));
export const fillingsOf = (draft: Bar) => fillings(asked(draft));

/** Rules besides what the shelf allows. */
export const rulesIn = ({ rules, uses }: Bar): number => Object.keys(rules).length + uses.filter(isRule).length;

/** Another rule for a draft, one its own order keeps; nothing where there is none of its kind. */
export type RuleMaker = (draft: Draft, chance: Chance) => Draft | undefined;

const withRules = (draft: Draft, more: ArrangeRules): Draft => ({ ...draft, rules: { ...draft.rules, ...more } });
const playedOf = (draft: Draft) => performCells(draft.solution, draft);

/** Rules that the draft's own order keeps, each from something it does. */
export const RULES: readonly RuleMaker[] = [
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
  return withRules(draft, { lastStrokeOn: slotOver(draft, stroke) });
}

/** Twice or three times in a row by one hand is still a rule worth keeping. */
function noLongRun(draft: Draft): Draft | undefined {
  const longest = longestRun(playedOf(draft));
  return longest >= 1 && longest <= 3 ? withRules(draft, { maxRun: longest }) : undefined;
}

function accentSlots(draft: Draft): number[] {
  const { strokes } = playedOf(draft);
  return [...new Set(strokes.filter(({ accent }) => accent).map((stroke) => slotOver(draft, stroke)))];
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
