import type { Milliseconds } from '../core/index.ts';
import { loadAgain } from './load-again.ts';
import type { Sequencer } from './engine/sequencer.ts';

/** A last stroke rings on for so long; a drummer who starts again at once does not wait for the loudspeaker. */
const REST_MS: Milliseconds = 4000;

type OpenSequencer = (context: AudioContext) => Promise<Sequencer>;

const openSequencer: OpenSequencer = async (context) => {
  const engine = await loadAgain(() => import('./engine/sequencer.ts'));
  if (context.state === 'closed') throw new Error('the context was closed meanwhile');
  return engine.openSequencer(context);
};

/** The audio output of a page: one context, and what plays on it, for all its players. */
export class AudioOutput {
  readonly #openSequencer: OpenSequencer;
  #context?: AudioContext | undefined;
  #sequencer?: Promise<Sequencer> | undefined;
  #resting?: ReturnType<typeof setTimeout>;

  constructor(open: OpenSequencer = openSequencer) {
    this.#openSequencer = open;
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
  sequencer(): Promise<Sequencer> {
    const context = this.open();
    const sequencer = (this.#sequencer ??= this.#openSequencer(context));
    sequencer.catch(() => {
      if (this.#sequencer === sequencer) this.#sequencer = undefined;
    });
    return sequencer;
  }

  /** Lets the loudspeaker go to sleep if nobody wants it again soon. */
  rest(): void {
    clearTimeout(this.#resting);
    this.#resting = setTimeout(() => void this.#context?.suspend().catch(() => undefined), REST_MS);
  }

  /** Gives up the context and all that was made for it, so that the next press begins with a new one. */
  close(): void {
    clearTimeout(this.#resting);
    const [context, sequencer] = [this.#context, this.#sequencer];
    this.#context = undefined;
    this.#sequencer = undefined;
    sequencer?.then((opened) => opened.dispose()).catch(() => undefined);
    if (context && context.state !== 'closed') context.close().catch(() => undefined);
  }
}

/** The output of this page. */
export const pageOutput = new AudioOutput();
