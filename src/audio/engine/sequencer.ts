import type { Milliseconds, Seconds } from '../../core/index.ts';
import { Scheduler } from '../scheduler/scheduler.ts';
import type { PlayRequest, Position } from '../types.ts';
import { METRONOME_VOICES, voicesOf, type VoiceName } from '../voices/index.ts';
import { SampleBank, type Renderer } from './sample-bank.ts';
import { openGraph, type Graph } from './graph.ts';
import { heardTime } from './heard-time.ts';
import { Sampler } from './sampler.ts';
import { workerRenderer } from './worker-renderer.ts';

/** How far ahead notes are scheduled: a page may stall for so long; in the background timers come once a second. */
const AHEAD: Record<DocumentVisibilityState, Seconds> = { visible: 1.5, hidden: 5 };
/** How often more are scheduled. */
const TICK_MS: Milliseconds = 200;
/** After a stop the fader opens again this much later, before the next first note. */
const FADER_LEAD: Seconds = 0.05;

/** Every voice a request needs. */
export function voicesFor({ timeline, check }: PlayRequest): VoiceName[] {
  const timelines = check ? [timeline, check.timeline] : [timeline];
  return [...new Set([...METRONOME_VOICES, ...timelines.flatMap(voicesOf)])];
}

/** What a sequencer is built on. */
export interface SequencerParts {
  context: AudioContext;
  renderer: Renderer;
  /** False for the sound without its room. */
  room?: boolean;
  /** How far ahead notes are scheduled, while the page is seen and while it is not. */
  ahead?: Record<DocumentVisibilityState, Seconds>;
}

/** One audio context made ready to play: its sampler, its graph, and a scheduler for what plays. It plays one request at a time. */
export class Sequencer {
  readonly graph: Graph;
  readonly #context: AudioContext;
  readonly #bank: SampleBank;
  readonly #sampler: Sampler;
  readonly #ahead: Record<DocumentVisibilityState, Seconds>;
  #wantsRoom: boolean;
  #scheduler?: Scheduler | undefined;
  #timer?: ReturnType<typeof setInterval>;

  constructor({ context, renderer, room = true, ahead = AHEAD }: SequencerParts) {
    this.#context = context;
    this.#bank = new SampleBank(context, renderer);
    this.graph = openGraph(context);
    this.#sampler = new Sampler(context, this.graph, this.#bank);
    this.#wantsRoom = room;
    this.#ahead = ahead;
  }

  /** Resolves once the request can be played. The room comes when it is ready; nobody waits for it. */
  async prepare(request: PlayRequest): Promise<void> {
    const loading = this.#bank.load(voicesFor(request));
    this.#addRoom();
    await loading;
  }

  /** Plays a request that was prepared, from the beginning. `done` is called when its last bar is over. */
  start(request: PlayRequest, done: () => void): void {
    this.stop();
    const scheduler = new Scheduler(this.#sampler);
    scheduler.start(request);
    this.graph.fadeIn(this.#context.currentTime + FADER_LEAD);
    this.#scheduler = scheduler;
    this.#timer = setInterval(() => this.#tick(done), TICK_MS);
    this.#tick(done);
  }

  /** Goes on as a request has it that was prepared. */
  change(request: PlayRequest): void {
    this.#scheduler?.change(request);
    this.scheduleAhead();
  }

  /** Schedules what is to sound soon; needed at once when the page goes into the background. */
  scheduleAhead(): void {
    this.#scheduler?.scheduleAhead(this.#ahead[document.visibilityState]);
  }

  /** Silence, at once. */
  stop(): void {
    if (!this.#scheduler) return;
    this.#release();
    this.#sampler.stopAll(this.graph.fadeOut(this.#context.currentTime));
  }

  /** What is heard now. */
  position(): Position | undefined {
    return this.#scheduler?.positionAt(heardTime(this.#context, performance.now()));
  }

  dispose(): void {
    this.stop();
    this.#bank.dispose();
  }

  #tick(done: () => void): void {
    this.scheduleAhead();
    const end = this.#scheduler?.end ?? Infinity;
    if (heardTime(this.#context, performance.now()) < end) return;
    this.#release();
    done();
  }

  /** What sounds may ring on. */
  #release(): void {
    clearInterval(this.#timer);
    this.#scheduler = undefined;
  }

  /** Without its room the kit sounds dry, but it sounds: that is no reason to refuse to play. */
  #addRoom(): void {
    if (!this.#wantsRoom) return;
    this.#wantsRoom = false;
    this.#bank.room().then(
      (answer) => this.graph.addRoom(answer),
      () => undefined,
    );
  }
}

/** What plays on the page. Everything heavy stands behind this module, which is loaded at the first press. */
export function openSequencer(context: AudioContext): Sequencer {
  return new Sequencer({ context, renderer: workerRenderer(context.sampleRate) });
}
