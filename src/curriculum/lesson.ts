import { z } from 'astro/zod';
import { grid, id, ids, line, meter, tempo, whole } from './fields.ts';

/** The front matter of a lesson, `content/lessons/NN-part/NN-id/index.mdx`. */
export const lessonSchema = z.strictObject({
  /** Its address for ever: `/lessons/<id>/`. */
  id: id(),
  /** The part of the course it belongs to. */
  part: whole(1, 99, 'the number of a part'),
  /** Its place in the part. */
  order: whole(1, 99, 'the place in its part'),
  title: line('a short title', 80),
  /** The one idea, in a sentence. */
  idea: line('the one idea of the lesson, in a sentence', 240),
  meter: meter(),
  grid: grid(),
  /** 1 for beginners, 3 for the far end. */
  level: whole(1, 3, 'how hard it is'),
  tempo: tempo(),
  rudiments: ids('rudiments'),
  terms: ids('terms of the glossary'),
});

/** What a lesson's front matter says. */
export type LessonData = z.infer<typeof lessonSchema>;

/** How many lines a lesson may have, so that it keeps to one idea. */
export const LESSON_LINES = 120;
