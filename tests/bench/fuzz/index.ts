import type { Attack } from './attack.ts';
import { links } from './links.ts';
import { puzzles } from './puzzles.ts';
import { storedFiles } from './stored-files.ts';
import { texts } from './texts.ts';

/** Every attack there is. */
export const ATTACKS: readonly Attack[] = [texts, puzzles, storedFiles, links];
