import { getCollection, type CollectionEntry } from 'astro:content';
import { handLoop, ladders, type CellLookup } from '../curriculum/index.ts';
import { lessonWords } from './lesson-words.ts';
import { everyLesson } from './lessons.ts';
import { once } from './once.ts';
import { said } from './said.ts';
import { getSite } from './site.ts';

/** An exercise with its id. */
export type ExerciseEntry = CollectionEntry<'exercises'>;
/** A rudiment with its slug as id. */
export type RudimentEntry = CollectionEntry<'rudiments'>;
/** A term of the glossary with its id. */
export type TermEntry = CollectionEntry<'glossary'>;
/** A page of text. */
export type PageEntry = CollectionEntry<'pages'>;

/** Entries with their words for a bar as the school says it. */
async function inSchoolWords<T extends { data: object }>(entries: Promise<T[]>): Promise<T[]> {
  return (await entries).map((entry) => ({ ...entry, data: said(entry.data) }));
}

const allExercises = once(async () =>
  (await inSchoolWords(getCollection('exercises'))).sort((a, b) => a.data.title.localeCompare(b.data.title, 'en')),
);

/** Whether the school hides an exercise by its name: it is left out of the lessons that show it. */
export const isHiddenExercise = async (id: string): Promise<boolean> => (await getSite()).hide.exercises.includes(id);

/** The exercises that are listed nowhere: those that the school hides, and those of hidden lessons that no other lesson has. */
const hiddenExercises = once(async (): Promise<ReadonlySet<string>> => {
  const [lessons, exercises, site] = await Promise.all([everyLesson(), allExercises(), getSite()]);
  const ofNone = (some: typeof lessons) =>
    ladders(
      some.map(({ lesson }) => ({ id: lesson.data.id, shown: lessonWords(lesson).exercises })),
      exercises.map(({ id, data }) => ({ id, tags: data.tags })),
    ).get('') ?? [];
  const always = new Set(ofNone(lessons));
  const left = ofNone(lessons.filter(({ hidden }) => !hidden)).filter((id) => !always.has(id));
  return new Set([...site.hide.exercises, ...left]);
});

const shownExercises = once(async () => {
  const hidden = await hiddenExercises();
  return (await allExercises()).filter(({ id }) => !hidden.has(id));
});

/** The exercises that are shown, by title. */
export const getExercises = async (): Promise<ExerciseEntry[]> => [...(await shownExercises())];

/** Every exercise, the hidden ones too: their pages stay where they were, so that no link to them breaks. */
export async function everyExercise(): Promise<{ exercise: ExerciseEntry; hidden: boolean }[]> {
  const hidden = await hiddenExercises();
  return (await allExercises()).map((exercise) => ({ exercise, hidden: hidden.has(exercise.id) }));
}

const allRudiments = once(async () =>
  (await inSchoolWords(getCollection('rudiments'))).sort((a, b) => a.data.number - b.data.number),
);

/** The forty rudiments, by number. */
export const getRudiments = async (): Promise<RudimentEntry[]> => [...(await allRudiments())];

const allTerms = once(async () => {
  const schoolName = await schoolNames();
  return (await inSchoolWords(getCollection('glossary')))
    .map((entry) => withSchoolName(entry, schoolName(entry.data.term)))
    .sort((a, b) => a.data.term.localeCompare(b.data.term, 'en'));
});

/** A term that is the name of a cell goes by the school's name for that cell too. */
function withSchoolName(entry: TermEntry, name: string): TermEntry {
  const { term, also } = entry.data;
  return name === term ? entry : { ...entry, data: { ...entry.data, also: [...also, name] } };
}

/** The glossary, by term. */
export const getTerms = async (): Promise<TermEntry[]> => [...(await allTerms())];

/** One exercise. Throws where there is none of that id. */
export const getExercise = async (id: string): Promise<ExerciseEntry> => entryOf(await allExercises(), 'exercise', id);
/** One rudiment. Throws where there is none of that slug. */
export const getRudiment = async (slug: string): Promise<RudimentEntry> =>
  entryOf(await allRudiments(), 'rudiment', slug);
/** One term. Throws where there is none of that id. */
export const getTerm = async (id: string): Promise<TermEntry> => entryOf(await allTerms(), 'term', id);

function entryOf<T extends { id: string }>(entries: readonly T[], what: string, id: string): T {
  const entry = entries.find((one) => one.id === id);
  if (entry === undefined) throw new Error(`there is no ${what} "${id}"`);
  return entry;
}

/** A cell as the school's players know it. */
export interface NamedCell {
  /** What they call it. */
  name: string;
  /** The name in its file, where the school's is another. */
  elsewhere?: string;
  sticking: string;
}

/** All cells by their ids, under the names the school gives them. */
export const getNamedCells = once(async () => {
  const { aliases } = await getSite();
  const named = (await getCollection('cells')).map(({ id, data: { name, sticking } }): [string, NamedCell] => {
    const alias = aliases[id] ?? name;
    return [id, alias === name ? { name, sticking } : { name: alias, elsewhere: name, sticking }];
  });
  return new Map(named) as ReadonlyMap<string, NamedCell>;
});

/** The names and texts of all cells. */
export async function getCells(): Promise<CellLookup> {
  const cells = await getNamedCells();
  return (id) => cells.get(id);
}

/** What to write over a bracket: the school's name where a bar gives a cell the name of its file. */
export async function schoolNames(): Promise<(name: string) => string> {
  const cells = [...(await getNamedCells()).values()];
  const names = new Map(cells.flatMap(({ name, elsewhere }) => (elsewhere ? [[elsewhere, name]] : [])));
  return (name) => names.get(name) ?? name;
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

/** The pages of text that a school edits, by their addresses. */
export const getPages = once(() => inSchoolWords(getCollection('pages')));
