import { variantsOf, type VoiceName } from './names.ts';
import { renderVoice } from './render.ts';
import { renderRoom } from './room.ts';
import type { SampleRate, Signal } from './signal.ts';

/** What the worker is asked: these voices in this order, and the room after them if it is wanted. */
export interface SynthRequest {
  /** Comes back with each answer. */
  id: number;
  sampleRate: SampleRate;
  voices: readonly VoiceName[];
  room?: boolean;
}

/** What it answers: each take of a voice as soon as it is rendered, the room, what failed, and that this was all. */
export type SynthAnswer =
  | { id: number; kind: 'take'; voice: VoiceName; variant: number; signal: Signal }
  | { id: number; kind: 'room'; channels: Signal[] }
  | { id: number; kind: 'failed'; voice?: VoiceName; message: string }
  | { id: number; kind: 'done' };

/** Sends an answer and hands over the memory of its samples. */
export type Post = (answer: SynthAnswer, transfer: ArrayBuffer[]) => void;

/** Renders what is asked and posts it piece by piece; a voice that fails is reported and the rest go on. */
export function answerRequest({ id, sampleRate, voices, room }: SynthRequest, post: Post): void {
  for (const voice of voices) {
    attempt({ id, voice }, post, () => {
      for (let variant = 0; variant < variantsOf(voice); variant += 1) {
        const signal = renderVoice(voice, sampleRate, variant);
        post({ id, kind: 'take', voice, variant, signal }, buffersOf([signal]));
      }
    });
  }
  if (room) {
    attempt({ id }, post, () => {
      const channels = renderRoom(sampleRate);
      post({ id, kind: 'room', channels }, buffersOf(channels));
    });
  }
  post({ id, kind: 'done' }, []);
}

function buffersOf(signals: readonly Signal[]): ArrayBuffer[] {
  return signals.map((signal) => signal.buffer as ArrayBuffer);
}

function attempt(about: { id: number; voice?: VoiceName }, post: Post, work: () => void): void {
  try {
    work();
  } catch (error) {
    post({ ...about, kind: 'failed', message: error instanceof Error ? error.message : String(error) }, []);
  }
}
