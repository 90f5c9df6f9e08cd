import { z } from 'astro/zod';
import { line, prose, sticking } from './fields.ts';

/** A cell: a short sticking under a name, in `content/cells/<id>.yaml`. Its length in slots follows from its text. */
export const cellSchema = z.strictObject({
  /** What a teacher calls it; stands over its bracket. */
  name: line('the name a teacher would say, like "flam drag"', 40),
  /** Written for a right lead. */
  sticking: sticking(),
  /** A sentence about it. */
  note: prose('a sentence about the cell').optional(),
});

/** What a cell's file says. */
export type CellData = z.infer<typeof cellSchema>;
