import { z } from 'astro/zod';
import { MAX_SEED, PUZZLE_KINDS, TEMPO_LIMITS } from '../core/index.ts';
import {
  cellIds,
  countsOrOff,
  countSystem,
  grid,
  GRID_SAYS,
  id,
  ID_PATTERN,
  LEADS,
  line,
  meter,
  oneOf,
  pickup,
  STAVES,
  sticking,
  whole,
} from './fields.ts';
import { pictureAttributes, videoAttributes } from './media.ts';
import { QUESTION_KINDS } from './questions/kinds.ts';
import { STROKE_COUNTS } from './questions/place.ts';

/**
 * The words an author may use in a lesson, with their attributes. The content checker, the documentation and the
 * components all read this list. Attributes are literals: `name="flam drag"`, `grid={4}`.
 */

const CELLS_SAY = 'ids of cells with spaces between, like "kick rll flam-drag"';

const cellList = () =>
  z
    .string({ error: CELLS_SAY })
    .refine((text) => cellIds(text).length > 0 && cellIds(text).every((one) => ID_PATTERN.test(one)), {
      error: CELLS_SAY,
    });

/** `<Bar>`: a bar or more, drawn and playable. */
export const barAttributes = z
  .strictObject({
    sticking: sticking().optional().describe('the sticking text'),
    cells: cellList().optional().describe('or ids of cells, in order'),
    meter: meter().optional().describe('left out only where the sticking begins with a head like [4/4:3]'),
    grid: grid().optional().describe(`${GRID_SAYS}. Left out only where the sticking begins with a head`),
    name: line('a short name', 40).optional().describe('stands over the bracket of each cell of the sticking'),
    lead: oneOf(LEADS).optional().describe('which hand leads; right is as written'),
    pickup: pickup().optional().describe('how many slots stand before bar 1'),
    staff: oneOf(STAVES).optional().describe('one line, five lines, or whichever the strokes need'),
    id: id().optional().describe('a name by which a question can ask about this bar'),
    counts: countsOrOff().optional().describe('the counting system under the bar, or "off"'),
    tempo: whole(TEMPO_LIMITS.min, TEMPO_LIMITS.max, 'beats a minute')
      .optional()
      .describe('the tempo the player begins with'),
  })
  .refine((bar) => (bar.sticking === undefined) !== (bar.cells === undefined), {
    error: 'either sticking or cells, and not both',
  })
  .refine((bar) => bar.name === undefined || bar.cells === undefined, {
    error: 'name only beside sticking; cells have names of their own',
    path: ['name'],
  });

/** What only a computed question has. */
const EXACTLY = ['bar', 'at', 'of', 'cell', 'in', 'over', 'loop'] as const;

/** `<Question>`: one question, its answer computed from a bar (`from`) or given (`answer`). */
export const questionAttributes = z
  .strictObject({
    ask: line('the question', 300).describe('the question'),
    answer: z
      .union([line('the answer', 120), z.number()], { error: 'the answer' })
      .optional()
      .describe('the answer, where it cannot be computed'),
    from: oneOf(QUESTION_KINDS).optional().describe('what is computed from the bar'),
    choices: line('answers with | between', 300).optional().describe('what one may choose from, with | between'),
    bar: id().optional().describe('the id of a Bar of this lesson or of an exercise; else the Bar before the question'),
    at: line('a count like "2 a"', 20).optional().describe('a count, said as 1 e & a whatever the school counts'),
    of: z
      .union([line('a word', 20), whole(1, 4096, 'a number')], { error: 'a word or a number' })
      .optional()
      .describe(`a number, a surface like floor, or strokes: ${STROKE_COUNTS.join(', ')}`),
    cell: cellList().optional().describe('the id of a cell, or of several laid one after another'),
    in: whole(1, 32, 'the number of a bar').optional().describe('which bar is asked about, from 1'),
    over: whole(2, 32, 'a number of bars').optional().describe('over how many bars, where it is more than one'),
    loop: z.boolean({ error: 'true' }).optional().describe('whether the bar goes round'),
    hint: line('a hint', 200).optional().describe('what is said to a wrong answer'),
  })
  .refine((question) => (question.answer === undefined) !== (question.from === undefined), {
    error: 'either from, to have the answer computed, or answer; not both',
  })
  .refine((question) => question.from !== undefined || EXACTLY.every((name) => question[name] === undefined), {
    error: `${EXACTLY.join(', ')} only beside from`,
    path: ['from'],
  });

/** `<Puzzle>`: a puzzle, the same for everyone; a lesson that has one needs no question. */
export const puzzleAttributes = z.strictObject({
  kind: oneOf(PUZZLE_KINDS).describe('what kind of puzzle'),
  seed: whole(1, MAX_SEED, 'the number of the puzzle').describe('its number, as its address has it'),
});

/** `<Counts>`: the syllables of a bar. */
export const countsAttributes = z.strictObject({
  meter: meter().describe('the meter'),
  grid: grid().describe(GRID_SAYS),
  system: countSystem().optional().describe("the counting system; the site's own when left out"),
});

/** What a caution is about. */
export const CAUTIONS = ['hearing', 'wrists'] as const;

/** What may stand between a word's tags. */
export type Children = 'nothing' | 'words' | 'paragraphs';

/** A word of the vocabulary. */
export interface Word {
  name: string;
  /** What it puts on the page, as the end of "puts …". */
  says: string;
  attributes: z.ZodObject;
  children: Children;
  example: string;
}

/** The vocabulary, in the order of the documentation. */
export const VOCABULARY = [
  {
    name: 'Bar',
    says: 'one or more bars, drawn and playable',
    attributes: barAttributes,
    children: 'nothing',
    example: '<Bar sticking="{>lR LL R}4" meter="4/4" grid={3} name="flam drag" />',
  },
  {
    name: 'Exercise',
    says: 'an exercise: its bar, its purpose, its tempos',
    attributes: z.strictObject({ id: id().describe('the id of the exercise') }),
    children: 'nothing',
    example: '<Exercise id="flam-drag-slow" />',
  },
  {
    name: 'Question',
    says: 'a question; between its tags stands why',
    attributes: questionAttributes,
    children: 'paragraphs',
    example: '<Question ask="Which hand plays the a of 2?" from="hand-at" at="2 a">Count along.</Question>',
  },
  {
    name: 'Puzzle',
    says: 'a puzzle to solve on the page; it counts as the question of the lesson',
    attributes: puzzleAttributes,
    children: 'nothing',
    example: '<Puzzle kind="fill" seed={7} />',
  },
  {
    name: 'Counts',
    says: 'the syllables of a bar over its ruler',
    attributes: countsAttributes,
    children: 'nothing',
    example: '<Counts meter="4/4" grid={4} />',
  },
  {
    name: 'Caution',
    says: 'a caution for hearing or wrists; its words stand between the tags',
    attributes: z.strictObject({ about: oneOf(CAUTIONS).describe('what it is about') }),
    children: 'paragraphs',
    example: '<Caution about="wrists">Stop when it hurts.</Caution>',
  },
  {
    name: 'Term',
    says: 'a word of the text, linked to the glossary',
    attributes: z.strictObject({ id: id().describe('the id of the term') }),
    children: 'words',
    example: '<Term id="diddle">diddle</Term>',
  },
  {
    name: 'Rudiment',
    says: 'a link to the page of a rudiment, with its sticking',
    attributes: z.strictObject({ id: id().describe('the id of the rudiment') }),
    children: 'nothing',
    example: '<Rudiment id="flam-drag" />',
  },
  {
    name: 'Picture',
    says: 'a picture that lies beside the lesson',
    attributes: pictureAttributes,
    children: 'nothing',
    example: '<Picture file="./hands.jpg" text="Two hands over the drum, the left one low." />',
  },
  {
    name: 'Video',
    says: 'a film that lies beside the lesson; it plays when someone presses',
    attributes: videoAttributes,
    children: 'nothing',
    example: '<Video file="./hands.mp4" text="Four flam drags, slowly, from the side." />',
  },
] as const satisfies readonly Word[];

/** The names of the words. */
export type WordName = (typeof VOCABULARY)[number]['name'];
/** The attributes of `<Bar>`. */
export type BarAttributes = z.infer<typeof barAttributes>;
/** The attributes of `<Question>`. */
export type QuestionAttributes = z.infer<typeof questionAttributes>;
/** The attributes of `<Puzzle>`. */
export type PuzzleAttributes = z.infer<typeof puzzleAttributes>;
/** The attributes of `<Counts>`. */
export type CountsAttributes = z.infer<typeof countsAttributes>;

/** The word of that name, if the vocabulary has it. */
export function wordOf(name: string): Word | undefined {
  return VOCABULARY.find((word) => word.name === name);
}

/** The answers in a `choices` attribute: `choicesOf('3 | 4')` is `['3', '4']`. */
export function choicesOf(text: string): string[] {
  return text.split('|').map((one) => one.trim());
}

/** An attribute as documentation tells it. */
export interface AttributeRule {
  name: string;
  required: boolean;
  says: string;
}

/** The attributes of a word, in the order they are written. */
export const attributesOf = (word: Word): AttributeRule[] => fieldsOf(word.attributes);

/** The fields of a head or the attributes of a word, in the order they are written. */
export function fieldsOf(schema: z.ZodObject): AttributeRule[] {
  return Object.entries(schema.shape).map(([name, field]) => ({
    name,
    required: !z.safeParse(field, undefined).success,
    says: z.globalRegistry.get(field)?.description ?? '',
  }));
}
