import { whole } from '../../check.ts';
import { leadCells } from '../../phrase/lead.ts';
import type { Lead } from '../../phrase/types.ts';
import { slotsOnly } from '../../sticking/expand.ts';
import { mirror } from '../../sticking/mirror.ts';
import { parseSticking } from '../../sticking/parse.ts';
import { printSlot, printSticking } from '../../sticking/print.ts';
import { slotsOf } from '../../time/meter.ts';
import type { Grid, MeterText, SlotIndex } from '../../time/units.ts';
import type { Timeline } from '../../timeline/types.ts';
import { bankCells, type PuzzleCell } from '../bank.ts';
import { longestRun, performCells, stickingOf } from '../cells.ts';
import { RIGHT, wrongBy, type Grade, type PuzzleBase, type PuzzleKindRecord } from '../kind.ts';
import { difficultyOf, levelOf, type Level } from '../level.ts';
import { puzzleChance, type Chance } from '../random.ts';

/** What holds for a bar but for one stroke. */
export type FixRule =
  | { rule: 'hand-to-hand' }
  | { rule: 'no-more-than'; most: number }
  | { rule: 'cell'; cell: PuzzleCell; lead: Lead }
  | { rule: 'accents'; every: number };

/** Fix the sticking: one stroke breaks the rule; the answer is its slot. Each slot has one stroke. */
export interface FixPuzzle extends PuzzleBase {
  kind: 'fix';
  /** A text a slot. */
  strokes: string[];
  asked: FixRule;
  /** Every slot whose change makes the rule hold. */
  answers: SlotIndex[];
}

/** A stroke whose change leaves the rule broken. */
export interface FixWrong {
  wrong: 'not-it';
  slot: SlotIndex;
}

const NUMBER = 3;

type Bar = readonly [MeterText, Grid];
type Rule = FixRule['rule'];

const BY_LEVEL: Record<Level, { bars: readonly Bar[]; rules: readonly Rule[] }> = {
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
 * A bar in which one stroke breaks a rule. Which stroke it is follows from changing each in turn, so more than one may be
 * right.
 * @example
 * makePuzzle('fix', 4182).strokes.length // → 16
 */
function make(seed: number): FixPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance(NUMBER, seed);
  const { bars, rules } = BY_LEVEL[level];
  const [meter, grid] = chance.pick(bars);
  const slots = slotsOf(meter, grid);
  const { line, asked } = soundBar(chance, chance.pick(rules), slots, grid);
  const strokes = broken(chance, line, asked);
  const answers = strokes.flatMap((_, slot) => (keepsRule(asked, changed(strokes, slot, asked)) ? [slot] : []));
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
function soundBar(chance: Chance, rule: Rule, slots: number, grid: Grid): { line: string[]; asked: FixRule } {
  if (rule === 'no-more-than') return { line: withoutLongRuns(chance, slots), asked: { rule, most: 2 } };
  if (rule === 'cell') return ofCells(chance, slots);
  if (rule === 'accents') {
    const every = chance.pick([3, 4, 5].filter((n) => n !== grid));
    return { line: singles(slots).map((stroke, i) => (i % every ? stroke : `>${stroke}`)), asked: { rule, every } };
  }
  return { line: singles(slots, chance.below(2)), asked: { rule: 'hand-to-hand' } };
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

function ofCells(chance: Chance, slots: number): { line: string[]; asked: FixRule } {
  const cell = chance.pick(bankCells(...CELLS).filter(({ slots: length }) => slots % length === 0));
  const lead: Lead = chance.pick(['written', 'alternating']);
  return { line: textsOf(cell, lead, slots), asked: { rule: 'cell', cell, lead } };
}

/** A cell over and over, a text a slot. */
function textsOf(cell: PuzzleCell, lead: Lead, slots: number): string[] {
  const cells = Array.from({ length: slots / cell.slots }, () => ({ id: cell.id, sticking: stickingOf([cell]) }));
  return leadCells(cells, lead).flatMap(({ sticking }) =>
    slotsOnly(sticking.hands).map((item) => (item.kind === 'slot' ? printSlot(item) : '_')),
  );
}

/** One stroke is changed so that the rule breaks; chance looks for it until it does. */
function broken(chance: Chance, line: readonly string[], asked: FixRule): string[] {
  for (let tries = 0; tries < TRIES; tries += 1) {
    const strokes = changed(line, chance.between(1, line.length - 2), asked);
    if (!keepsRule(asked, strokes)) return strokes;
  }
  throw new RangeError(`bar is "${line.join(' ')}"; no stroke of it breaks the rule`);
}

/** The bar with one stroke played by the other hand or, where accents are asked for, with an accent more or less. */
export function changed(strokes: readonly string[], slot: SlotIndex, { rule }: FixRule): string[] {
  const change = rule === 'accents' ? withAccentTurned : withOtherHand;
  return strokes.map((stroke, i) => (i === slot ? change(stroke) : stroke));
}

const withAccentTurned = (stroke: string): string => (stroke.startsWith('>') ? stroke.slice(1) : `>${stroke}`);

function withOtherHand(stroke: string): string {
  const read = parseSticking(stroke);
  return read.ok ? printSticking(mirror(read.sticking)) : stroke;
}

/** Texts of one slot each as strokes with times. */
const performStrokes = (texts: readonly string[]): Timeline =>
  performCells(
    texts.map((text, i) => ({ id: String(i), text, slots: 1 })),
    { meter: '4/4', grid: 4 },
  );

/** Whether a bar keeps the rule, looked at once through. */
export function keepsRule(asked: FixRule, strokes: readonly string[]): boolean {
  if (asked.rule === 'accents') return strokes.every((stroke, i) => stroke.startsWith('>') === (i % asked.every === 0));
  if (asked.rule === 'cell') return strokes.join(' ') === textsOf(asked.cell, asked.lead, strokes.length).join(' ');
  return longestRun(performStrokes(strokes)) <= (asked.rule === 'hand-to-hand' ? 1 : asked.most);
}

/** The answer is the slot of a stroke; it is right if the rule holds once that stroke is changed. */
function grade(puzzle: FixPuzzle, slot: SlotIndex): Grade<FixWrong> {
  whole('slot', slot, 0, puzzle.strokes.length - 1);
  const after = changed(puzzle.strokes, slot, puzzle.asked);
  return keepsRule(puzzle.asked, after) ? RIGHT : wrongBy({ wrong: 'not-it', slot });
}

/** The kind `fix`. */
export const record: PuzzleKindRecord<FixPuzzle, SlotIndex, FixWrong> = {
  number: NUMBER,
  unanswered: undefined,
  make,
  grade,
  solution: ({ answers }) => answers[0],
};
