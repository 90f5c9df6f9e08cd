import { z } from 'astro/zod';
import { grid, ids, line, meter, prose, sticking, whole } from './fields.ts';

/** The four families of the trade's list, with the kinds of roll. */
export const FAMILIES = [
  'single stroke roll',
  'multiple bounce roll',
  'double stroke roll',
  'diddle',
  'flam',
  'drag',
] as const;

const LENGTH = /^(4|8|16|32)t?$/;
const LENGTHS_SAY = 'note values of the main strokes like "16 16 8" (t for a triplet: 8t)';

/** A rudiment, `content/rudiments/<slug>.yaml`: one statement of it, and how it is laid over bars to be drawn and played. */
export const rudimentSchema = z.strictObject({
  /** Its number in the trade's list of forty. */
  number: whole(1, 40, 'its number in the list of rudiments'),
  name: line('the name of the rudiment', 60),
  family: z.enum(FAMILIES, { error: `one of: ${FAMILIES.join(', ')}` }),
  /** The plain sticking of one statement, grace notes in small letters, no accents: `lR L L R`. */
  hands: line('the plain sticking, stroke by stroke, like "lR L R"'),
  /** One statement with its rhythm and accents. */
  sticking: sticking(),
  /** The meter it is drawn in. */
  meter: meter(),
  /** Slots a beat of that meter. */
  grid: grid(),
  /** How many statements are drawn; together they fill whole bars. */
  repeat: whole(1, 16, 'how many times it is drawn'),
  /** Slots of rest after each statement where the drawing waits for the next beat; 0 when left out. */
  rest: whole(0, 16, 'slots of rest after each statement').default(0),
  /** Whether the next statement is led by the other hand. */
  alternates: z.boolean({ error: 'true or false' }).default(false),
  /** Note value of each main stroke: 4, 8, 16, 32; with t it is a triplet's. */
  rhythm: z
    .string({ error: LENGTHS_SAY })
    .refine((text) => text.split(' ').every((length) => LENGTH.test(length)), { error: LENGTHS_SAY }),
  /** Which main strokes are accented, counted from 1. */
  accents: z.array(whole(1, 40, 'a main stroke'), { error: 'a list of main strokes, like [1, 5]' }),
  /** Length of one statement in quarter notes. */
  beats: z.number({ error: 'its length in quarter notes' }).positive({ error: 'its length in quarter notes' }),
  /** What the row rests on: read, recalled, or follows from the name. */
  basis: prose('what this row rests on'),
  note: prose('a sentence about it').optional(),
  /** Rudiments worth looking at next, beside those with the same hands. */
  related: ids('rudiments'),
});

/** What a rudiment's file says. */
export type RudimentData = z.infer<typeof rudimentSchema>;
