import type { Signal, SynthAnswer, SynthRequest, VoiceName } from '../voices/index.ts';
import type { Renderer } from './bank.ts';

interface Waiting {
  resolve(signals: readonly Signal[]): void;
  reject(reason: Error): void;
}

const signalsIn = (answer: SynthAnswer): readonly Signal[] | undefined => {
  if (answer.kind === 'voice') return answer.variants;
  return answer.kind === 'room' ? answer.channels : undefined;
};

const openWorker = (): Worker => new Worker(new URL('../synth.worker.ts', import.meta.url), { type: 'module' });

/**
 * Renders in a worker of ours, so that the page does not wait: one request a voice, answered in the order asked. A worker
 * that did not load answers nothing any more: what waits is rejected, and the next request opens another one.
 */
export function workerRenderer(sampleRate: number): Renderer {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let asked = 0;

  const hear = ({ data }: MessageEvent<SynthAnswer>): void => {
    const signals = signalsIn(data);
    if (signals) waiting.get(data.id)?.resolve(signals);
    if (data.kind === 'failed') waiting.get(data.id)?.reject(new Error(data.message));
    if (data.kind === 'done') waiting.delete(data.id);
  };
  const close = (): void => {
    worker?.terminate();
    worker = undefined;
  };
  const fail = ({ message }: ErrorEvent): void => {
    close();
    for (const { reject } of waiting.values()) reject(new Error(message || 'the worker for sounds did not load'));
    waiting.clear();
  };
  const opened = (): Worker => Object.assign(openWorker(), { onmessage: hear, onerror: fail });

  const ask = (voices: VoiceName[], room: boolean): Promise<readonly Signal[]> =>
    new Promise((resolve, reject) => {
      asked += 1;
      waiting.set(asked, { resolve, reject });
      worker ??= opened();
      worker.postMessage({ id: asked, sampleRate, voices, room } satisfies SynthRequest);
    });

  return { voice: (name) => ask([name], false), room: () => ask([], true), dispose: close };
}
