import { must } from '../check.ts';
import { longestRuns } from '../hands/runs.ts';
import { printSlot } from '../sticking/print.ts';
import { slotsOnly } from '../sticking/expand.ts';
import { mirror } from '../sticking/mirror.ts';
import type { Chord, Hand, HoldItem, SlotItem, Sticking } from '../sticking/types.ts';
import type { SlotIndex } from '../time/units.ts';
import type { Timeline } from '../timeline/types.ts';
import type { PuzzleCell } from './bank.ts';
import { performCells, slotOfStroke, slotsIn, stickingOf, type CellsPuzzle } from './cells.ts';
import type { Grade } from './kind.ts';

/** What can be wrong with placed cells, and where. Slots are counted from the start of the first bar. */
export type CellsWrong =
  | { wrong: 'not-on-shelf'; cell: string }
  | { wrong: 'short'; left: number; slot: SlotIndex }
  | { wrong: 'long'; over: number }
  | { wrong: 'too-often'; cell: string; used: number; most: number }
  | { wrong: 'too-seldom'; cell: string; used: number; least: number }
  | { wrong: 'first'; wanted: string; found: string }
  | { wrong: 'last'; wanted: string; found: string }
  | { wrong: 'no-accent'; slot: SlotIndex }
  | { wrong: 'accent'; slot: SlotIndex }
  | { wrong: 'last-stroke'; wanted: SlotIndex; found: SlotIndex }
  | { wrong: 'run'; hand: Hand; length: number; most: number; slot: SlotIndex }
  | { wrong: 'over-bar-line'; cell: string; slot: SlotIndex }
  | { wrong: 'sound'; slot: SlotIndex };

/**
 * Grades placed cells by what the puzzle asks of the bar, never by comparing them with an answer. Everything that
 * is wrong is listed: what does not fit or add up first, then the rules that are broken. Throws RangeError for what is no list.
 */
export function gradeCells(puzzle: CellsPuzzle, ids: readonly string[]): Grade<CellsWrong> {
  must(Array.isArray(ids), 'answer', ids, `the ids of cells, as a puzzle of kind "${puzzle.kind}" takes them`);
  const strange = ids.find((id) => !puzzle.shelf.some((cell) => cell.id === id));
  if (strange !== undefined) return graded([{ wrong: 'not-on-shelf', cell: strange }]);
  const placed = ids.map((id) => puzzle.shelf.find((cell) => cell.id === id)!);
  const size = sizeOf(puzzle, placed);
  const full = size.length === 0;
  const whole = [...puzzle.before, ...placed, ...(full ? puzzle.after : [])];
  const line: Answered = {
    puzzle,
    placed,
    whole,
    full,
    played: slotsIn(whole) > 0 ? performCells(whole, puzzle) : undefined,
  };
  return graded([...size, ...usesOf(line), ...endsOf(line), ...barLinesOf(line), ...strokesOf(line), ...soundOf(line)]);
}

interface Answered {
  puzzle: CellsPuzzle;
  placed: PuzzleCell[];
  /** With what is fixed; without what comes after, as long as there is a hole before it. */
  whole: PuzzleCell[];
  full: boolean;
  played: Timeline | undefined;
}

const graded = (wrongs: CellsWrong[]): Grade<CellsWrong> => ({ right: wrongs.length === 0, wrongs });

function sizeOf({ gap, before }: CellsPuzzle, placed: PuzzleCell[]): CellsWrong[] {
  const length = slotsIn(placed);
  if (length < gap) return [{ wrong: 'short', left: gap - length, slot: slotsIn(before) + length }];
  return length > gap ? [{ wrong: 'long', over: length - gap }] : [];
}

function usesOf({ puzzle, placed, full }: Answered): CellsWrong[] {
  return puzzle.uses.flatMap(({ cell, min, max = Infinity }): CellsWrong[] => {
    const used = placed.filter(({ id }) => id === cell).length;
    if (used > max) return [{ wrong: 'too-often', cell, used, most: max }];
    return full && used < min ? [{ wrong: 'too-seldom', cell, used, least: min }] : [];
  });
}

function endsOf({ puzzle: { rules, before, after }, placed, full }: Answered): CellsWrong[] {
  const [first, last] = [placed[0]?.id, placed.at(-1)?.id];
  const begins = rules.first !== undefined && !before.length && first !== undefined && first !== rules.first;
  const ends = rules.last !== undefined && !after.length && full && last !== undefined && last !== rules.last;
  return [
    ...(begins ? [{ wrong: 'first', wanted: rules.first!, found: first } as const] : []),
    ...(ends ? [{ wrong: 'last', wanted: rules.last!, found: last } as const] : []),
  ];
}

function barLinesOf({ puzzle: { rules, barSlots, before }, placed }: Answered): CellsWrong[] {
  if (!rules.withinBars) return [];
  let slot = slotsIn(before);
  for (const cell of placed) {
    if (Math.floor(slot / barSlots) !== Math.floor((slot + cell.slots - 1) / barSlots))
      return [{ wrong: 'over-bar-line', cell: cell.id, slot }];
    slot += cell.slots;
  }
  return [];
}

/** The rules that look at strokes. What is not placed yet breaks none of them. */
function strokesOf(line: Answered): CellsWrong[] {
  return line.played ? [...accentsOf(line), ...runsOf(line, line.played), ...lastStrokeOf(line)] : [];
}

function accentsOf(line: Answered): CellsWrong[] {
  const { rules } = line.puzzle;
  const end = slotsIn(line.whole);
  const accented = new Set(
    line.played!.strokes.filter(({ accent }) => accent).map((stroke) => slotOfStroke(line.puzzle, stroke)),
  );
  const missing = (rules.accentOn ?? []).filter((slot) => slot < end && !accented.has(slot));
  const forbidden = (rules.noAccentOn ?? []).filter((slot) => accented.has(slot));
  return [
    ...missing.map((slot): CellsWrong => ({ wrong: 'no-accent', slot })),
    ...forbidden.map((slot): CellsWrong => ({ wrong: 'accent', slot })),
  ];
}

function runsOf(line: Answered, played: Timeline): CellsWrong[] {
  const { maxRun, graces, loop } = line.puzzle.rules;
  if (maxRun === undefined) return [];
  return (['R', 'L'] as const).flatMap((hand): CellsWrong[] => {
    const { longestRun, longestRunWithGraces } = longestRuns(played, hand, loop);
    const run = graces ? longestRunWithGraces : longestRun;
    if (!run || run.length <= maxRun) return [];
    const from = played.strokes.find(({ id }) => id === run.from)!;
    return [{ wrong: 'run', hand, length: run.length, most: maxRun, slot: slotOfStroke(line.puzzle, from) }];
  });
}

function lastStrokeOf(line: Answered): CellsWrong[] {
  const wanted = line.puzzle.rules.lastStrokeOn;
  if (wanted === undefined || !line.full) return [];
  const last = line.played!.strokes.findLast(({ kind }) => kind !== 'grace')!;
  const found = slotOfStroke(line.puzzle, last);
  return found === wanted ? [] : [{ wrong: 'last-stroke', wanted, found }];
}

/** By ear, what sounds the same is right: which hand plays is not heard for certain. */
function soundOf({ puzzle, placed }: Answered): CellsWrong[] {
  if (!puzzle.heard) return [];
  const heard = soundsOf(puzzle.heard.cells);
  const slot = soundsOf(placed).findIndex((sound, at) => at < heard.length && sound !== heard[at]);
  return slot < 0 ? [] : [{ wrong: 'sound', slot }];
}

/** How each slot sounds, as a text: its strokes as if all were the right hand's. */
export function soundsOf(cells: readonly PuzzleCell[]): string[] {
  return cells.length ? slotsOnly(stickingOf(cells).hands).map(soundOfSlot) : [];
}

function soundOfSlot(item: SlotItem | HoldItem): string {
  return item.kind === 'hold' ? '_' : printSlot({ kind: 'slot', parts: item.parts.map(byTheRight) });
}

const byTheRight = (chord: Chord): Chord =>
  chord.some(({ limb }) => limb === 'L') ? slotOfOne(mirror({ hands: [{ kind: 'slot', parts: [chord] }] })) : chord;

const slotOfOne = ({ hands: [item] }: Sticking): Chord => (item.kind === 'slot' ? item.parts[0] : []);
