import { getSite } from '../catalogue/index.ts';
import { darkWarm } from '../curriculum/index.ts';

/** The school's own warm colour, as a style sheet: in the page itself its policy would not allow it. */
export async function GET(): Promise<Response> {
  const { colours } = await getSite();
  const css = colours ? `:root{--school-warm:${colours.warm};--school-warm-dark:${darkWarm(colours)}}` : '';
  return new Response(css, { headers: { 'content-type': 'text/css; charset=utf-8' } });
}
