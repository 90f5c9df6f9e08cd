import { z } from 'astro/zod';
import { grid, ids, line, meter, prose, sticking } from './fields.ts';

/** A term of the glossary, `content/glossary/<id>.yaml`. */
export const termSchema = z.strictObject({
  term: line('the term', 60),
  /** What it means, in a sentence or two. */
  says: prose('what the term means, in a sentence or two'),
  /** Other words for it, which search finds too. */
  also: z.array(line('another word for it', 60), { error: 'a list of other words for it' }).default([]),
  see: ids('terms of the glossary'),
  /** A bar that shows it. */
  bar: z
    .strictObject({ sticking: sticking(), meter: meter(), grid: grid() }, { error: 'a bar: { sticking, meter, grid }' })
    .optional(),
});

/** What a term's file says. */
export type TermData = z.infer<typeof termSchema>;
