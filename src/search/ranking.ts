/** What of a question is looked for, and in which order pages are shown. */
import type { PagefindAnswer, PagefindPage, PagefindRanking } from './pagefind.ts';

/**
 * Short pages are preferred less than Pagefind has it: an exercise has few words because its bar says the rest, which makes
 * it no better an answer than a lesson. Ours, chosen by the questions of `tests/browser/search-questions.ts`.
 */
export const RANKING: PagefindRanking = { pageLength: 0.1 };

/** Little words with which a question is asked and which every page has. */
const LITTLE = new Set(
  'a an the i my me you your is are am was be do does did can could should would will what how why when where which who to of for with it that this'.split(
    ' ',
  ),
);

/**
 * The words of a question that tell something; all of them where none does.
 *
 * @example tellingWords('What is a rudiment?') // ['rudiment?']
 */
export function tellingWords(text: string): string[] {
  const words = text.split(/\s+/).filter(Boolean);
  const telling = words.filter((word) => !LITTLE.has(word.toLowerCase().replace(/[?!.,]+$/, '')));
  return telling.length > 0 ? telling : words;
}

/** Of how many pages titles are looked at. */
const CANDIDATES = 30;

/** The pages to show: those that are called what was asked for before the others, else in the order of the index. */
export async function titlesFirst(
  text: string,
  results: PagefindAnswer['results'],
  limit: number,
): Promise<PagefindPage[]> {
  const pages = await Promise.all(results.slice(0, Math.max(limit, CANDIDATES)).map((result) => result.data()));
  const called = ({ meta }: PagefindPage) => folded(meta.title ?? '') === folded(text);
  return [...pages.filter(called), ...pages.filter((page) => !called(page))].slice(0, limit);
}

/**
 * A title without what does not matter: capitals, the article, the plural, signs. "The Ghost Notes" is "ghost note".
 */
function folded(title: string): string {
  const words = title.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  return words
    .filter((word) => word !== 'the')
    .map((word) => word.replace(/(?<=\w{3})s$/, ''))
    .join(' ');
}

/**
 * Looks for all telling words of a question and, where no page has them all, for all but one of them: `most`.
 */
export async function askIndex(
  text: string,
  ask: (words: string | null) => Promise<PagefindAnswer>,
): Promise<{ results: PagefindAnswer['results']; most?: true }> {
  const words = tellingWords(text);
  const { results } = await ask(words.join(' ') || null);
  if (results.length > 0 || words.length < 2 || words.length > MOST_WORDS) return { results };
  const fewer = await Promise.all(words.map((_, left) => ask(words.filter((_, index) => index !== left).join(' '))));
  return { results: best(fewer.flatMap((answer) => answer.results)), most: true };
}

/** A longer question is asked once only: each word less is another search. */
const MOST_WORDS = 6;

/** Each page once, with its best score, the best first. */
function best(results: PagefindAnswer['results']): PagefindAnswer['results'] {
  const byPage = new Map<string, PagefindAnswer['results'][number]>();
  for (const one of results) if (one.score > (byPage.get(one.id)?.score ?? 0)) byPage.set(one.id, one);
  return [...byPage.values()].sort((a, b) => b.score - a.score);
}
