import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** A file under the content folder. */
export interface FoundFile {
  /** Relative to the root of the project: `content/cells/kick.yaml`. */
  file: string;
  /** Relative to the content folder, in steps. */
  steps: string[];
  path: string;
}

/** All files below a folder in order of their names; what begins with a dot is passed over. */
export function listFiles(root: string, steps: string[] = []): FoundFile[] {
  const entries = readdirSync(join(root, 'content', ...steps), { withFileTypes: true });
  return entries
    .filter(({ name }) => !name.startsWith('.'))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) =>
      entry.isDirectory() ? listFiles(root, [...steps, entry.name]) : [found(root, [...steps, entry.name])],
    );
}

const found = (root: string, steps: string[]): FoundFile => ({
  file: ['content', ...steps].join('/'),
  steps,
  path: join(root, 'content', ...steps),
});
