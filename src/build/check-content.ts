import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkCells } from './content/check-bars.ts';
import { checkCourse, checkSpokenParts } from './content/check-course.ts';
import { checkExercises, checkRudiments, checkTerms } from './content/check-entries.ts';
import { checkLessons } from './content/check-lessons.ts';
import { checkMedia, checkReferences } from './content/check-references.ts';
import { checkRepeats, checkTempos, checkUnused } from './content/check-exercises.ts';
import { checkSite } from './content/check-site.ts';
import { checkSlips } from './content/check-slips.ts';
import { printFaults, printWarnings, sortFaults, type ContentFault } from './content/content-fault.ts';
import { readLibrary, type Library } from './content/library.ts';
import { listFiles } from './content/files.ts';

/** What is wrong with a content folder, and what is only worth a look; both by file and line. */
export interface Checked {
  faults: ContentFault[];
  warnings: ContentFault[];
}

/** The faults of the content folder below `root`. Never throws, whatever the files hold. */
export const checkContent = (root: string): ContentFault[] => lookAtContent(root).faults;

/** Checks every file of the content folder below `root`. Never throws, whatever the files hold. */
export function lookAtContent(root: string): Checked {
  const folder = join(root, 'content');
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    return { faults: [missing('content', 'there is no folder content')], warnings: [] };
  const library = readLibrary(listFiles(root));
  checkCells(library);
  checkExercises(library);
  checkRudiments(library);
  checkTerms(library);
  checkLessons(library);
  checkMedia(library);
  checkCourse(library);
  checkSite(library);
  checkSpokenParts(library);
  checkReferences(library);
  checkRepeats(library);
  checkTempos(library);
  checkUnused(library);
  checkSlips(library, root);
  return {
    faults: sortFaults([...library.faults, ...missingFiles(library)]),
    warnings: sortFaults(library.warnings),
  };
}

const missing = (file: string, message: string): ContentFault => ({ file, line: 1, column: 1, message });

function missingFiles({ site, course, pages }: Library): ContentFault[] {
  return [
    ...(site ? [] : [missing('content/site.yaml', 'the file is missing: it says what the school is called')]),
    ...(course ? [] : [missing('content/course.yaml', 'the file is missing: it holds the plan of the course')]),
    ...(pages.has('hearing')
      ? []
      : [missing('content/pages/hearing.md', 'the file is missing: every caution leads to it')]),
  ];
}

/** Prints the faults and gives the exit code. */
function main(root: string): number {
  const { faults, warnings } = lookAtContent(root);
  if (warnings.length) console.log(`${printWarnings(warnings)}\n`);
  if (faults.length) console.error(printFaults(faults));
  else console.log('The content is sound.');
  return faults.length ? 1 : 0;
}

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

// As a program: `node src/build/check-content.ts [folder that holds content]`.
if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = main(process.argv[2] ?? ROOT);
