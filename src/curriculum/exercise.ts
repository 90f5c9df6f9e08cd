import { z } from 'astro/zod';
import { grid, id, ids, LEADS, line, meter, oneOf, pickup, prose, STAVES, sticking, tempo } from './fields.ts';

/** An exercise, in `content/exercises/<id>.yaml`: one phrase to practice, at an address of its own. */
export const exerciseSchema = z
  .strictObject({
    title: line('a short title', 80),
    /** What it is for, to the player. */
    purpose: prose('a sentence that says what the exercise is for'),
    /** Cells in order; an id may come again. */
    cells: z
      .array(id(), { error: 'a list of cells in square brackets, like [flam-drag, rll]' })
      .min(1, { error: 'at least one cell' })
      .optional(),
    /** Or the sticking itself. */
    sticking: sticking().optional(),
    meter: meter().optional(),
    grid: grid().optional(),
    pickup: pickup().optional(),
    /** The leads that are offered, the first one to begin with. */
    leads: z
      .array(oneOf(LEADS), { error: `a list of leads in square brackets, out of: ${LEADS.join(', ')}` })
      .min(1, { error: `at least one lead out of: ${LEADS.join(', ')}` })
      .refine((list) => new Set(list).size === list.length, { error: 'a list that names each lead once' }),
    tempo: tempo(),
    /** When it is good enough to go on. */
    enough: prose('a sentence that says when it is good enough to go on'),
    tags: ids('tags'),
    rudiments: ids('rudiments'),
    staff: oneOf(STAVES).optional(),
    /** Names over the brackets, one for each cell, instead of the cells' own. */
    names: z.array(line('a short name', 40), { error: 'a list of names, one for each cell' }).optional(),
  })
  .refine((exercise) => (exercise.cells === undefined) !== (exercise.sticking === undefined), {
    error: 'either "cells" or "sticking", and not both',
  })
  .refine((exercise) => exercise.names === undefined || exercise.cells !== undefined, {
    error: '"names" only beside "cells"',
    path: ['names'],
  })
  .refine((exercise) => !exercise.names || !exercise.cells || exercise.names.length === exercise.cells.length, {
    error: 'as many names as there are cells',
    path: ['names'],
  });

/** What an exercise's file says. */
export type ExerciseData = z.infer<typeof exerciseSchema>;
