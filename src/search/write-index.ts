import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { INDEX_FOLDER } from './filters.ts';

/**
 * Indexes the built pages below a folder and writes the index beside them; gives the number of pages found. Pages say
 * with `data-pagefind-body` what of them can be found. Throws with what the indexer says.
 */
export async function writeIndex(folder: string): Promise<number> {
  try {
    const { index, errors } = await createIndex({});
    if (!index) throw new Error(errors.join('\n'));
    const pages = sound(await index.addDirectory({ path: folder }));
    sound(await index.writeFiles({ outputPath: join(folder, INDEX_FOLDER) }));
    return pages.page_count;
  } finally {
    await close();
  }
}

function sound<T extends { errors: string[] }>(answer: T): T {
  if (answer.errors.length) throw new Error(`the search index could not be made: ${answer.errors.join('\n')}`);
  return answer;
}
