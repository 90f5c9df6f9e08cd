import { getCollection, getEntry, type CollectionEntry } from 'astro:content';
import { handLoop, type CellLookup } from '../curriculum/index.ts';

/** An exercise with its id. */
export type ExerciseEntry = CollectionEntry<'exercises'>;
/** A rudiment with its slug as id. */
export type RudimentEntry = CollectionEntry<'rudiments'>;
/** A term of the glossary with its id. */
export type TermEntry = CollectionEntry<'glossary'>;
/** A page of text. */
export type PageEntry = CollectionEntry<'pages'>;

/** The exercises, by title. */
export async function getExercises(): Promise<ExerciseEntry[]> {
  return (await getCollection('exercises')).sort((a, b) => a.data.title.localeCompare(b.data.title, 'en'));
}

/** The forty rudiments, by number. */
export async function getRudiments(): Promise<RudimentEntry[]> {
  return (await getCollection('rudiments')).sort((a, b) => a.data.number - b.data.number);
}

/** The glossary, by term. */
export async function getTerms(): Promise<TermEntry[]> {
  return (await getCollection('glossary')).sort((a, b) => a.data.term.localeCompare(b.data.term, 'en'));
}

/** One exercise. Throws where there is none of that id. */
export const getExercise = async (id: string): Promise<ExerciseEntry> =>
  found(await getEntry('exercises', id), 'exercise', id);
/** One rudiment. Throws where there is none of that slug. */
export const getRudiment = async (slug: string): Promise<RudimentEntry> =>
  found(await getEntry('rudiments', slug), 'rudiment', slug);
/** One term. Throws where there is none of that id. */
export const getTerm = async (id: string): Promise<TermEntry> => found(await getEntry('glossary', id), 'term', id);

function found<T>(entry: T | undefined, what: string, id: string): T {
  if (entry === undefined) throw new Error(`there is no ${what} "${id}"`);
  return entry;
}

/** The names and texts of all cells. */
export async function getCells(): Promise<CellLookup> {
  const cells = new Map((await getCollection('cells')).map(({ id, data }) => [id, data]));
  return (id) => cells.get(id);
}

/** The rudiments whose hands do the same as this one's when both are played round and round, grace notes left out. */
export async function sameHands(slug: string): Promise<RudimentEntry[]> {
  const all = await getRudiments();
  const loop = handLoop((await getRudiment(slug)).data);
  return all.filter(({ id, data }) => id !== slug && handLoop(data) === loop);
}

/** The rudiments that a rudiment's file points to. */
export async function relatedRudiments(slug: string): Promise<RudimentEntry[]> {
  const { related } = (await getRudiment(slug)).data;
  return Promise.all(related.map(getRudiment));
}

/** The exercise that the first page shows: the first one tagged `front-page`; none where none is. */
export async function frontExercise(): Promise<ExerciseEntry | undefined> {
  return (await getExercises()).find(({ data }) => data.tags.includes('front-page'));
}
