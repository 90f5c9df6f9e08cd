import { TICKS_PER_QUARTER } from '../time/units.ts';
import { beamsOf, valueOf } from './values.ts';
import type { Written } from './symbols.ts';

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

/** A figure over some symbols of a fragment, by index; with a bracket where one beam does not show what it covers. */
export interface TupletMark {
  figure: number;
  from: number;
  to: number;
  bracket: boolean;
}

/** Runs of symbols with the same key, as first and last index. */
function runsOf<K>(symbols: readonly Written[], key: (symbol: Written) => K | undefined): [number, number][] {
  const runs: [number, number][] = [];
  symbols.forEach((symbol, i) => {
    const same = i > 0 && key(symbol) === key(symbols[i - 1]);
    if (key(symbol) === undefined) return;
    if (same) runs[runs.length - 1][1] = i;
    else runs.push([i, i]);
  });
  return runs;
}

const isOneBeam = (from: number, to: number, beams: readonly BeamGroup[]): boolean =>
  beams.some(({ notes }) => notes[0] === from && notes[notes.length - 1] === to && notes.length === to - from + 1);

/** The tuplets of a fragment, the outer ones first. */
export function tupletMarks(symbols: readonly Written[], beams: readonly BeamGroup[]): TupletMark[] {
  const mark = (figure: number, [from, to]: [number, number]): TupletMark => ({
    figure,
    from,
    to,
    bracket: !isOneBeam(from, to, beams),
  });
  const scopes = runsOf(symbols, (symbol) => (symbol.scope.figure ? symbol.scope : undefined));
  const nests = runsOf(symbols, (symbol) => symbol.nest);
  return [...scopes.map((run) => mark(symbols[run[0]].scope.figure, run)), ...nests.map((run) => mark(3, run))];
}
