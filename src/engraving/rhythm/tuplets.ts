import type { BeamGroup } from './beams.ts';
import type { Written } from './written.ts';

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
