import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { INDEX_FOLDER } from './filters.ts';

/**
 * Indexes the built pages below a folder and writes the index beside them; gives the number of pages that can be found.
 * Pages say with `data-pagefind-body` what of them can be found. Throws with what the indexer says.
 */
export async function writeIndex(folder: string): Promise<number> {
  try {
    const { index, errors } = await createIndex({});
    if (!index) throw new Error(errors.join('\n'));
    sound(await index.addDirectory({ path: folder }));
    sound(await index.writeFiles({ outputPath: join(folder, INDEX_FOLDER) }));
    return await pagesIn(join(folder, INDEX_FOLDER));
  } finally {
    await close();
  }
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
