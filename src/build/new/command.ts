import { parseArgs } from 'node:util';
import { nearest } from '../content/nearest.ts';

/** What can be made. */
export const KINDS = ['lesson', 'exercise', 'cell', 'term'] as const;

/** One of the things that can be made. */
export type Kind = (typeof KINDS)[number];

/** The options each kind takes beside its name. */
const OPTIONS: Record<Kind, readonly string[]> = {
  lesson: ['part', 'order', 'id'],
  exercise: ['title'],
  cell: ['name'],
  term: [],
};

/** What is asked for, or what to say instead. */
export type Command =
  | { ask: 'make'; kind: Kind; name: string; options: Record<string, string> }
  | { ask: 'help' }
  | { ask: 'refused'; says: string };

/** How the command is used. */
export const HELP = `npm run new makes a file to begin with, in content/. It never writes over one that is there.

  npm run new -- lesson "Title" --part 6    a lesson, as the last one of part 6
       --order 2     after lesson 2 of the part instead
       --id our-id   its address; made of the title when left out
  npm run new -- exercise our-exercise      an exercise
       --title "Title"
  npm run new -- cell our-cell              a cell
       --name "what it is called"
  npm run new -- term our-term              a word for the glossary

An id is an address and never changes: small letters, digits and single hyphens. Begin yours with the name of your
school, and a newer version will never have the same.`;

/** Reads the command line behind `npm run new --`. */
export function readArgs(args: readonly string[]): Command {
  const { values, positionals } = parseArgs({
    args: [...args],
    strict: false,
    allowPositionals: true,
    options: Object.fromEntries(
      [...new Set(Object.values(OPTIONS).flat())].map((name) => [name, { type: 'string' as const }]),
    ),
  });
  if (values.help) return { ask: 'help' };
  const [kind, ...names] = positionals;
  if (kind === undefined) return refused(HELP);
  if (!isKind(kind)) return refused(`"${kind}" cannot be made.${meant(kind, KINDS)}\n\n${HELP}`);
  return readOptions(kind, names, values);
}

const refused = (says: string): Command => ({ ask: 'refused', says });
const isKind = (word: string): word is Kind => (KINDS as readonly string[]).includes(word);

function meant(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  return near ? ` Did you mean "${near}"?` : ` There are: ${known.join(', ')}.`;
}

function readOptions(kind: Kind, names: readonly string[], values: Record<string, unknown>): Command {
  const known = OPTIONS[kind];
  const unknown = Object.keys(values).find((name) => !known.includes(name));
  if (unknown !== undefined)
    return refused(
      known.length ? `A ${kind} takes no --${unknown}.${meant(unknown, known)}` : `A ${kind} takes no options.`,
    );
  const empty = Object.keys(values).find((name) => typeof values[name] !== 'string' || values[name] === '');
  if (empty !== undefined) return refused(`--${empty} needs a value behind it, like --${empty} ${EXAMPLES[empty]}`);
  if (names.length !== 1 || names[0].trim() === '') return refused(NAME_SAYS[kind]);
  return { ask: 'make', kind, name: names[0].trim(), options: values as Record<string, string> };
}

const EXAMPLES: Record<string, string> = {
  part: '6',
  order: '2',
  id: 'our-lesson',
  title: '"Our title"',
  name: '"our cell"',
};

const NAME_SAYS: Record<Kind, string> = {
  lesson: 'A lesson needs its title, in quotes: npm run new -- lesson "Our title" --part 6',
  exercise: 'An exercise needs its id, one word with hyphens: npm run new -- exercise our-exercise',
  cell: 'A cell needs its id, one word with hyphens: npm run new -- cell our-cell',
  term: 'A term needs its id, one word with hyphens: npm run new -- term our-term',
};
