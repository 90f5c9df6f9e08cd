import { readPhrase } from '../core/index.ts';
import { specimens, type Specimen } from '../curriculum/index.ts';
import { getExercises, getNamedCells, getRudiments, getTerms } from './collections.ts';

/** What a specimen names where the course has it; else the first there is. */
const NAMED = { exercises: 'flam-drag-slow', glossary: 'diddle', rudiments: 'flam-drag' } as const;

/** The specimens of an author's words, with exercises, terms and rudiments that this course has. */
export async function knownSpecimens(): Promise<Specimen[]> {
  const [exercises, terms, rudiments] = await Promise.all([getExercises(), getTerms(), getRudiments()]);
  return specimens({
    exercise: pick(exercises, NAMED.exercises),
    term: pick(terms, NAMED.glossary),
    rudiment: pick(rudiments, NAMED.rudiments),
    cell: (await getNamedCells()).has('flam-drag') ? 'flam-drag' : undefined,
  });
}

function pick(entries: readonly { id: string }[], named: string): string | undefined {
  const ids = entries.map(({ id }) => id).sort();
  return ids.includes(named) ? named : ids[0];
}

/** What the checker says of a bar that is one slot short: its own words, from the same code, under the bar. */
export function faultSpecimen(): string {
  const text = '>lR LL R >lR LL R >lR LL R >lR LL R >lR LL R';
  const read = readPhrase({ cells: [{ id: 'bar', text }], meter: '4/4', grid: 4 });
  return `<Bar sticking="${text}" meter="4/4" grid={4} />\n\n${read.ok ? '' : read.fault.message}`;
}
