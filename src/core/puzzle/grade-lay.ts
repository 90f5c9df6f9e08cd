import { longestRuns } from '../hands/runs.ts';
import { printSlot } from '../sticking/print.ts';
import { slotsOnly } from '../sticking/expand.ts';
import { mirror } from '../sticking/mirror.ts';
import type { Chord, HoldItem, SlotItem, Sticking } from '../sticking/types.ts';
import type { Timeline } from '../timeline/types.ts';
import type { PuzzleCell } from './bank.ts';
import { performCells, slotOver, slotsIn, stickingOf } from './lay.ts';
import type { Grade, LayPuzzle, Wrong } from './types.ts';

/**
 * Grades cells that were laid by what the puzzle asks of the bar, never by comparing them with an answer. Everything that
 * is wrong is listed: what does not fit or add up first, then the rules that are broken.
 */
export function gradeLaid(puzzle: LayPuzzle, ids: readonly string[]): Grade {
  const strange = ids.find((id) => !puzzle.shelf.some((cell) => cell.id === id));
  if (strange !== undefined) return graded([{ wrong: 'not-on-shelf', cell: strange }]);
  const laid = ids.map((id) => puzzle.shelf.find((cell) => cell.id === id)!);
  const size = sizeOf(puzzle, laid);
  const full = size.length === 0;
  const whole = [...puzzle.before, ...laid, ...(full ? puzzle.after : [])];
  const line: Line = {
    puzzle,
    laid,
    whole,
    full,
    played: slotsIn(whole) > 0 ? performCells(whole, puzzle) : undefined,
  };
  return graded([...size, ...usesOf(line), ...endsOf(line), ...barLinesOf(line), ...strokesOf(line), ...soundOf(line)]);
}

interface Line {
  puzzle: LayPuzzle;
  laid: PuzzleCell[];
  /** With what is fixed; without what comes after, as long as there is a hole before it. */
  whole: PuzzleCell[];
  full: boolean;
  played: Timeline | undefined;
}

const graded = (wrongs: Wrong[]): Grade => ({ right: wrongs.length === 0, wrongs });

function sizeOf({ gap, before }: LayPuzzle, laid: PuzzleCell[]): Wrong[] {
  const length = slotsIn(laid);
  if (length < gap) return [{ wrong: 'short', left: gap - length, slot: slotsIn(before) + length }];
  return length > gap ? [{ wrong: 'long', over: length - gap }] : [];
}

function usesOf({ puzzle, laid, full }: Line): Wrong[] {
  return puzzle.uses.flatMap(({ cell, min, max = Infinity }): Wrong[] => {
    const used = laid.filter(({ id }) => id === cell).length;
    if (used > max) return [{ wrong: 'too-often', cell, used, most: max }];
    return full && used < min ? [{ wrong: 'too-seldom', cell, used, least: min }] : [];
  });
}

function endsOf({ puzzle: { rules, before, after }, laid, full }: Line): Wrong[] {
  const [first, last] = [laid[0]?.id, laid.at(-1)?.id];
  const begins = rules.first !== undefined && !before.length && first !== undefined && first !== rules.first;
  const ends = rules.last !== undefined && !after.length && full && last !== undefined && last !== rules.last;
  return [
    ...(begins ? [{ wrong: 'first', wanted: rules.first!, found: first } as const] : []),
    ...(ends ? [{ wrong: 'last', wanted: rules.last!, found: last } as const] : []),
  ];
}

function barLinesOf({ puzzle: { rules, barSlots, before }, laid }: Line): Wrong[] {
  if (!rules.withinBars) return [];
  let slot = slotsIn(before);
  for (const cell of laid) {
    if (Math.floor(slot / barSlots) !== Math.floor((slot + cell.slots - 1) / barSlots))
      return [{ wrong: 'over-bar-line', cell: cell.id, slot }];
    slot += cell.slots;
  }
  return [];
}

/** The rules that look at strokes. What is not laid yet breaks none of them. */
function strokesOf(line: Line): Wrong[] {
  return line.played ? [...accentsOf(line), ...runsOf(line, line.played), ...lastStrokeOf(line)] : [];
}

function accentsOf(line: Line): Wrong[] {
  const { rules } = line.puzzle;
  const end = slotsIn(line.whole);
  const accented = new Set(
    line.played!.strokes.filter(({ accent }) => accent).map((stroke) => slotOver(line.puzzle, stroke)),
  );
  const missing = (rules.accentOn ?? []).filter((slot) => slot < end && !accented.has(slot));
  const forbidden = (rules.noAccentOn ?? []).filter((slot) => accented.has(slot));
  return [
    ...missing.map((slot): Wrong => ({ wrong: 'no-accent', slot })),
    ...forbidden.map((slot): Wrong => ({ wrong: 'accent', slot })),
  ];
}

function runsOf(line: Line, played: Timeline): Wrong[] {
  const { maxRun, graces, loop } = line.puzzle.rules;
  if (maxRun === undefined) return [];
  return (['R', 'L'] as const).flatMap((hand): Wrong[] => {
    const { longestRun, longestRunWithGraces } = longestRuns(played, hand, loop);
    const run = graces ? longestRunWithGraces : longestRun;
    if (!run || run.length <= maxRun) return [];
    const from = played.strokes.find(({ id }) => id === run.from)!;
    return [{ wrong: 'run', hand, length: run.length, most: maxRun, slot: slotOver(line.puzzle, from) }];
  });
}

function lastStrokeOf(line: Line): Wrong[] {
  const wanted = line.puzzle.rules.lastStrokeOn;
  if (wanted === undefined || !line.full) return [];
  const last = line.played!.strokes.findLast(({ kind }) => kind !== 'grace')!;
  const found = slotOver(line.puzzle, last);
  return found === wanted ? [] : [{ wrong: 'last-stroke', wanted, found }];
}

/** By ear, what sounds the same is right: which hand plays is not heard for certain. */
function soundOf({ puzzle, laid }: Line): Wrong[] {
  if (!puzzle.heard) return [];
  const heard = soundsOf(puzzle.heard.cells);
  const slot = soundsOf(laid).findIndex((sound, at) => at < heard.length && sound !== heard[at]);
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
