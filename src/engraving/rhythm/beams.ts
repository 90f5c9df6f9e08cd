import { TICKS_PER_QUARTER } from '../../core/index.ts';
import { beamsOf, valueOf } from './values.ts';
import type { Written } from './written.ts';

/** A beam: its notes, by index into the fragment's symbols, and how many of its lines go on to the next of them. */
export interface BeamGroup {
  notes: number[];
  joins: number[];
}

const isBeamable = (symbol: Written): boolean => symbol.kind === 'note' && beamsOf(symbol.value) > 0;

/** Whether a beam must end before this symbol: at a beat of its own, and at the quarter inside a half-note beat. */
function breaksBefore(symbol: Written, before: Written, symbols: readonly Written[]): boolean {
  if (symbol.scope !== before.scope) return true;
  const long = symbol.scope.ticks === 2 * TICKS_PER_QUARTER && symbols.some((s) => beamsOf(s.value) > 1);
  return long && symbol.offset === TICKS_PER_QUARTER;
}

const slotOf = ({ tick, scope }: Written): number => Math.floor((tick - scope.tick) / scope.slotTicks);

/** Beam lines of the slot itself, which go through; what a split adds stays inside its slot. */
function slotBeams({ scope }: Written): number {
  const ticks = Math.round(scope.slotTicks * scope.scale);
  const value = valueOf(ticks) ?? valueOf(ticks * 2);
  return value ? beamsOf(value) : 1;
}

/** How many beam lines lead from one note to the next one of its beam. */
function joinOf(a: Written, b: Written, apart: boolean): number {
  if (apart) return 1;
  if (slotOf(a) === slotOf(b)) return a.nest === b.nest ? Infinity : 1;
  const own = slotBeams(a);
  const half = TICKS_PER_QUARTER / 2;
  return own > 2 && b.offset % half === 0 ? 1 : Math.max(1, own);
}

/** The beams of a fragment: runs of flagged notes inside one beat; a rest between two notes does not break one. */
export function beamGroups(symbols: readonly Written[]): BeamGroup[] {
  const runs: number[][] = [[]];
  symbols.forEach((symbol, i) => {
    const run = runs[runs.length - 1];
    if (i > 0 && breaksBefore(symbol, symbols[i - 1], symbols)) runs.push([]);
    if (isBeamable(symbol)) runs[runs.length - 1].push(i);
    else if (symbol.kind === 'note' && run.length) runs.push([]);
  });
  const groups = runs.filter((run) => run.length > 1);
  return groups.map((notes) => ({
    notes,
    joins: notes.slice(1).map((at, i) => joinOf(symbols[notes[i]], symbols[at], at - notes[i] > 1)),
  }));
}
