import { z } from 'astro/zod';
import { countSystem, line, oneOf } from './fields.ts';

const colour = () =>
  z.string({ error: 'a colour like "#a8481c"' }).regex(/^#[0-9a-f]{6}$/i, { error: 'a colour like "#a8481c"' });

/** What a school sets for its site, `content/site.yaml`. */
export const siteSchema = z.strictObject({
  /** Stands in every page's title. */
  name: line('the name of the site', 60),
  school: line('the name of the school', 80),
  /** Language of the course text: `en`, `en-GB`. */
  language: z
    .string({ error: 'a language like en or en-GB' })
    .regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, { error: 'a language like en or en-GB' }),
  /** A line at the foot of the pages: whom to ask. */
  contact: line('a line that says whom to ask'),
  /** The counting system that bars begin with. */
  counting: countSystem(),
  /** What a bar is called. */
  barWord: oneOf(['bar', 'measure']),
  /** The one warm colour, on light and on dark paper. */
  colours: z.strictObject({ warm: colour(), warmDark: colour() }, { error: 'colours: { warm, warmDark }' }).optional(),
});

/** What the site's file says. */
export type SiteData = z.infer<typeof siteSchema>;
