import type { Attack } from './attack.ts';
import { puzzles } from './puzzles.ts';
import { texts } from './texts.ts';

/** Every attack there is. */
export const ATTACKS: readonly Attack[] = [texts, puzzles];
