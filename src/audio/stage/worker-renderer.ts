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

/** Renders in a worker of ours, so that the page does not wait: one request a voice, answered in the order asked. */
export function workerRenderer(sampleRate: number): Renderer {
  const worker = new Worker(new URL('../synth.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, Waiting>();
  let asked = 0;

  worker.onmessage = ({ data }: MessageEvent<SynthAnswer>) => {
    const signals = signalsIn(data);
    if (signals) waiting.get(data.id)?.resolve(signals);
    if (data.kind === 'failed') waiting.get(data.id)?.reject(new Error(data.message));
    if (data.kind === 'done') waiting.delete(data.id);
  };
  worker.onerror = ({ message }) => {
    for (const { reject } of waiting.values()) reject(new Error(message || 'the worker for sounds did not load'));
    waiting.clear();
  };

  const ask = (voices: VoiceName[], room: boolean): Promise<readonly Signal[]> =>
    new Promise((resolve, reject) => {
      asked += 1;
      waiting.set(asked, { resolve, reject });
      worker.postMessage({ id: asked, sampleRate, voices, room } satisfies SynthRequest);
    });

  return { voice: (name) => ask([name], false), room: () => ask([], true), dispose: () => worker.terminate() };
}
