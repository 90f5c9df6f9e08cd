import { turnLead, type LeadState } from '../phrase/lead.ts';
import type { Both, CellProfile, RunProfile } from './profile.ts';
import type { ArrangeRequest, ArrangeRules } from './types.ts';

/** What has to be remembered of the cells laid so far, for the rules that look over joins. */
interface Memory {
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

/** Memories as small numbers: 0 is the beginning; -1 is a join that a rule forbids. */
export interface Joins {
  next(memory: number, cell: number): number;
  /** Whether the phrase may end here. */
  closes(memory: number): boolean;
}

/** The rules that look over joins need no memory where there are none. */
export function hasJoins({ rules = {} }: ArrangeRequest): boolean {
  return rules.maxRun !== undefined || (rules.noJoins?.length ?? 0) > 0;
}

const START: Memory = {
  first: -1,
  previous: -1,
  run: [0, 0],
  start: [0, 0],
  open: [true, true],
  lead: {},
  struck: false,
};

/** The rules over joins as a machine whose states are found as they are reached. */
export function joinsOf(request: ArrangeRequest, profiles: readonly (CellProfile | undefined)[]): Joins {
  if (!hasJoins(request)) return { next: () => 0, closes: () => true };
  const { cells, rules = {} } = request;
  const memories: Memory[] = [START];
  const numbers = new Map<string, number>([[JSON.stringify(START), 0]]);
  const steps: number[] = [];
  const forbidden = forbiddenJoins(request);
  const step = (memory: Memory, cell: number): number => {
    if (forbidden.has(memory.previous * cells.length + cell)) return -1;
    const after = remember(memory, cell, profiles[cell], rules);
    if (!after) return -1;
    const key = JSON.stringify(after);
    if (!numbers.has(key)) numbers.set(key, memories.push(after) - 1);
    return numbers.get(key)!;
  };
  return {
    next: (memory, cell) => (steps[memory * cells.length + cell] ??= step(memories[memory], cell)),
    closes: (memory) =>
      !rules.loop ||
      (!forbidden.has(memories[memory].previous * cells.length + memories[memory].first) &&
        seamHolds(memories[memory], rules)),
  };
}

function forbiddenJoins({ cells, rules = {} }: ArrangeRequest): Set<number> {
  const index = (id: string): number => cells.findIndex((c) => c.id === id);
  return new Set((rules.noJoins ?? []).map(([a, b]) => index(a) * cells.length + index(b)));
}

/** The memory after one more cell, or nothing where a run grows too long. Only what a rule asks is remembered. */
function remember(
  memory: Memory,
  cell: number,
  profile: CellProfile | undefined,
  rules: ArrangeRules,
): Memory | undefined {
  const joined = (rules.noJoins?.length ?? 0) > 0;
  const kept = { previous: joined ? cell : -1, first: joined && rules.loop && memory.first < 0 ? cell : memory.first };
  if (rules.maxRun === undefined) return { ...memory, ...kept };
  const turned = turn(memory.lead, profile!, rules);
  const runs = profile!.runs[turned.mirrored ? 1 : 0];
  const grown = grow(memory, runs, rules.maxRun);
  return (
    grown && {
      ...grown,
      ...(rules.loop ? {} : { start: START.start, open: START.open, struck: false }),
      ...kept,
      lead: turned.state,
    }
  );
}

function turn(state: LeadState, profile: CellProfile, { lead }: ArrangeRules): { mirrored: boolean; state: LeadState } {
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

/** A run over the seam is the last one and the first one together; a hand that never pauses runs without end. */
function seamHolds({ run, start, open, struck }: Memory, { maxRun }: ArrangeRules): boolean {
  if (maxRun === undefined || !struck) return true;
  return ([0, 1] as const).every((h) => !open[h] && run[h] + start[h] <= maxRun);
}
