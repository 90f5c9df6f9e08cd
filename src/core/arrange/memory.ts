import { turnLead, type LeadState } from '../phrase/lead.ts';
import type { Both, CellProfile, RunProfile } from './profile.ts';
import type { ArrangeRequest, ArrangeRules } from './types.ts';

/** What has to be remembered of the cells laid so far, for the rules that look over joins. */
export interface Memory {
  /** First and previous cell, where joins are forbidden; -1 for none. */
  first: number;
  previous: number;
  /** The run of each hand that is going on. */
  run: Both<number>;
  /** The run of each hand from the very beginning, and whether it is still going on. */
  start: Both<number>;
  open: Both<boolean>;
  lead: LeadState;
  /** Whether any hand has struck. */
  struck: boolean;
}

/** Nothing is laid yet. */
export const START: Memory = {
  first: -1,
  previous: -1,
  run: [0, 0],
  start: [0, 0],
  open: [true, true],
  lead: {},
  struck: false,
};

/** Which cell may follow which. Cells that are forbidden alike before, or after, need not be told apart. */
export interface Pairs {
  forbidden(before: number, after: number): boolean;
  /** A cell that stands for all that may be followed by the same ones, and for all that may follow the same ones. */
  asBefore(cell: number): number;
  asAfter(cell: number): number;
}

/** The joins that rules forbid. */
export function pairsOf({ cells, rules = {} }: ArrangeRequest): Pairs {
  const index = new Map(cells.map((cell, i) => [cell.id, i]));
  const pairs = (rules.noJoins ?? []).map(([a, b]) => [index.get(a)!, index.get(b)!]);
  const set = new Set(pairs.map(([a, b]) => a * cells.length + b));
  const alike = (end: 0 | 1): number[] => {
    const others = cells.map((): number[] => []);
    for (const pair of pairs) others[pair[end]].push(pair[1 - end]);
    const keys = others.map((list) => list.sort((a, b) => a - b).join());
    const firsts = new Map(keys.map((key, i) => [key, i] as const).reverse());
    return keys.map((key) => firsts.get(key)!);
  };
  const [before, after] = [alike(0), alike(1)];
  return {
    forbidden: (a, b) => a >= 0 && set.has(a * cells.length + b),
    asBefore: (cell) => before[cell],
    asAfter: (cell) => after[cell],
  };
}

/** The memory after one more cell, or nothing where a join is forbidden or a run grows too long. */
export function remember(
  memory: Memory,
  cell: number,
  profile: CellProfile | undefined,
  rules: ArrangeRules,
  pairs: Pairs,
): Memory | undefined {
  if (pairs.forbidden(memory.previous, cell)) return undefined;
  const joined = (rules.noJoins?.length ?? 0) > 0;
  const previous = joined ? pairs.asBefore(cell) : -1;
  const first = joined && rules.loop && memory.first < 0 ? pairs.asAfter(cell) : memory.first;
  if (rules.maxRun === undefined) return { ...START, previous, first };
  const turned = turn(memory.lead, profile!, rules);
  const runs = profile!.runs[turned.mirrored ? 1 : 0];
  const grown = grow(memory, runs, rules.maxRun);
  if (!grown) return undefined;
  const began = rules.loop ? grown : START;
  const { run } = grown;
  const { start, open, struck } = began;
  return { run, start, open, struck, previous, first, lead: turned.state };
}

/** Whether a cell is mirrored by the rule of lead, and who leads from there. */
export function turn(
  state: LeadState,
  profile: CellProfile,
  { lead }: ArrangeRules,
): { mirrored: boolean; state: LeadState } {
  if (lead === 'alternating') return turnLead(state, profile.hands);
  return { mirrored: lead === 'left', state: {} };
}

function grow(memory: Memory, runs: RunProfile, most: number): Memory | undefined {
  if (runs.moments === 0) return memory;
  const hand = (h: 0 | 1): { run: number; start: number; open: boolean; fits: boolean } => {
    const whole = runs.prefix[h] === runs.moments;
    const met = memory.run[h] + runs.prefix[h];
    return {
      fits: met <= most && runs.longest[h] <= most,
      run: whole ? met : runs.suffix[h],
      start: memory.start[h] + (memory.open[h] ? runs.prefix[h] : 0),
      open: memory.open[h] && whole,
    };
  };
  const [r, l] = [hand(0), hand(1)];
  if (!r.fits || !l.fits) return undefined;
  return { ...memory, run: [r.run, l.run], start: [r.start, l.start], open: [r.open, l.open], struck: true };
}

/** Whether a phrase that goes round may end here: its last cell meets its first. */
export function seamHolds(memory: Memory, { maxRun }: ArrangeRules, pairs: Pairs): boolean {
  if (pairs.forbidden(memory.previous, memory.first)) return false;
  if (maxRun === undefined || !memory.struck) return true;
  // A run over the seam is the last one and the first one together; a hand that never pauses runs without end.
  const { run, start, open } = memory;
  return ([0, 1] as const).every((h) => !open[h] && run[h] + start[h] <= maxRun);
}
