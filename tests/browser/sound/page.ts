import { createPlayer, type PlayerEvent, type PlayRequest, type Position } from '../../../src/audio/index.ts';
import { AudioOutput } from '../../../src/audio/output.ts';
import { renderOffline } from '../../../src/audio/offline.ts';
import { sequenceOf } from '../../../src/audio/sequence/sequence.ts';
import { pageRenderer } from '../../../src/audio/offline.ts';
import { Sequencer } from '../../../src/audio/engine/sequencer.ts';
import { voiceFor } from '../../../src/audio/engine/sampler.ts';
import { renderVoice } from '../../../src/audio/voices/index.ts';
import { requestOf } from '../../audio/requests.ts';
import { bestShift, changesOf, impulsesIn } from './onsets.ts';
import { IMPULSE_AT, impulses } from './impulses.ts';

/** A request as words and numbers, as a test hands it over. */
export type Asked = Parameters<typeof requestOf>;

/** What is to be rendered offline. */
export interface OfflineCase {
  asked: Asked;
  seconds: number;
  sampleRate: number;
  changes?: { at: number; asked: Asked }[];
  shifted?: { voice: string; samples: number };
}

/** Both channels as one, whatever side a sound stands on. */
function mono(buffer: AudioBuffer): Float32Array {
  const right = buffer.getChannelData(1);
  return buffer.getChannelData(0).map((sample, i) => Math.abs(sample) + Math.abs(right[i]));
}

/** Onsets in samples with impulses in place of the drums. */
async function offline({ asked, seconds, sampleRate, changes = [], shifted }: OfflineCase): Promise<number[]> {
  const buffer = await renderOffline(requestOf(...asked), {
    seconds,
    sampleRate,
    changes: changes.map((change) => ({ at: change.at, request: requestOf(...change.asked) })),
    renderer: impulses(shifted),
    room: false,
  });
  return impulsesIn(mono(buffer)).map((onset) => onset - IMPULSE_AT);
}

/**
 * For every stroke of the first pass, by how many samples the real drum in its room stands beside its place; `aside` looks
 * for it beside that.
 */
async function realDrums(asked: Asked, sampleRate: number, aside = 0): Promise<{ voice: string; shift: number }[]> {
  const request = requestOf(...asked);
  const { first } = sequenceOf(request);
  const buffer = await renderOffline(request, { seconds: first.end + 0.5, sampleRate });
  const signal = changesOf(buffer.getChannelData(0));
  const start = 0.2 - Math.min(first.slots[0].seconds, first.events[0].seconds);
  return first.events.map((event) => {
    const { voice, variant } = voiceFor(event.note, 0);
    const attack = changesOf(renderVoice(voice, sampleRate, variant).slice(0, Math.round(0.008 * sampleRate)));
    const place = Math.round((start + event.seconds) * sampleRate) + aside;
    return { voice, shift: bestShift(signal, attack, place, Math.round(0.004 * sampleRate)) };
  });
}

/** How loud the loudest sample is. */
async function peak(asked: Asked, seconds: number): Promise<number> {
  const buffer = await renderOffline(requestOf(...asked), { seconds, sampleRate: 48000 });
  return Math.max(...[0, 1].map((i) => buffer.getChannelData(i).reduce((most, s) => Math.max(most, Math.abs(s)), 0)));
}

/** Keeps the page from doing anything else. */
function stall(milliseconds: number): void {
  const end = performance.now() + milliseconds;
  while (performance.now() < end);
}

const sleep = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

interface Block {
  frame: number;
  channels: Float32Array[];
}

/** An output whose sound is written down; with `ahead` it orders sounds no further ahead than so many seconds. */
function recordingOutput(
  real: boolean,
  ahead?: number,
): { output: AudioOutput; context: () => AudioContext; blocks: Block[] } {
  const blocks: Block[] = [];
  let opened: AudioContext;
  const output = new AudioOutput(async (context) => {
    opened = context;
    await context.audioWorklet.addModule(new URL('./recorder.js', import.meta.url));
    const renderer = real ? pageRenderer(context.sampleRate) : impulses();
    const reach = ahead === undefined ? {} : { ahead: { visible: ahead, hidden: ahead } };
    const sequencer = new Sequencer({ context, renderer, room: real, ...reach });
    const recorder = new AudioWorkletNode(context, 'recorder', { numberOfOutputs: 0 });
    recorder.port.onmessage = ({ data }: MessageEvent<Block>) => blocks.push(data);
    sequencer.graph.output.connect(recorder);
    return sequencer;
  });
  return { output, context: () => opened, blocks };
}

/** What was recorded from the first block on, silent where the graph was: the left channel, and all of it by magnitude. */
function joined(blocks: readonly Block[]): { from: number; left: Float32Array; all: Float32Array } {
  const from = blocks[0].frame;
  const last = blocks[blocks.length - 1];
  const length = last.frame + last.channels[0].length - from;
  const [left, all] = [new Float32Array(length), new Float32Array(length)];
  for (const { frame, channels } of blocks) {
    left.set(channels[0], frame - from);
    for (const channel of channels) channel.forEach((sample, i) => (all[frame - from + i] += Math.abs(sample)));
  }
  return { from, left, all };
}

/** What is to be played live, and what happens meanwhile. */
export interface LiveCase {
  asked: Asked;
  milliseconds: number;
  /** The page stands still for so long, again and again, with 20 ms between. */
  stallMs?: number;
  changes?: { afterMs: number; asked: Asked }[];
  /** Sounds are ordered only so many seconds ahead. */
  ahead?: number;
  /** The sound is taken away for a while. */
  interruption?: { afterMs: number; forMs: number };
}

/** What came of it. Onsets in samples; times in seconds. */
export interface LiveResult {
  sampleRate: number;
  onsets: number[];
  events: PlayerEvent[];
  positions: Position[];
}

async function busy(milliseconds: number, stallMs: number, look: () => void): Promise<void> {
  const end = performance.now() + milliseconds;
  while (performance.now() < end) {
    if (stallMs > 0) stall(stallMs);
    look();
    await sleep(20);
  }
}

async function live(live: LiveCase): Promise<LiveResult> {
  const { output, context, blocks } = recordingOutput(false, live.ahead);
  const player = createPlayer(output);
  const events: PlayerEvent[] = [];
  const positions: Position[] = [];
  player.on((event) => events.push(event));
  player.play(requestOf(...live.asked));
  while (player.state === 'opening') await sleep(5);
  for (const { afterMs, asked } of live.changes ?? []) setTimeout(() => player.change(requestOf(...asked)), afterMs);
  if (live.interruption) {
    const { afterMs, forMs } = live.interruption;
    setTimeout(() => void context().suspend(), afterMs);
    setTimeout(() => void context().resume(), afterMs + forMs);
  }
  await busy(live.milliseconds, live.stallMs ?? 0, () => {
    const position = player.position();
    if (position) positions.push(position);
  });
  player.dispose();
  await sleep(100);
  const { all } = joined(blocks);
  return { sampleRate: context().sampleRate, onsets: impulsesIn(all), events, positions };
}

/** The largest change from one sample to the next. */
const largestStep = (signal: Float32Array): number =>
  changesOf(signal).reduce((most, change, i) => (i === 0 ? 0 : Math.max(most, Math.abs(change))), 0);

/** What a stop does to the sound: when the last sample was made, and how large its steps were. */
export interface Stopping {
  /** From the call of `stop` to the last sound. */
  seconds: number;
  /** The loudest sample shortly before. */
  before: number;
  /** The largest step before the call and after it. */
  ownStep: number;
  step: number;
}

/** Stops in the middle of a ringing cymbal. */
async function stopping(asked: Asked): Promise<Stopping> {
  const { output, context, blocks } = recordingOutput(true);
  const player = createPlayer(output);
  player.play(requestOf(...asked));
  while (player.state === 'opening') await sleep(5);
  await sleep(400);
  const { sampleRate } = context();
  const called = Math.round(context().currentTime * sampleRate);
  player.stop();
  await sleep(300);
  const { from, left } = joined(blocks);
  const last = from + left.findLastIndex((sample) => Math.abs(sample) > 1e-5);
  const at = called - from;
  const before = left.subarray(at - 4800, at);
  return {
    seconds: (last - called) / sampleRate,
    before: before.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0),
    ownStep: largestStep(before),
    step: largestStep(left.subarray(at, at + 4800)),
  };
}

const events: Record<string, PlayerEvent[]> = {};
const players: Record<string, ReturnType<typeof createPlayer>> = {};

/** A player under a name. */
function playerNamed(name: string): ReturnType<typeof createPlayer> {
  const player = createPlayer();
  events[name] = [];
  player.on((event) => events[name].push(event));
  return (players[name] = player);
}

/** Does something inside the next press of the button, as browsers want it for sound. */
function onPress<T>(action: () => T): Promise<Awaited<T>> {
  const button = document.querySelector<HTMLButtonElement>('#press')!;
  return new Promise((resolve) =>
    button.addEventListener('click', () => resolve(action() as Awaited<T>), { once: true }),
  );
}

const request = (...asked: Asked): PlayRequest => requestOf(...asked);

const sound = {
  offline,
  realDrums,
  peak,
  live,
  stopping,
  playerNamed,
  players,
  events,
  onPress,
  request,
  sleep,
};

/** What the tests call. */
export type Sound = typeof sound;

Object.assign(window, { sound });
