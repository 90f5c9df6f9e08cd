import { fileBeside } from '../../curriculum/index.ts';
import type { WordUse } from './lesson-file.ts';
import type { Library } from './library.ts';
import { knownHint } from './nearest.ts';

/** Which attributes name a file beside the lesson, and what kind of file. */
const FILES: Record<string, Record<string, 'pictures' | 'films'>> = {
  Picture: { file: 'pictures' },
  Video: { file: 'films', poster: 'pictures', captions: 'films' },
};

/** The pictures and films of lessons are there; what an attribute may look like is the vocabulary's to say. */
export function checkMedia(library: Library): void {
  for (const { file, lesson } of library.lessons) for (const use of lesson?.words ?? []) checkWord(library, file, use);
}

function checkWord(library: Library, file: string, use: WordUse): void {
  for (const [attribute, shelf] of Object.entries(FILES[use.word.name] ?? {})) {
    const name = use.attributes?.[attribute];
    if (typeof name !== 'string' || library[shelf].has(fileBeside(file, name))) continue;
    library.faults.push({
      file,
      ...use.placeOf(attribute),
      message: `there is no file "${name}" beside this lesson`,
      hint: knownHint(name.replace(/^\.\//, ''), namesBeside(library[shelf], file)),
    });
  }
}

/** The names of the files of a kind that lie beside a lesson. */
function namesBeside(shelf: ReadonlySet<string>, lesson: string): string[] {
  const folder = fileBeside(lesson, '');
  return [...shelf].filter((path) => path.startsWith(folder)).map((path) => path.slice(folder.length));
}
