import { z } from 'astro/zod';
import { line } from './fields.ts';

/** A page of text, `content/pages/<id>.md`, at the address `/<id>/`. */
export const pageSchema = z.strictObject({
  title: line('a short title', 80),
  /** What it says, in a sentence. */
  idea: line('what the page says, in a sentence', 240),
});

/** What the front matter of a page says. */
export type PageData = z.infer<typeof pageSchema>;
