import { getCollection } from 'astro:content';
import { specimens, type Specimen } from '../curriculum/index.ts';

/** What a specimen names where the course has it; else the first there is. */
const NAMED = { exercises: 'flam-drag-slow', glossary: 'diddle', rudiments: 'flam-drag' } as const;

/** The specimens of an author's words, with exercises, terms and rudiments that this course has. */
export async function knownSpecimens(): Promise<Specimen[]> {
  const [exercise, term, rudiment] = await Promise.all([pick('exercises'), pick('glossary'), pick('rudiments')]);
  const cells = await getCollection('cells');
  return specimens({ exercise, term, rudiment, cell: cells.find(({ id }) => id === 'flam-drag')?.id });
}

async function pick(kind: keyof typeof NAMED): Promise<string | undefined> {
  const ids = (await getCollection(kind)).map(({ id }) => id).sort();
  return ids.find((id) => id === NAMED[kind]) ?? ids[0];
}
