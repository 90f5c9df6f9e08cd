import { mostOf, tooLarge } from './limits.ts';
import { pairsOf, remember, seamHolds, START, type Memory } from './memory.ts';
import { mergeAlike, type Table } from './merge.ts';
import type { CellProfile } from './profile.ts';
import type { ArrangeRequest } from './types.ts';

/** The rules over joins as a machine. Its states, memories, are numbers: 0 is the beginning; -1 is a forbidden join. */
export interface Joins {
  readonly size: number;
  next(memory: number, cell: number): number;
  /** Whether the phrase may end here. */
  closes(memory: number): boolean;
}

/** More different memories than this are refused, and more than that are left unmerged: merging would take too long. */
export const MAX_MEMORIES = 250_000;
const MAX_MERGED = 4_000;

/** The rules that look over joins need no memory where there are none. */
export function hasJoins({ rules = {} }: ArrangeRequest): boolean {
  return rules.maxRun !== undefined || (rules.noJoins?.length ?? 0) > 0;
}

/** A machine with as few memories as the rules can do with. */
export function joinsOf(request: ArrangeRequest, profiles: readonly (CellProfile | undefined)[]): Joins {
  if (!hasJoins(request)) return { size: 1, next: () => 0, closes: () => true };
  const table = tableOf(request, profiles);
  return machineOf(table.closes.length > MAX_MERGED ? table : mergeAlike(table));
}

/** A table as a machine. */
export const machineOf = ({ cells, next, closes }: Table): Joins => ({
  size: closes.length,
  next: (memory, cell) => next[memory * cells + cell],
  closes: (memory) => closes[memory],
});

function tableOf(request: ArrangeRequest, profiles: readonly (CellProfile | undefined)[]): Table {
  const { cells, rules = {} } = request;
  const pairs = pairsOf(request);
  const found = discover(
    cells.map((cell) => cell.slots),
    request.slots,
    START,
    keyOf(request),
    (memory, cell) => remember(memory, cell, profiles[cell], rules, pairs),
    mostOf(request, MAX_MEMORIES),
  );
  const closes = found.memories.map((memory) => !rules.loop || seamHolds(memory, rules, pairs));
  return { cells: cells.length, next: found.next, closes };
}

/**
 * All memories that can be met within so many slots. A memory is looked at where it is met first; what could only be met
 * after the last slot is left out, so its row says "none".
 */
export function discover<M>(
  lengths: readonly number[],
  slots: number,
  start: M,
  keyOf: (memory: M) => number | string,
  step: (memory: M, cell: number) => M | undefined,
  most = MAX_MEMORIES,
): { memories: M[]; next: number[] } {
  const memories = [start];
  const numbers = new Map([[keyOf(start), 0]]);
  const next: number[] = lengths.map(() => -1);
  const met: (number[] | undefined)[] = [[0]];
  const number = (memory: M): number => {
    const key = keyOf(memory);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, memories.length);
    lengths.forEach(() => next.push(-1));
    if (memories.length === most) throw tooLarge(most);
    return memories.push(memory) - 1;
  };
  const done = new Set<number>();
  for (let slot = 0; slot < slots; slot += 1) {
    for (const memory of met[slot] ?? []) {
      if (done.has(memory)) continue;
      done.add(memory);
      lengths.forEach((length, cell) => {
        const after = slot + length > slots ? undefined : step(memories[memory], cell);
        if (!after) return;
        const to = number(after);
        next[memory * lengths.length + cell] = to;
        if (!done.has(to)) (met[slot + length] ??= []).push(to);
      });
    }
    met[slot] = undefined;
  }
  return { memories, next };
}

/** One number for all that is remembered; where that would not be exact, a text. */
function keyOf({ cells, rules = {} }: ArrangeRequest): (memory: Memory) => number | string {
  const ids = cells.length + 1;
  const runs = (rules.maxRun ?? 0) + 1;
  const exact = ids ** 2 * runs ** 4 * 72 <= Number.MAX_SAFE_INTEGER;
  return ({ first, previous, run, start, open, lead, struck }) => {
    const flags = (open[0] ? 1 : 0) + (open[1] ? 2 : 0) + (struck ? 4 : 0);
    const leads = handDigit(lead.leader) * 3 + handDigit(lead.last);
    const small = ((first + 1) * ids + previous + 1) * 72 + leads * 8 + flags;
    if (!exact) return [small, ...run, ...start].join();
    return (((small * runs + run[0]) * runs + run[1]) * runs + start[0]) * runs + start[1];
  };
}

const handDigit = (hand: 'R' | 'L' | undefined): number => (hand === undefined ? 0 : hand === 'R' ? 1 : 2);
