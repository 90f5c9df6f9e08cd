import type { Seconds } from '../core/index.ts';
import { Conductor } from './conductor/conductor.ts';
import { Bank, type Renderer } from './stage/bank.ts';
import { openGraph } from './stage/graph.ts';
import { pageRenderer } from './stage/page-renderer.ts';
import { voicesFor } from './stage/stage.ts';
import { Striker } from './stage/striker.ts';
import type { PlayRequest } from './types.ts';

/** Sounds are ordered this far ahead at each change, as on the page. */
const AHEAD: Seconds = 1.5;

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
 * What a visitor would hear, as a buffer: the same plan, conductor and graph as on the page, with a clock that is set by
 * hand. The first sound, be it a grace note, comes after 0.2 s.
 */
export async function renderOffline(request: PlayRequest, options: OfflineOptions): Promise<AudioBuffer> {
  const { seconds, sampleRate, changes = [], room = true } = options;
  const context = new OfflineAudioContext(2, Math.ceil(seconds * sampleRate), sampleRate);
  const bank = new Bank(context, options.renderer ?? pageRenderer(sampleRate));
  await bank.load([request, ...changes.map((change) => change.request)].flatMap(voicesFor));
  const graph = openGraph(context);
  if (room) graph.furnish(await bank.room());
  const striker = new Striker(context, graph, bank);
  let now: Seconds = 0;
  const conductor = new Conductor({ now: () => now, strike: (...sound) => striker.strike(...sound) });
  conductor.start(request);
  for (const change of changes) {
    conductor.pump(change.at - now + AHEAD);
    now = change.at;
    conductor.change(change.request);
  }
  conductor.pump(seconds - now);
  return context.startRendering();
}
