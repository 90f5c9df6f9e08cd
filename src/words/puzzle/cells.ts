/** What is said of the puzzles that are answered by cells, and while cells are placed. */
import { slotsIn, type CellsHint, type CellsPuzzle, type CellsWrong, type PuzzleCell } from '../../core/index.ts';
import { capital, inSentence } from '../grammar.ts';
import { figures, quoted, slotWords, spell } from '../numbers.ts';
import { BAR_WORD } from '../site.ts';
import {
  barsSay,
  noteOf,
  partOf,
  placeSays,
  runRule,
  slotsSay,
  theCell,
  times,
  tupletsSay,
  type NameOf,
  type PuzzleWords,
} from './say.ts';

const HANDS = { R: 'right', L: 'left' };

/** The whole of a puzzle: "A bar of 4/4 in triplets". */
export function wholeSays(puzzle: CellsPuzzle): string {
  const bars = puzzle.slots / puzzle.barSlots;
  return `${bars === 1 ? `A ${BAR_WORD}` : capital(barsSay(bars))} of ${puzzle.meter}${tupletsSay(puzzle)}`;
}

/** The rules of a card. */
export function rulesSay(puzzle: CellsPuzzle, nameOf: NameOf): string[] {
  const { rules, uses } = puzzle;
  const places = (slots: readonly number[]): string => inSentence(slots.map((slot) => placeSays(puzzle, slot)));
  return [
    rules.first && `The first cell is ${theCell(nameOf(rules.first))}.`,
    rules.last && `The last cell is ${theCell(nameOf(rules.last))}.`,
    rules.lastStrokeOn !== undefined &&
      `The last stroke is on ${placeSays(puzzle, rules.lastStrokeOn)}.${lastStrokeNote(puzzle)}`,
    rules.maxRun !== undefined && `${runRule(rules.maxRun)}${runNote(puzzle)}`,
    rules.accentOn && `There is an accent on ${places(rules.accentOn)}.`,
    rules.noAccentOn && `There is no accent on ${places(rules.noAccentOn)}.`,
    rules.withinBars && 'No cell crosses a bar line.',
    ...uses.map(({ cell, min }) => min > 0 && `Use ${theCell(nameOf(cell))} exactly ${times(min)}.`),
  ].filter((rule) => typeof rule === 'string');
}

/** What of a puzzle's cells a rule about strokes has to say whether it counts. */
function strokesIn({ shelf, before, after }: CellsPuzzle) {
  const slots = [...shelf, ...before, ...after].flatMap(({ text }) => text.split(' '));
  const some = (what: RegExp): boolean => slots.some((slot) => what.test(slot));
  return {
    graces: some(/[rl]/),
    feet: some(/[KH]/),
    rests: slots.includes('-'),
    diddles: some(/[RL]{2}/),
    shared: some(/[RLKH]{2}/),
  };
}

/** What counts in a row of one hand, as far as the cells let one ask. */
function runNote(puzzle: CellsPuzzle): string {
  const { graces, feet, rests, diddles } = strokesIn(puzzle);
  const between = [...(feet ? ['a kick'] : []), ...(rests ? ['a rest'] : [])];
  return noteOf([
    ...(graces ? ['a grace note does not count'] : []),
    ...(diddles ? ['a diddle counts as two strokes'] : []),
    ...(between.length ? [`${inSentence(between, 'or')} in between does not end the row`] : []),
  ]);
}

/** What counts as the last stroke, as far as the cells let one ask. */
function lastStrokeNote(puzzle: CellsPuzzle): string {
  const { feet, shared } = strokesIn(puzzle);
  const { one } = slotWords(puzzle.meter, puzzle.grid);
  return noteOf([
    ...(feet ? ['a kick is a stroke too'] : []),
    ...(shared ? [`two strokes that share ${/^[aeiou]/.test(one) ? 'an' : 'a'} ${one} are both on its count`] : []),
  ]);
}

/** How often a cell may be used; nothing where it is as often as one likes. */
export function limitSays({ uses }: CellsPuzzle, cell: string): string {
  const limit = uses.find((use) => use.cell === cell);
  if (limit?.max === undefined) return '';
  return limit.min === limit.max ? times(limit.max) : `at most ${times(limit.max)}`;
}

function wrongSays(puzzle: CellsPuzzle, wrong: CellsWrong, nameOf: NameOf): string {
  const place = (slot: number): string => placeSays(puzzle, slot);
  const cell = (id: string): string => theCell(nameOf(id));
  switch (wrong.wrong) {
    case 'not-on-shelf':
      return `${cell(wrong.cell)} is not on the shelf.`;
    case 'short':
      return `${slotsSay(puzzle, wrong.left)} short: ${place(wrong.slot)} is the first that is empty.`;
    case 'long':
      return `${slotsSay(puzzle, wrong.over)} too many.`;
    case 'too-often':
      return `${cell(wrong.cell)}: used ${times(wrong.used)}, and ${times(wrong.most)} is the most.`;
    case 'too-seldom':
      return `${cell(wrong.cell)}: used ${wrong.used ? times(wrong.used) : 'not at all'}, and the card asks for ${times(wrong.least)}.`;
    case 'first':
    case 'last':
      return `the ${wrong.wrong} cell is ${cell(wrong.found)}, not ${cell(wrong.wanted)}.`;
    case 'no-accent':
      return `there is no accent on ${place(wrong.slot)}.`;
    case 'accent':
      return `there is an accent on ${place(wrong.slot)}.`;
    case 'last-stroke':
      return `the last stroke is on ${place(wrong.found)}, not on ${place(wrong.wanted)}.`;
    case 'run':
      return `${Array.from({ length: wrong.length }, () => wrong.hand).join(' ')} from ${place(wrong.slot)}: the ${HANDS[wrong.hand]} hand plays ${spell(wrong.length, 'counted')} in a row.`;
    case 'over-bar-line':
      return `${cell(wrong.cell)} on ${place(wrong.slot)} crosses the bar line.`;
    case 'sound':
      return `it sounds different from ${place(wrong.slot)} on.`;
  }
}

function hintSays(puzzle: CellsPuzzle, hint: CellsHint, nameOf: NameOf): string {
  switch (hint.hint) {
    case 'count':
      return `count first: ${filledSays(hint)} starts on ${placeSays(puzzle, hint.next)}.`;
    case 'left':
      return `${slotsSay(puzzle, hint.left)} ${hint.left === 1 ? 'is' : 'are'} left. ${fittingSays(puzzle, hint.fitting, nameOf)}`;
    case 'cell':
      return `lay ${theCell(nameOf(hint.cell))} next.`;
    case 'back':
      return `no answer begins like this. Take ${hint.cells === 1 ? 'the last cell' : `the last ${spell(hint.cells, 'counted')} cells`} back.`;
    case 'done':
      return 'there is nothing left to do: it is right.';
  }
}

const filledSays = ({ filled, of }: { filled: number; of: number }): string =>
  filled
    ? `${partOf(filled, of)} ${filled === 1 ? 'is' : 'are'} filled, and the next cell`
    : `nothing is laid yet, ${spell(of, 'counted')} are to be filled, and your first cell`;

/** Which cells are short enough, where not all of them are. */
function fittingSays({ shelf }: CellsPuzzle, fitting: readonly string[], nameOf: NameOf): string {
  if (fitting.length === shelf.length) return 'Every cell on the shelf is short enough.';
  const names = fitting.map((cell) => quoted(nameOf(cell)));
  return `Short enough: ${inSentence(names, 'or')}.`;
}

/** Whether there were other right answers. */
export function rightSays({ difficulty: { answers } }: CellsPuzzle): string {
  if (answers === 1n) return 'Right, and there is no other answer.';
  const count = answers < 1000n ? spell(Number(answers), 'counted') : figures(answers);
  return `Right. It is one of ${count} answers.`;
}

/** What every kind that is answered by cells says in the same way. */
export const CELLS_WORDS = {
  answer: (_puzzle, answer, nameOf) => answer.map((cell) => quoted(nameOf(cell))).join(', '),
  wrong: (puzzle, wrong, nameOf) => capital(wrongSays(puzzle, wrong, nameOf)),
  hint: (puzzle, hint, nameOf) => capital(hintSays(puzzle, hint, nameOf)),
} satisfies Partial<PuzzleWords<CellsPuzzle, readonly string[], CellsWrong, CellsHint>>;

/** The slot at which the next cell would start. */
const nextSlot = ({ before }: CellsPuzzle, placed: readonly PuzzleCell[]): number => slotsIn(before) + slotsIn(placed);

/** Over the dashed bracket: how many slots are left, and from where. */
export function leftSays(puzzle: CellsPuzzle, placed: readonly PuzzleCell[]): string {
  const left = puzzle.gap - slotsIn(placed);
  return left > 0 ? `${left} left, from ${placeSays(puzzle, nextSlot(puzzle, placed))}` : '';
}

/** How far the bar is, for eye and ear. */
export function progressSays(puzzle: CellsPuzzle, placed: readonly PuzzleCell[]): string {
  const filled = slotsIn(placed);
  const left = puzzle.gap - filled;
  if (left < 0) return `${capital(slotsSay(puzzle, -left))} too many.`;
  if (left === 0)
    return puzzle.gap < puzzle.slots
      ? 'The hole is filled.'
      : puzzle.slots > puzzle.barSlots
        ? `The ${BAR_WORD}s are full.`
        : `The ${BAR_WORD} is full.`;
  const place = placeSays(puzzle, nextSlot(puzzle, placed));
  const soFar = filled ? `${capital(partOf(filled, puzzle.gap))}. The next` : 'Nothing laid yet. Your first';
  return `${soFar} cell starts on ${place}; ${slotsSay(puzzle, left)} to go.`;
}

/** A placed cell: what it is and where it starts. */
export function placedSays(puzzle: CellsPuzzle, placed: readonly PuzzleCell[], index: number, nameOf: NameOf): string {
  const slot = nextSlot(puzzle, placed.slice(0, index));
  const cell = placed[index];
  const name = cell ? nameOf(cell.id) : '';
  return slot < puzzle.slots ? `${name}, from ${placeSays(puzzle, slot)}` : name;
}

/** The whole ruler in words. */
export function rulerSays(puzzle: CellsPuzzle, placed: readonly PuzzleCell[], nameOf: NameOf): string {
  const fixed = (cells: readonly PuzzleCell[]): string => cells.map(({ id }) => nameOf(id)).join(', ');
  const own = placed.map((_, index) => placedSays(puzzle, placed, index, nameOf)).join('; ');
  const parts = [
    `the ${BAR_WORD} of ${puzzle.meter} as a ruler`,
    puzzle.before.length ? `given at its beginning: ${fixed(puzzle.before)}` : '',
    own || 'nothing laid yet',
    leftSays(puzzle, placed),
    puzzle.after.length ? `given at its end: ${fixed(puzzle.after)}` : '',
  ];
  return `${parts.filter(Boolean).map(capital).join('. ')}.`;
}
