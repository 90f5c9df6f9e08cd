import { z } from 'astro/zod';
import { id, line, whole } from './fields.ts';
import { OWN_PARTS_FROM } from './site.ts';

const part = z.strictObject(
  {
    number: whole(1, OWN_PARTS_FROM - 1, 'the number of the part'),
    title: line('the title of the part', 80),
    idea: line('what the part is about, in a sentence', 300),
  },
  { error: 'a part: { number, title, idea }' },
);

/** `content/course.yaml`: the parts of the course, and which lessons come with it. A lesson's place is in its own file. */
export const courseSchema = z.strictObject({
  parts: z.array(part, { error: 'a list of parts' }).min(1, { error: 'at least one part' }),
  /** Ids, in order of the alphabet; a lesson that is not listed is a school's own. */
  lessons: z.array(id(), { error: 'a list of ids of lessons' }),
});

/** What the course's file says. */
export type CourseData = z.infer<typeof courseSchema>;
