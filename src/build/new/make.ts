import {
  ADDRESSES,
  cellSchema,
  exerciseSchema,
  ID_PATTERN,
  ID_SAYS,
  lessonSchema,
  termSchema,
} from '../../curriculum/index.ts';
import { sounding } from '../content/check-exercises.ts';
import type { Library } from '../content/library.ts';
import type { Command, Kind } from './command.ts';
import { idOf, placeFor } from './lesson-place.ts';
import { cellText, exerciseText, lessonText, termText } from './templates.ts';
import { capital } from '../../words/grammar.ts';

/** A file to be written, with what to say about it; or why there is none. */
export type Made = { ok: true; file: string; text: string; says: string; next: string } | { ok: false; says: string };

type Order = Extract<Command, { ask: 'make' }>;

/** Makes what is asked for out of what is there; writes nothing itself. */
export function make(library: Library, order: Order): Made {
  return order.kind === 'lesson' ? makeLesson(library, order) : makeFile(library, order.kind, order);
}

const refuse = (says: string): Made => ({ ok: false, says });

/** Longer ones make addresses that nobody can read out. */
const LONGEST_ID = 60;

function idFault(id: string): string | undefined {
  if (!ID_PATTERN.test(id)) {
    const better = idOf(id);
    return `"${id}" cannot be an address: it takes ${ID_SAYS}.${better ? ` Perhaps ${better}?` : ''}`;
  }
  return id.length > LONGEST_ID ? `"${id}" is too long for an address; ${LONGEST_ID} letters are the most` : undefined;
}

function makeLesson(library: Library, { name: title, options }: Order): Made {
  const id = options.id ?? idOf(title);
  if (id === '') return refuse('An address cannot be made of this title. Give the lesson one: --id our-lesson');
  const titleFault = lessonSchema.shape.title.safeParse(title).error?.issues[0]?.message;
  if (titleFault) return refuse(`The title takes ${titleFault}`);
  const fault = idFault(id);
  if (fault) return refuse(options.id ? fault : `${fault}. Give the lesson a shorter one: --id our-lesson`);
  const there = library.lessons.find((lesson) => lesson.id === id);
  if (there) return refuse(`There is a lesson "${id}" already: ${there.file}. Give this one another: --id our-lesson`);
  const place = placeFor(library, options);
  if (!place.ok) return place;
  const { part, order, folder } = place;
  return {
    ok: true,
    file: `content/lessons/${folder}/${String(order).padStart(2, '0')}-${id}/index.mdx`,
    text: lessonText({ id, part: part.number, order, title }),
    says: `It stands at ${ADDRESSES.lesson(id)}, in part ${part.number}, ${part.title}.`,
    next: 'Open it and write; the lines in {/* … */} say what goes where.',
  };
}

/** The kinds whose files lie side by side, named by their ids. */
const SHELVES = { exercise: 'exercises', cell: 'cells', term: 'glossary' } as const;

function makeFile(library: Library, kind: Exclude<Kind, 'lesson'>, { name: id, options }: Order): Made {
  const fault = idFault(id);
  if (fault) return refuse(fault);
  const there = library[SHELVES[kind]].get(id);
  if (there) return refuse(`There is ${kind === 'exercise' ? 'an' : 'a'} ${kind} "${id}" already: ${there.file}`);
  return STARTS[kind](library, id, options);
}

const file = (kind: Exclude<Kind, 'lesson'>, id: string) => `content/${SHELVES[kind]}/${id}.yaml`;
/** What an id says with spaces. */
const wordsOf = (id: string) => id.replaceAll('-', ' ');
const NEXT = 'Open it and write; the lines that begin with # say what goes where.';

type Start = (library: Library, id: string, options: Order['options']) => Made;

const STARTS: Record<Exclude<Kind, 'lesson'>, Start> = {
  exercise(library, id, options) {
    const title = options.title ?? capital(wordsOf(id));
    const fault = exerciseSchema.shape.title.safeParse(title).error?.issues[0]?.message;
    if (fault) return refuse(`--title takes ${fault}`);
    return {
      ok: true,
      file: file('exercise', id),
      text: exerciseText({ title, sticking: freshBar(library) }),
      says: `It stands at ${ADDRESSES.exercise(id)} and in the list of exercises.`,
      next: `${NEXT} To show it in a lesson, write <Exercise id="${id}" /> there.`,
    };
  },
  cell(_library, id, options) {
    const name = options.name ?? wordsOf(id);
    const fault = cellSchema.shape.name.safeParse(name).error?.issues[0]?.message;
    if (fault) return refuse(`--name takes ${fault}`);
    return {
      ok: true,
      file: file('cell', id),
      text: cellText(name),
      says: `Bars and exercises can name it: <Bar cells="${id} ${id} …" … />.`,
      next: NEXT,
    };
  },
  term(library, id) {
    const term = wordsOf(id);
    const fault = termSchema.shape.term.safeParse(term).error?.issues[0]?.message;
    if (fault) return refuse(`A term takes ${fault}`);
    const same = [...library.glossary.values()].find(({ data }) => data?.term.toLowerCase() === term);
    if (same) return refuse(`${same.file} has the term "${term}" already`);
    return {
      ok: true,
      file: file('term', id),
      text: termText(term),
      says: `It stands at ${ADDRESSES.term(id)}.`,
      next: NEXT,
    };
  },
};

/** Single strokes with accents where no exercise has them yet: two exercises may not be one bar. */
function freshBar(library: Library): string {
  const taken = new Set([...library.exercises.values()].map(({ data }) => data && sounding(library, data)));
  for (let accents = 1; ; accents += 1) {
    const sticking = accented(accents);
    const bar = sounding(library, exerciseSchema.parse({ ...ANY, sticking }));
    if (!taken.has(bar)) return sticking;
  }
}

const ANY = {
  title: 'x',
  purpose: 'x',
  enough: 'x',
  meter: '4/4',
  grid: 4,
  leads: ['right'],
  tempo: { from: 60, to: 90 },
};

/** Sixteen single strokes; the bits of a number say which are accented. */
const accented = (accents: number): string =>
  Array.from({ length: 16 }, (_, slot) => `${(accents >> slot) & 1 ? '>' : ''}${slot % 2 ? 'L' : 'R'}`).join(' ');
