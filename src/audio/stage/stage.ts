import type { Milliseconds, Seconds } from '../../core/index.ts';
import { Conductor } from '../conductor/conductor.ts';
import type { PlayRequest, Position } from '../types.ts';
import { METRONOME_VOICES, voicesOf, type VoiceName } from '../voices/index.ts';
import { Bank, type Renderer } from './bank.ts';
import { openGraph, type Graph } from './graph.ts';
import { heardTime } from './heard.ts';
import { Striker } from './striker.ts';

/** How far ahead sounds are ordered: a page may stall for so long; in the background timers come once a second. */
const AHEAD: Record<DocumentVisibilityState, Seconds> = { visible: 1.5, hidden: 5 };
/** How often more are ordered. */
const PUMP_MS: Milliseconds = 200;
/** A stage that was silenced opens its fader again this much before the next first sound. */
const FADER_LEAD: Seconds = 0.05;

/** Every voice a request needs. */
export function voicesFor({ timeline, check }: PlayRequest): VoiceName[] {
  const timelines = check ? [timeline, check.timeline] : [timeline];
  return [...new Set([...METRONOME_VOICES, ...timelines.flatMap(voicesOf)])];
}

/** What a stage is built on. */
export interface StageParts {
  context: AudioContext;
  renderer: Renderer;
  /** False for the sound without its room. */
  room?: boolean;
  /** How far ahead sounds are ordered, while the page is seen and while it is not. */
  ahead?: Record<DocumentVisibilityState, Seconds>;
}

/** One audio context made ready to play: its sounds, its graph and who conducts them. It plays one request at a time. */
export class Stage {
  readonly graph: Graph;
  readonly #context: AudioContext;
  readonly #bank: Bank;
  readonly #striker: Striker;
  readonly #ahead: Record<DocumentVisibilityState, Seconds>;
  #wantsRoom: boolean;
  #conductor?: Conductor;
  #timer?: ReturnType<typeof setInterval>;

  constructor({ context, renderer, room = true, ahead = AHEAD }: StageParts) {
    this.#context = context;
    this.#bank = new Bank(context, renderer);
    this.graph = openGraph(context);
    this.#striker = new Striker(context, this.graph, this.#bank);
    this.#wantsRoom = room;
    this.#ahead = ahead;
  }

  /** Resolves once the request can be played. The room comes when it is ready; nobody waits for it. */
  async prepare(request: PlayRequest): Promise<void> {
    const loading = this.#bank.load(voicesFor(request));
    this.#furnish();
    await loading;
  }

  /** Plays a request that was prepared, from the beginning. `done` is called when its last bar is over. */
  begin(request: PlayRequest, done: () => void): void {
    this.end();
    const conductor = new Conductor(this.#striker);
    conductor.start(request);
    this.graph.rise(this.#context.currentTime + FADER_LEAD);
    this.#conductor = conductor;
    this.#timer = setInterval(() => this.#pump(done), PUMP_MS);
    this.#pump(done);
  }

  /** Goes on as a request has it that was prepared. */
  change(request: PlayRequest): void {
    this.#conductor?.change(request);
    this.order();
  }

  /** Orders what is to sound soon; needed at once when the page goes into the background. */
  order(): void {
    this.#conductor?.pump(this.#ahead[document.visibilityState]);
  }

  /** Silence, at once. */
  end(): void {
    if (!this.#conductor) return;
    this.#release();
    this.#striker.stopAll(this.graph.fade(this.#context.currentTime));
  }

  /** What is heard now. */
  position(): Position | undefined {
    return this.#conductor?.positionAt(heardTime(this.#context, performance.now()));
  }

  dispose(): void {
    this.end();
    this.#bank.dispose();
  }

  #pump(done: () => void): void {
    this.order();
    const end = this.#conductor?.end ?? Infinity;
    if (heardTime(this.#context, performance.now()) < end) return;
    this.#release();
    done();
  }

  /** What sounds may ring on. */
  #release(): void {
    clearInterval(this.#timer);
    this.#conductor = undefined;
  }

  /** Without its room the kit sounds dry, but it sounds: that is no reason to refuse to play. */
  #furnish(): void {
    if (!this.#wantsRoom) return;
    this.#wantsRoom = false;
    this.#bank.room().then(
      (answer) => this.graph.furnish(answer),
      () => undefined,
    );
  }
}
