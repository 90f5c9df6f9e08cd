import { LoadError } from './load-again.ts';
import { pageOutput, type AudioOutput } from './output.ts';
import type { Sequencer } from './engine/sequencer.ts';
import { watchStall } from './stall.ts';
import type { Player, PlayerEvent, PlayerReason, PlayerState, PlayRequest, Position } from './types.ts';

/** Who sounds now: a player that starts stops the other. */
const onAir: { player?: Player | undefined } = {};

type Listener = (event: PlayerEvent) => void;

/** Resolves when a context makes sound; never, where it never does. */
function running(context: AudioContext, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const look = (): void => {
      if (context.state === 'running') resolve();
    };
    context.addEventListener('statechange', look, { signal });
    look();
  });
}

class OutputPlayer implements Player {
  readonly #output: AudioOutput;
  readonly #listeners = new Set<Listener>();
  #state: PlayerState = 'stopped';
  #request?: PlayRequest | undefined;
  /** From a press to the end of what it began. */
  #attempt?: AbortController | undefined;
  /** What the attempt waits for, as the reason it would fail for. */
  #waiting: PlayerReason = 'failed';
  /** The sequencer, from the moment it plays for this player. */
  #sequencer?: Sequencer | undefined;

  constructor(output: AudioOutput) {
    this.#output = output;
  }

  get state(): PlayerState {
    return this.#state;
  }

  play(request: PlayRequest | Promise<PlayRequest>): void {
    this.#release();
    if (onAir.player !== this) onAir.player?.stop();
    onAir.player = this;
    this.#request = undefined;
    const attempt = (this.#attempt = new AbortController());
    this.#waiting = 'no-output';
    this.#enter('opening');
    this.#begin(request, attempt.signal).catch((error: unknown) => this.#fail(attempt, error));
  }

  change(request: PlayRequest): void {
    const attempt = this.#attempt;
    if (!attempt) return;
    this.#request = request;
    if (this.#sequencer) this.#follow(this.#sequencer, request).catch((error: unknown) => this.#fail(attempt, error));
  }

  stop(): void {
    this.#leave('stopped');
  }

  position(): Position | undefined {
    return this.#sequencer?.position();
  }

  on(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }

  dispose(): void {
    this.stop();
    this.#listeners.clear();
  }

  /** Up to the first wait it runs inside the press: there the context is opened. */
  async #begin(wanted: PlayRequest | Promise<PlayRequest>, signal: AbortSignal): Promise<void> {
    // Where no context can be opened, nobody waits for this any more.
    if (wanted instanceof Promise) wanted.catch(() => undefined);
    const context = this.#output.open();
    this.#watch(context, signal);
    this.#waiting = 'loading';
    const [sequencer, first] = await Promise.all([this.#output.sequencer(), wanted]);
    signal.throwIfAborted();
    this.#request ??= first;
    this.#waiting = 'sounds';
    const request = await this.#prepared(sequencer, signal);
    this.#waiting = 'suspended';
    await running(context, signal);
    signal.throwIfAborted();
    this.#waiting = 'failed';
    this.#sequencer = sequencer;
    sequencer.start(request, () => this.#leave('stopped'));
    this.#enter('playing');
    // What was asked for while the context woke up.
    if (this.#request !== request) this.change(this.#request);
  }

  /** The request, once its sounds are there; if another one came meanwhile, that one. */
  async #prepared(sequencer: Sequencer, signal: AbortSignal): Promise<PlayRequest> {
    const request = this.#request!;
    await sequencer.prepare(request);
    signal.throwIfAborted();
    return this.#request === request ? request : this.#prepared(sequencer, signal);
  }

  async #follow(sequencer: Sequencer, request: PlayRequest): Promise<void> {
    this.#waiting = 'sounds';
    await sequencer.prepare(request);
    this.#waiting = 'failed';
    if (this.#sequencer === sequencer && this.#request === request) sequencer.change(request);
  }

  #watch(context: AudioContext, signal: AbortSignal): void {
    const end = watchStall(
      () => this.#mark(context),
      (stalled) => this.#stall(stalled),
    );
    signal.addEventListener('abort', end);
    context.addEventListener('statechange', () => this.#obey(context.state), { signal });
    context.addEventListener('error', () => this.#lose('no-device'), { signal });
    document.addEventListener('visibilitychange', () => this.#turnAway(context), { signal });
    window.addEventListener('pagehide', () => this.#leave('stopped', 'hidden'), { signal });
  }

  /** What moves on as long as all is well: the clock of what sounds, or what is waited for. */
  #mark(context: AudioContext): unknown {
    if (this.#sequencer) return context.currentTime;
    // Who makes the sounds watches that itself: there may be many of them.
    return this.#waiting === 'sounds' ? {} : this.#waiting;
  }

  /** A clock that stands still may go on; what does not even begin is given up. An interruption ends by itself. */
  #stall(stalled: boolean): void {
    if (!this.#sequencer) this.#lose(this.#waiting);
    else if (this.#state !== 'interrupted')
      this.#enter(stalled ? 'silent' : 'playing', stalled ? 'no-device' : undefined);
  }

  /** Follows the state of the context while playing: a call, another program, a headset taken off. */
  #obey(state: AudioContext['state']): void {
    if (state === 'closed') this.#lose('closed');
    if (!this.#sequencer) return;
    if (state === 'running') this.#enter('playing');
    else this.#enter('interrupted', 'suspended');
  }

  #turnAway(context: AudioContext): void {
    this.#sequencer?.scheduleAhead();
    if (document.visibilityState === 'visible' && this.#state === 'interrupted')
      context.resume().catch(() => undefined);
  }

  #fail(attempt: AbortController, error: unknown): void {
    if (this.#attempt !== attempt) return;
    if (error instanceof LoadError) this.#lose('loading');
    // What arrived and then broke did not fail to arrive.
    else this.#lose(this.#waiting === 'loading' ? 'failed' : this.#waiting);
  }

  /** Ends without sound; the next press begins with a new context, a new worker, code that is asked for again. */
  #lose(reason: PlayerReason): void {
    this.#leave('silent', reason);
    this.#output.close();
  }

  #leave(state: PlayerState, reason?: PlayerReason): void {
    if (this.#attempt) this.#output.rest();
    this.#release();
    if (onAir.player === this) onAir.player = undefined;
    this.#enter(state, reason);
  }

  /** Ends what sounds and what was begun; a context whose clock stands still is of no more use. */
  #release(): void {
    if (this.#attempt && this.#state === 'silent') this.#output.close();
    this.#attempt?.abort();
    this.#attempt = undefined;
    this.#sequencer?.stop();
    this.#sequencer = undefined;
  }

  #enter(state: PlayerState, reason?: PlayerReason): void {
    if (state === this.#state) return;
    this.#state = state;
    const event: PlayerEvent = reason ? { state, reason } : { state };
    for (const listener of [...this.#listeners]) listener(event);
  }
}

/** A player; light, until it plays for the first time. All players of a page share its one output. */
export function createPlayer(output: AudioOutput = pageOutput): Player {
  return new OutputPlayer(output);
}
