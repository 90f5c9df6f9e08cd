import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import {
  cellSchema,
  courseSchema,
  exerciseSchema,
  lessonSchema,
  pageSchema,
  rudimentSchema,
  siteSchema,
  termSchema,
} from './curriculum/index.ts';

/** Files of one kind, each under the id that its name is. */
const files = (folder: string) => glob({ pattern: '*.yaml', base: `./content/${folder}` });
/** One file of its own, under its name. */
const file = (name: string) => glob({ pattern: `${name}.yaml`, base: './content' });

/** The collections of the site; the content checker has read every file before they are loaded. */
export const collections = {
  lessons: defineCollection({
    loader: glob({
      pattern: '*/*/index.mdx',
      base: './content/lessons',
      // The id in the front matter is the address; folders only give the order.
      generateId: ({ data }) => String(data.id),
    }),
    schema: lessonSchema,
  }),
  cells: defineCollection({ loader: files('cells'), schema: cellSchema }),
  exercises: defineCollection({ loader: files('exercises'), schema: exerciseSchema }),
  rudiments: defineCollection({ loader: files('rudiments'), schema: rudimentSchema }),
  glossary: defineCollection({ loader: files('glossary'), schema: termSchema }),
  pages: defineCollection({ loader: glob({ pattern: '*.md', base: './content/pages' }), schema: pageSchema }),
  site: defineCollection({ loader: file('site'), schema: siteSchema }),
  course: defineCollection({ loader: file('course'), schema: courseSchema }),
};
