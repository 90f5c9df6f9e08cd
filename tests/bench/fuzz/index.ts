import type { Attack } from './attack.ts';
import { barMath } from './bar-math.ts';
import { links } from './links.ts';
import { problems } from './problems.ts';
import { puzzles } from './puzzles.ts';
import { schedules } from './schedules.ts';
import { storedFiles } from './stored-files.ts';
import { texts } from './texts.ts';

/** Every attack there is. */
export const ATTACKS: readonly Attack[] = [texts, problems, schedules, puzzles, storedFiles, links, barMath];
