import { z } from 'astro/zod';
import { id, line, whole } from './fields.ts';
import { OWN_PARTS_FROM } from './site.ts';

const plannedLesson = z.strictObject(
  { id: id(), title: line('a short title', 80), idea: line('the one idea of the lesson, in a sentence', 240) },
  { error: 'a lesson: { id, title, idea }' },
);

const part = z.strictObject(
  {
    number: whole(1, OWN_PARTS_FROM - 1, 'the number of the part'),
    title: line('the title of the part', 80),
    idea: line('what the part is about, in a sentence', 300),
    /** In the order they are taken. */
    lessons: z.array(plannedLesson, { error: 'a list of lessons' }).min(1, { error: 'at least one lesson' }),
  },
  { error: 'a part: { number, title, idea, lessons }' },
);

/** The whole plan, `content/course.yaml`; a lesson in it without a file is shown as coming. */
export const courseSchema = z.strictObject({
  parts: z.array(part, { error: 'a list of parts' }).min(1, { error: 'at least one part' }),
});

/** What the course's file says. */
export type CourseData = z.infer<typeof courseSchema>;
/** A part of the plan. */
export type PartData = CourseData['parts'][number];
/** A lesson of the plan. */
export type PlannedLesson = PartData['lessons'][number];
