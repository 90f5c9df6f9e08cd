import { z } from 'astro/zod';
import { countSystem, id, ID_PATTERN, ID_SAYS, ids, line, oneOf, whole } from './fields.ts';

const LANGUAGES = new Intl.DisplayNames(['en'], { type: 'language', fallback: 'none' });

/** Whether this names a language that is known by its code. */
function isLanguage(code: string): boolean {
  try {
    return /^[a-z]{2,3}(-|$)/.test(code) && LANGUAGES.of(code) !== undefined;
  } catch {
    return false;
  }
}

const color = () =>
  z.string({ error: 'a color like "#a8481c"' }).regex(/^#[0-9a-f]{6}$/i, { error: 'a color like "#a8481c"' });

const warmColors = (key: 'colors' | 'colours') =>
  z.strictObject({ warm: color(), warmDark: color().optional() }, { error: `${key}: { warm, warmDark }` }).optional();

/** Parts of a school's own are numbered from here; the parts that come with Barwright stay below, in every version. */
export const OWN_PARTS_FROM = 20;

const ownPart = z.strictObject(
  {
    number: whole(OWN_PARTS_FROM, 99, 'the number of a part of your own'),
    title: line('the title of the part', 80),
    idea: line('what the part is about, in a sentence', 300),
  },
  { error: 'a part: { number, title, idea }' },
);

const partNumbers = () =>
  z
    .array(whole(1, 99, 'the number of a part'), { error: 'a list of numbers of parts, like [2, 1]' })
    .refine((list) => new Set(list).size === list.length, { error: 'a list that names each part once' })
    .default([]);

const hide = z
  .strictObject(
    { lessons: ids('lessons'), exercises: ids('exercises'), parts: partNumbers() },
    { error: 'hide: { lessons, exercises, parts }' },
  )
  .prefault({});

const LESSON_ORDER_SAYS = 'lessons by the number of their part, like { 3: [ghost-notes, accents-and-taps] }';

const order = z
  .strictObject(
    {
      parts: partNumbers(),
      lessons: z
        .record(
          z.string().regex(/^[1-9]\d?$/, { error: LESSON_ORDER_SAYS }),
          z
            .array(id(), { error: 'a list of lessons in square brackets' })
            .refine((list) => new Set(list).size === list.length, { error: 'a list that names each lesson once' }),
          { error: LESSON_ORDER_SAYS },
        )
        .default({}),
    },
    { error: 'order: { parts, lessons }' },
  )
  .prefault({});

const ALIASES_SAY = 'names by the ids of cells, like { flam-drag: "our flam drag" }';

const aliases = z
  .record(z.string().regex(ID_PATTERN, { error: ID_SAYS }), line('the name that is said at your school', 40), {
    error: ALIASES_SAY,
  })
  .default({});

const siteFields = z.strictObject({
  /** Stands in every page's title. */
  name: line('the name of the site', 60).default('Drum course'),
  school: line('the name of the school', 80).default('Music school'),
  /** Language of the course text: `en`, `en-GB`. */
  language: z
    .string({ error: 'a language like en or en-GB' })
    .refine(isLanguage, { error: 'a language that there is, like en or en-GB' })
    .default('en'),
  /** A line at the foot of the pages: whom to ask. */
  contact: line('a line that says whom to ask').default('Questions about a lesson? Ask your teacher.'),
  /** The counting system that bars begin with. */
  counting: countSystem().default('1 e & a'),
  /** What a bar is called. */
  barWord: oneOf(['bar', 'measure']).default('bar'),
  /** The one warm color, on light and on dark paper; a warmDark that is left out is a lighter warm. */
  colors: warmColors('colors'),
  /** The same under the name it had first, which schools have in their files. */
  colours: warmColors('colours'),
  /** What is left out of the contents, the lists, the navigation, the search and the map of the site. */
  hide,
  /** Parts of the school's own. */
  parts: z.array(ownPart, { error: 'a list of parts, each { number, title, idea }' }).default([]),
  /** What comes first, and into which part a lesson is moved. */
  order,
  /** Names of cells as the school's players say them. */
  aliases,
});

/**
 * What a school sets for its site, `content/site.yaml`. Every field may be left out, so that a newer version of Barwright
 * never has to touch a school's file.
 */
export const siteSchema = siteFields
  .refine(({ colors, colours }) => !colors || !colours, {
    error: 'nothing beside "colors", which is the same setting',
    path: ['colours'],
  })
  .transform(({ colours, ...site }) => ({ ...site, colors: site.colors ?? colours }));

/** What the site's file says, with what it leaves out. */
export type SiteData = z.infer<typeof siteSchema>;
