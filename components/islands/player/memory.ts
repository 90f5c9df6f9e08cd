import { openPlayers } from '../../../src/storage/index.ts';
import type { ExerciseMemory, PlayerStore, SiteSettings } from '../../../src/storage/index.ts';
import type { Sent } from '../links/sent.svelte.ts';

/** One store for all players of a page, opened on the first touch. */
let opened: PlayerStore | undefined;
const store = () => (opened ??= openPlayers());

/** Said once a page, by whichever player has to say it. */
let said = false;

/** What is remembered for one player: tempo and lead under its id, the rest for the site. */
export function createMemory(id: string) {
  let sent: Sent | undefined;
  return {
    recall() {
      const own = { ...store().exercise(id), site: store().site() };
      return sent ? sent.over(own) : own;
    },
    /** Lays what a link set over what is remembered. */
    receive: (settings: Sent | undefined) => (sent = settings),
    setExercise(change: ExerciseMemory) {
      sent?.giveUp(change);
      store().setExercise(id, change);
    },
    setSite(change: Partial<SiteSettings>) {
      sent?.giveUp(change);
      store().setSite(change);
    },
    resetHere() {
      sent?.giveUp({ tempo: 0, lead: 0 });
      store().resetExercise(id);
    },
    resetAll() {
      sent?.giveUp({ tempo: 0, lead: 0, flamMs: 0 });
      store().resetPlayers();
    },
    on: (listener: () => void) => store().on(listener),
    /** True for the first one who asks after the browser has refused to keep something. */
    mustSayForgetful(): boolean {
      const must = !store().persistent && !said;
      said ||= must;
      return must;
    },
  };
}
