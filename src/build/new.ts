import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readLibrary } from './content/library.ts';
import { listFiles } from './content/files.ts';
import { HELP, readArgs } from './new/command.ts';
import { make } from './new/make.ts';

/** What a run of the command says, and whether it made something. */
export interface Said {
  ok: boolean;
  text: string;
}

/**
 * Makes a file in the content folder below `root`, as the command line asks. Refuses, with the reason, what would write
 * over a file or stand where nothing can stand.
 *
 * @example create(['lesson', 'Our warm-up'], '/nowhere') // { ok: false, text: 'There is no folder content here.' }
 */
export function create(args: readonly string[], root: string): Said {
  const asked = readArgs(args);
  if (asked.ask === 'help') return { ok: true, text: HELP };
  if (asked.ask === 'refused') return { ok: false, text: asked.says };
  if (!existsSync(join(root, 'content'))) return { ok: false, text: 'There is no folder content here.' };
  const made = make(readLibrary(listFiles(root)), asked);
  if (!made.ok) return { ok: false, text: made.says };
  const path = join(root, made.file);
  mkdirSync(dirname(path), { recursive: true });
  // Should the file be there after all, writing fails rather than losing it.
  writeFileSync(path, made.text, { flag: 'wx' });
  return { ok: true, text: saysOf(made) };
}

const saysOf = ({ file, says, next }: { file: string; says: string; next: string }) => `Made ${file}
${says}

Next:
  1. ${next}
  2. npm run check:content   says whether everything fits, and what does not.
  3. npm run dev             shows it while you write.`;

// As a program: `npm run new -- lesson "Title" --part 6`; npm runs it in the folder of the project.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { ok, text } = create(process.argv.slice(2), process.cwd());
  (ok ? console.log : console.error)(text);
  process.exitCode = ok ? 0 : 1;
}
