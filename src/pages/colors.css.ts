import { getSite } from '../catalogue/index.ts';
import { darkWarm } from '../curriculum/index.ts';

/** The school's own warm color, as a style sheet: in the page itself its policy would not allow it. */
export async function GET(): Promise<Response> {
  const { colors } = await getSite();
  const css = colors ? `:root{--school-warm:${colors.warm};--school-warm-dark:${darkWarm(colors)}}` : '';
  return new Response(css, { headers: { 'content-type': 'text/css; charset=utf-8' } });
}
