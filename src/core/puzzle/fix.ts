import { whole } from '../check.ts';
import { slotsOf } from '../time/meter.ts';
import type { Lead } from '../phrase/types.ts';
import { parseSticking } from '../sticking/parse.ts';
import { slotsOnly } from '../sticking/expand.ts';
import { printSlot, printSticking } from '../sticking/print.ts';
import { mirror } from '../sticking/mirror.ts';
import { leadCells } from '../phrase/lead.ts';
import type { Grid, MeterText, SlotIndex } from '../time/units.ts';
import { levelOf, puzzleChance, type Level } from './address.ts';
import { bankCells, type PuzzleCell } from './bank.ts';
import { difficultyOf } from './difficulty.ts';
import { longestRun, performTexts, stickingOf } from './lay.ts';
import type { Chance } from './random.ts';
import type { FixPuzzle, FixRule, Grade } from './types.ts';

type Bar = readonly [MeterText, Grid];
type Rule = FixRule['rule'];

const PLANS: Record<Level, { bars: readonly Bar[]; rules: readonly Rule[] }> = {
  1: { bars: [['2/4', 4], ['4/4', 2]], rules: ['hand-to-hand', 'no-more-than'] },
  2: { bars: [['3/4', 4], ['4/4', 3]], rules: ['hand-to-hand', 'no-more-than', 'accents'] },
  3: { bars: [['4/4', 4]], rules: ['no-more-than', 'cell', 'accents'] },
  4: { bars: [['4/4', 4], ['6/8', 6]], rules: ['cell', 'accents'] },
  5: { bars: [['5/4', 4], ['4/4', 6]], rules: ['cell', 'accents', 'no-more-than'] },
}; // prettier-ignore

/** Cells of one stroke a slot that are known by their sticking. */
const CELLS = ['paradiddle', 'five', 'double-paradiddle', 'paradiddle-diddle', 'rll', 'flam-accent', 'flam-paradiddle'];
const TRIES = 200;

/**
 * A bar in which one stroke breaks a rule. Which stroke it is follows from mending each in turn, so more than one may be
 * right.
 * @example
 * makeFix(4182).strokes.length // → 16
 */
export function makeFix(seed: number): FixPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance('fix', seed);
  const { bars, rules } = PLANS[level];
  const [meter, grid] = chance.pick(bars);
  const slots = slotsOf(meter, grid);
  const { whole, asked } = sound(chance, chance.pick(rules), slots, grid);
  const strokes = broken(chance, whole, asked);
  const answers = strokes.flatMap((_, slot) => (holds(asked, mended(strokes, slot, asked)) ? [slot] : []));
  const facts = { answers: BigInt(answers.length), choices: BigInt(slots), rules: 1, depth: slots / 4 };
  return {
    kind: 'fix',
    seed,
    level,
    meter,
    grid,
    slots,
    barSlots: slots,
    strokes,
    asked,
    answers,
    difficulty: difficultyOf(facts, grid),
  };
}

/** A bar that keeps the rule, a text a slot. */
function sound(chance: Chance, rule: Rule, slots: number, grid: Grid): { whole: string[]; asked: FixRule } {
  if (rule === 'no-more-than') return { whole: withoutLongRuns(chance, slots), asked: { rule, most: 2 } };
  if (rule === 'cell') return ofCells(chance, slots);
  if (rule === 'accents') {
    const every = chance.pick([3, 4, 5].filter((n) => n !== grid));
    return { whole: singles(slots).map((stroke, i) => (i % every ? stroke : `>${stroke}`)), asked: { rule, every } };
  }
  return { whole: singles(slots, chance.below(2)), asked: { rule: 'hand-to-hand' } };
}

const singles = (slots: number, first = 0): string[] => Array.from({ length: slots }, (_, i) => 'RL'[(i + first) % 2]);

/** Singles and doubles as chance has them, never three of a hand. */
function withoutLongRuns(chance: Chance, slots: number): string[] {
  const line: string[] = [];
  while (line.length < slots) {
    const [one, two] = line.slice(-2);
    line.push(one !== undefined && one === two ? (one === 'R' ? 'L' : 'R') : chance.pick(['R', 'L']));
  }
  return line;
}

function ofCells(chance: Chance, slots: number): { whole: string[]; asked: FixRule } {
  const cell = chance.pick(bankCells(...CELLS).filter(({ slots: length }) => slots % length === 0));
  const lead: Lead = chance.pick(['written', 'alternating']);
  return { whole: textsOf(cell, lead, slots), asked: { rule: 'cell', cell, lead } };
}

/** A cell over and over, a text a slot. */
function textsOf(cell: PuzzleCell, lead: Lead, slots: number): string[] {
  const cells = Array.from({ length: slots / cell.slots }, () => ({ id: cell.id, sticking: stickingOf([cell]) }));
  return leadCells(cells, lead).flatMap(({ sticking }) =>
    slotsOnly(sticking.hands).map((item) => (item.kind === 'slot' ? printSlot(item) : '_')),
  );
}

/** One stroke is changed so that the rule breaks; chance looks for it until it does. */
function broken(chance: Chance, whole: readonly string[], asked: FixRule): string[] {
  for (let tries = 0; tries < TRIES; tries += 1) {
    const strokes = mended(whole, chance.between(1, whole.length - 2), asked);
    if (!holds(asked, strokes)) return strokes;
  }
  throw new RangeError(`bar is "${whole.join(' ')}"; no stroke of it breaks the rule`);
}

/** The bar with one stroke played by the other hand or, where accents are asked for, with the accent put or taken away. */
export function mended(strokes: readonly string[], slot: SlotIndex, { rule }: FixRule): string[] {
  const change = rule === 'accents' ? turnAccent : turnHand;
  return strokes.map((stroke, i) => (i === slot ? change(stroke) : stroke));
}

const turnAccent = (stroke: string): string => (stroke.startsWith('>') ? stroke.slice(1) : `>${stroke}`);

function turnHand(stroke: string): string {
  const read = parseSticking(stroke);
  return read.ok ? printSticking(mirror(read.sticking)) : stroke;
}

/** Whether a bar keeps the rule, looked at once through. */
export function holds(asked: FixRule, strokes: readonly string[]): boolean {
  if (asked.rule === 'accents') return strokes.every((stroke, i) => stroke.startsWith('>') === (i % asked.every === 0));
  if (asked.rule === 'cell') return strokes.join(' ') === textsOf(asked.cell, asked.lead, strokes.length).join(' ');
  return longestRun(performTexts(strokes)) <= (asked.rule === 'hand-to-hand' ? 1 : asked.most);
}

/** The answer is the slot of a stroke; it is right if the rule holds once that stroke is mended. */
export function gradeFix(puzzle: FixPuzzle, slot: SlotIndex): Grade {
  whole('slot', slot, 0, puzzle.strokes.length - 1);
  const after = mended(puzzle.strokes, slot, puzzle.asked);
  return holds(puzzle.asked, after)
    ? { right: true, wrongs: [] }
    : { right: false, wrongs: [{ wrong: 'not-it', slot }] };
}
