import type { Seconds } from '../core/index.ts';
import { Scheduler } from './scheduler/scheduler.ts';
import { SampleBank, type Renderer } from './engine/sample-bank.ts';
import { openGraph } from './engine/graph.ts';
import { voicesFor } from './engine/sequencer.ts';
import { Sampler } from './engine/sampler.ts';
import type { PlayRequest } from './types.ts';
import { renderRoom, renderVoice, variantsOf } from './voices/index.ts';

/** Notes are scheduled this far ahead at each change, as on the page. */
const AHEAD: Seconds = 1.5;

/** Renders where it is called, for rendering offline: there nobody waits for the page. */
export function pageRenderer(sampleRate: number): Renderer {
  return {
    voice: async (name) => Array.from({ length: variantsOf(name) }, (_, take) => renderVoice(name, sampleRate, take)),
    room: async () => renderRoom(sampleRate),
    dispose: () => undefined,
  };
}

/** How a request is rendered. */
export interface OfflineOptions {
  seconds: Seconds;
  /** In hertz. */
  sampleRate: number;
  /** Requests that take over at times of the rendering, in order. */
  changes?: readonly { at: Seconds; request: PlayRequest }[];
  /** Other sounds than those of the kit. */
  renderer?: Renderer;
  /** False for the sound without its room. */
  room?: boolean;
}

/**
 * What a visitor would hear, as a buffer: the same sequence, scheduler and graph as on the page, with a clock that is set by
 * hand. The first sound, be it a grace note, comes after 0.2 s.
 */
export async function renderOffline(request: PlayRequest, options: OfflineOptions): Promise<AudioBuffer> {
  const { seconds, sampleRate, changes = [], room = true } = options;
  const context = new OfflineAudioContext(2, Math.ceil(seconds * sampleRate), sampleRate);
  const bank = new SampleBank(context, options.renderer ?? pageRenderer(sampleRate));
  await bank.load([request, ...changes.map((change) => change.request)].flatMap(voicesFor));
  const graph = openGraph(context);
  if (room) graph.addRoom(await bank.room());
  const sampler = new Sampler(context, graph, bank);
  let now: Seconds = 0;
  const scheduler = new Scheduler({ now: () => now, trigger: (...note) => sampler.trigger(...note) });
  scheduler.start(request);
  for (const change of changes) {
    scheduler.scheduleAhead(change.at - now + AHEAD);
    now = change.at;
    scheduler.change(change.request);
  }
  scheduler.scheduleAhead(seconds - now);
  return context.startRendering();
}
