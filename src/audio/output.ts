import type { Milliseconds } from '../core/index.ts';
import { loadAgain } from './load-again.ts';
import type { Stage } from './stage/stage.ts';

/** A last stroke rings on for so long; a drummer who starts again at once does not wait for the loudspeaker. */
const REST_MS: Milliseconds = 4000;

type OpenStage = (context: AudioContext) => Promise<Stage>;

const openStage: OpenStage = async (context) => {
  const opener = await loadAgain(() => import('./stage/open.ts'));
  if (context.state === 'closed') throw new Error('the context was closed meanwhile');
  return opener.openStage(context);
};

/** The audio output of a page: one context, and what plays on it, for all its players. */
export class AudioOutput {
  readonly #openStage: OpenStage;
  #context?: AudioContext | undefined;
  #stage?: Promise<Stage> | undefined;
  #resting?: ReturnType<typeof setTimeout>;

  constructor(open: OpenStage = openStage) {
    this.#openStage = open;
  }

  /** The context, opened or woken up; to be called inside a press. Throws where the browser gives none. */
  open(): AudioContext {
    clearTimeout(this.#resting);
    if (this.#context?.state === 'closed') this.close();
    // Fewer interruptions are worth a few milliseconds: what is heard and what lights up are matched anyway.
    const context = (this.#context ??= new AudioContext({ latencyHint: 'balanced' }));
    // Where it may not sound it stays suspended; the player watches its state.
    context.resume().catch(() => undefined);
    return context;
  }

  /** What plays on the context, loaded when it is first wanted; rejects, and can be tried again, where loading fails. */
  stage(): Promise<Stage> {
    const context = this.open();
    const stage = (this.#stage ??= this.#openStage(context));
    stage.catch(() => {
      if (this.#stage === stage) this.#stage = undefined;
    });
    return stage;
  }

  /** Lets the loudspeaker go to sleep if nobody wants it again soon. */
  rest(): void {
    clearTimeout(this.#resting);
    this.#resting = setTimeout(() => void this.#context?.suspend().catch(() => undefined), REST_MS);
  }

  /** Gives up the context and all that was made for it, so that the next press begins with a new one. */
  close(): void {
    clearTimeout(this.#resting);
    const [context, stage] = [this.#context, this.#stage];
    this.#context = undefined;
    this.#stage = undefined;
    stage?.then((opened) => opened.dispose()).catch(() => undefined);
    if (context && context.state !== 'closed') context.close().catch(() => undefined);
  }
}

/** The output of this page. */
export const pageOutput = new AudioOutput();
