import { openStorage } from '../../../src/storage/index.ts';
import type { ExerciseMemory, PlayerStore, SiteSettings } from '../../../src/storage/index.ts';

/** One store for all players of a page, opened on the first touch. */
let opened: PlayerStore | undefined;
const store = () => (opened ??= openStorage());

/** Said once a page, by whichever player has to say it. */
let said = false;

/** What is remembered for one player: tempo and lead under its id, the rest for the site. */
export function createMemory(id: string) {
  return {
    recall: () => ({ ...store().exercise(id), site: store().site() }),
    setExercise: (change: ExerciseMemory) => store().setExercise(id, change),
    setSite: (change: Partial<SiteSettings>) => store().setSite(change),
    resetHere: () => store().resetExercise(id),
    resetAll: () => store().resetPlayers(),
    on: (listener: () => void) => store().on(listener),
    /** True for the first one who asks after the browser has refused to keep something. */
    mustSayForgetful(): boolean {
      const must = !store().persistent && !said;
      said ||= must;
      return must;
    },
  };
}
