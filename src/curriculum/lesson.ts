import { z } from 'astro/zod';
import { grid, GRID_SAYS, id, ids, line, meter, tempo, TEMPO_SAYS, whole } from './fields.ts';

const LISTEN_SAYS = 'a list of things to listen to, like [{ title: The march on our shelf, at: 1:24 }]';
const MARK_SAYS = 'a time like 1:24 or 1:02:30';

/** Something to listen to, in words of the school's own; none of it is a link. */
const listen = z.strictObject(
  {
    title: line('what to listen to'),
    /** Where in it, in minutes and seconds. */
    at: z
      .string({ error: MARK_SAYS })
      .regex(/^\d{1,2}(:[0-5]\d){1,2}$/, { error: MARK_SAYS })
      .optional(),
    says: line('what to listen for, in a sentence', 300).optional(),
  },
  { error: 'something to listen to: { title, at, says }' },
);

/** Something to listen to. */
export type ListenData = z.infer<typeof listen>;

/** The front matter of a lesson, `content/lessons/NN-part/NN-id/index.mdx`. */
export const lessonSchema = z.strictObject({
  id: id().describe('its address for ever: /lessons/<id>/; never change it'),
  part: whole(1, 99, 'the number of a part').describe('the part of the course it belongs to'),
  order: whole(1, 99, 'the place in its part').describe(
    'its place in the part; the name of its folder begins with the same number',
  ),
  title: line('a short title', 80).describe('its title'),
  idea: line('the one idea of the lesson, in a sentence', 240).describe('the one idea, in a sentence'),
  meter: meter().describe('the meter it is in'),
  grid: grid().describe(GRID_SAYS),
  level: whole(1, 3, 'how hard it is').describe('1 for beginners, 3 for the far end'),
  tempo: tempo().describe(TEMPO_SAYS),
  rudiments: ids('rudiments').describe('rudiments it has to do with, by their ids'),
  terms: ids('terms of the glossary').describe('words of the glossary it uses, by their ids'),
  listen: z
    .array(listen, { error: LISTEN_SAYS })
    .default([])
    .describe('what to listen to: a title each, with "at" a time, with "says" what to listen for'),
});

/** What a lesson's front matter says. */
export type LessonData = z.infer<typeof lessonSchema>;

/** How many lines a lesson may have, so that it keeps to one idea. */
export const LESSON_LINES = 120;
