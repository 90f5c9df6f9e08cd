/** The headings of a text, each with a link to copy; handed to a text when it is rendered. */
import H2 from './H2.astro';
import H3 from './H3.astro';
import H4 from './H4.astro';

/** By element. */
export const headings = { h2: H2, h3: H3, h4: H4 };
