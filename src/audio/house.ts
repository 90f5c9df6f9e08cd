import type { Milliseconds } from '../core/index.ts';
import type { Stage } from './stage/stage.ts';

/** The sound of a page: one audio context and one stage for all its players. */
export interface House {
  /** The context, opened or woken up; to be called inside a press. */
  open(): AudioContext;
  /** The stage on that context, loaded when it is first wanted; rejects, and can be tried again, where loading fails. */
  stage(): Promise<Stage>;
  /** Lets the loudspeaker go to sleep if nobody wants it again soon. */
  rest(): void;
}

/** A last stroke rings on for so long; a drummer who starts again at once does not wait for the loudspeaker. */
const REST_MS: Milliseconds = 4000;

type OpenStage = (context: AudioContext) => Promise<Stage>;

const loadStage: OpenStage = async (context) => (await import('./stage/open.ts')).openStage(context);

/** A house with a way to open its stage. */
export function createHouse(openStage: OpenStage = loadStage): House {
  let context: AudioContext | undefined;
  let stage: Promise<Stage> | undefined;
  let resting: ReturnType<typeof setTimeout> | undefined;

  // Fewer interruptions are worth a few milliseconds: what is heard and what lights up are matched anyway.
  const opened = (): AudioContext => (context ??= new AudioContext({ latencyHint: 'balanced' }));

  const load = async (): Promise<Stage> => {
    try {
      return await openStage(opened());
    } catch (error) {
      stage = undefined;
      throw error;
    }
  };

  return {
    open() {
      clearTimeout(resting);
      const own = opened();
      // Where it may not sound it stays suspended; the player watches its state.
      own.resume().catch(() => undefined);
      return own;
    },
    stage: () => (stage ??= load()),
    rest() {
      clearTimeout(resting);
      resting = setTimeout(() => void context?.suspend().catch(() => undefined), REST_MS);
    },
  };
}

/** The house of this page. */
export const pageHouse: House = createHouse();
