import type { Milliseconds } from '../core/index.ts';
import { pageHouse, type House } from './house.ts';
import { pulseOf } from './pulse.ts';
import type { Stage } from './stage/stage.ts';
import type { Player, PlayerEvent, PlayerReason, PlayerState, PlayRequest, Position } from './types.ts';

/** How often it is looked at whether sound comes out at all. */
const PULSE_MS: Milliseconds = 500;

/** Who sounds now: a player that starts stops the other. */
const onAir: { player?: Player } = {};

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

class HousePlayer implements Player {
  readonly #house: House;
  readonly #listeners = new Set<Listener>();
  #state: PlayerState = 'stopped';
  #request?: PlayRequest;
  /** From a press to the end of what it began. */
  #take?: AbortController;
  /** The stage, from the moment it plays for this player. */
  #stage?: Stage;

  constructor(house: House) {
    this.#house = house;
  }

  get state(): PlayerState {
    return this.#state;
  }

  play(request: PlayRequest): void {
    this.#release();
    if (onAir.player !== this) onAir.player?.stop();
    onAir.player = this;
    this.#request = request;
    const take = (this.#take = new AbortController());
    this.#enter('opening');
    try {
      const context = this.#house.open();
      this.#watch(context, take.signal);
      this.#begin(context, take.signal).catch(() => this.#fail(take));
    } catch {
      this.#fail(take);
    }
  }

  change(request: PlayRequest): void {
    const take = this.#take;
    if (!take) return;
    this.#request = request;
    if (this.#stage) this.#follow(this.#stage, request).catch(() => this.#fail(take));
  }

  stop(): void {
    this.#leave('stopped');
  }

  position(): Position | undefined {
    return this.#stage?.position();
  }

  on(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }

  dispose(): void {
    this.stop();
    this.#listeners.clear();
  }

  async #begin(context: AudioContext, signal: AbortSignal): Promise<void> {
    const stage = await this.#house.stage();
    const request = await this.#prepared(stage);
    await running(context, signal);
    if (signal.aborted) return;
    this.#stage = stage;
    stage.begin(request, () => this.#leave('stopped'));
    this.#enter('playing');
    // What was asked for while the context woke up.
    if (this.#request !== request) this.change(this.#request!);
  }

  /** The request, once its sounds are there; if another one came meanwhile, that one. */
  async #prepared(stage: Stage): Promise<PlayRequest> {
    const request = this.#request!;
    await stage.prepare(request);
    return this.#request === request ? request : this.#prepared(stage);
  }

  async #follow(stage: Stage, request: PlayRequest): Promise<void> {
    await stage.prepare(request);
    if (this.#stage === stage && this.#request === request) stage.change(request);
  }

  #watch(context: AudioContext, signal: AbortSignal): void {
    const pulse = pulseOf(context, performance.now());
    const timer = setInterval(() => this.#feel(pulse(performance.now(), wasTouched())), PULSE_MS);
    signal.addEventListener('abort', () => clearInterval(timer));
    context.addEventListener('statechange', () => this.#obey(context.state), { signal });
    context.addEventListener('error', () => this.#enter('silent', 'no-device'), { signal });
    document.addEventListener('visibilitychange', () => this.#turnAway(context), { signal });
    window.addEventListener('pagehide', () => this.#leave('stopped', 'hidden'), { signal });
  }

  /** Takes note of whether sound comes out. An interruption is known to the browser and ends by itself. */
  #feel(reason: PlayerReason | undefined): void {
    if (reason && this.#state !== 'interrupted') this.#enter('silent', reason);
    if (!reason && this.#state === 'silent') this.#enter(this.#stage ? 'playing' : 'opening');
  }

  /** Follows the state of the context while playing: a call, another program, a headset taken off. */
  #obey(state: AudioContext['state']): void {
    if (!this.#stage) return;
    if (state === 'running') this.#enter('playing');
    else if (state === 'closed') this.#leave('silent', 'failed');
    else this.#enter('interrupted', 'suspended');
  }

  #turnAway(context: AudioContext): void {
    this.#stage?.order();
    if (document.visibilityState === 'visible' && this.#state === 'interrupted')
      context.resume().catch(() => undefined);
  }

  #fail(take: AbortController): void {
    if (this.#take === take) this.#leave('silent', 'failed');
  }

  #leave(state: PlayerState, reason?: PlayerReason): void {
    if (this.#take) this.#house.rest();
    this.#release();
    if (onAir.player === this) onAir.player = undefined;
    this.#enter(state, reason);
  }

  /** Ends what sounds and what was begun. */
  #release(): void {
    this.#take?.abort();
    this.#take = undefined;
    this.#stage?.end();
    this.#stage = undefined;
  }

  #enter(state: PlayerState, reason?: PlayerReason): void {
    if (state === this.#state) return;
    this.#state = state;
    const event: PlayerEvent = reason ? { state, reason } : { state };
    for (const listener of [...this.#listeners]) listener(event);
  }
}

/** Whether the visitor has touched the page yet; assumed where the browser does not say. */
function wasTouched(): boolean {
  return navigator.userActivation?.hasBeenActive ?? true;
}

/** A player; light, until it plays for the first time. All players of a page share its one sound. */
export function createPlayer(house: House = pageHouse): Player {
  return new HousePlayer(house);
}
