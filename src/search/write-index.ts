import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { INDEX_FOLDER } from './filters.ts';
import { TERMS_PAGE, termRecords, type TermRecord } from './term-records.ts';

/** What lists other pages, and the terms, which are found by themselves: words in them are no reason to show the list. */
const LISTED = ['.rows', '.ladder', '.entry'];

/**
 * Indexes the built pages below a folder and writes the index beside them; gives the number of pages that can be found.
 * Pages say with `data-pagefind-body` what of them can be found; a term of the glossary counts as a page. Throws with what
 * the indexer says.
 */
export async function writeIndex(folder: string): Promise<number> {
  try {
    const { index, errors } = await createIndex({ excludeSelectors: LISTED });
    if (!index) throw new Error(errors.join('\n'));
    sound(await index.addDirectory({ path: folder }));
    for (const record of await termsOf(folder)) sound(await index.addHTMLFile(record));
    sound(await index.writeFiles({ outputPath: join(folder, INDEX_FOLDER) }));
    return await pagesIn(join(folder, INDEX_FOLDER));
  } finally {
    await close();
  }
}

/** None where the site has no glossary. */
async function termsOf(folder: string): Promise<TermRecord[]> {
  const file = join(folder, TERMS_PAGE);
  return existsSync(file) ? termRecords(await readFile(file, 'utf8')) : [];
}

/** The indexer counts every page it has read; its entry file those that asked to be found. */
async function pagesIn(index: string): Promise<number> {
  const entry = JSON.parse(await readFile(join(index, 'pagefind-entry.json'), 'utf8')) as {
    languages: Record<string, { page_count: number }>;
  };
  return Object.values(entry.languages).reduce((sum, { page_count }) => sum + page_count, 0);
}

function sound<T extends { errors: string[] }>(answer: T): T {
  if (answer.errors.length) throw new Error(`the search index could not be made: ${answer.errors.join('\n')}`);
  return answer;
}
