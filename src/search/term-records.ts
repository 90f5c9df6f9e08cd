/** The terms of the glossary as pages of their own for the index: each is found by itself, at its own anchor. */

/** The page that is cut up, below the base path. */
export const TERMS_PAGE = 'glossary/index.html';

/** A page for the index that is not there as a file. */
export interface TermRecord {
  /** Below the base path. */
  url: string;
  content: string;
}

const LANGUAGE = /<html[^>]*\slang="([^"]*)"/;
const ENTRY = /<section class="entry" aria-labelledby="([^"]+)"[^>]*>([\s\S]*?)<\/section>/g;

/**
 * A record for each term of the built glossary: its name as title, what it says and its other names. A term's other names
 * count nearly as much as its own.
 */
export function termRecords(html: string): TermRecord[] {
  const language = LANGUAGE.exec(html)?.[1] ?? 'en';
  return [...html.matchAll(ENTRY)].map(([, id, entry]) => ({
    url: `/glossary/#${id}`,
    content: page(language, entry),
  }));
}

function page(language: string, entry: string): string {
  const said = entry
    .replace(/<h2[^>]*>/, '<h1 data-pagefind-meta="title">')
    .replace('</h2>', '</h1>')
    .replace('<p class="also">', '<p data-pagefind-weight="5">')
    .replace('<p class="see">', '<p data-pagefind-ignore>');
  return `<!doctype html><html lang="${language}"><head><title></title></head><body><main data-pagefind-body data-pagefind-filter="kind:term">${said}</main></body></html>`;
}
