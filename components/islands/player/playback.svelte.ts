import { createPlayer, type PlayerEvent, type PlayRequest, type Position } from '../../../src/audio/index.ts';

/** What one control on the page plays, as state: whether it sounds, and why not. */
export class Playback {
  readonly #player = createPlayer();
  #status = $state.raw<PlayerEvent>({ state: 'stopped' });
  readonly #active = $derived(this.#status.state === 'opening' || this.#status.state === 'playing');

  constructor() {
    this.#player.on((event) => (this.#status = event));
  }

  /** The state of the sound and the reason for it. */
  get status(): PlayerEvent {
    return this.#status;
  }

  /** Whether it sounds or is about to. */
  get active(): boolean {
    return this.#active;
  }

  /** Plays from the beginning; to be called inside a press, even where the request is still to come. */
  play(request: PlayRequest | Promise<PlayRequest>): void {
    this.#player.play(request);
  }

  /** Goes on from the same place as the request has it; does nothing while stopped. */
  change(request: PlayRequest): void {
    this.#player.change(request);
  }

  stop(): void {
    this.#player.stop();
  }

  /** What is heard now. */
  position(): Position | undefined {
    return this.#player.position();
  }

  dispose(): void {
    this.#player.dispose();
  }
}
