import { watchStall } from '../stall.ts';
import type { Signal, SynthAnswer, SynthRequest, VoiceName } from '../voices/index.ts';
import type { Renderer } from './sample-bank.ts';

interface Waiting {
  signals: Signal[];
  resolve(signals: readonly Signal[]): void;
  reject(reason: Error): void;
}

const openWorker = (): Worker => new Worker(new URL('../synth.worker.ts', import.meta.url), { type: 'module' });

/**
 * Renders in a worker of ours, so that the page does not wait: one request a voice, answered in the order asked. A worker
 * that did not load, or has said nothing for 5 s, is given up: what waits is rejected, and the next request opens another.
 */
export function workerRenderer(sampleRate: number): Renderer {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let endWatch: (() => void) | undefined;
  let asked = 0;
  let heard = 0;

  const stopWatch = (): void => {
    endWatch?.();
    endWatch = undefined;
  };
  const hear = ({ data }: MessageEvent<SynthAnswer>): void => {
    heard += 1;
    const asker = waiting.get(data.id);
    if (data.kind === 'take') asker?.signals.push(data.signal);
    if (data.kind === 'room') asker?.signals.push(...data.channels);
    if (data.kind === 'failed') asker?.reject(new Error(data.message));
    if (data.kind !== 'done') return;
    asker?.resolve(asker.signals);
    waiting.delete(data.id);
    if (waiting.size === 0) stopWatch();
  };
  const close = (why: string): void => {
    worker?.terminate();
    worker = undefined;
    stopWatch();
    for (const { reject } of waiting.values()) reject(new Error(why));
    waiting.clear();
  };
  const opened = (): Worker =>
    Object.assign(openWorker(), {
      onmessage: hear,
      onerror: ({ message }: ErrorEvent) => close(message || 'the worker for sounds did not load'),
    });

  const ask = (voices: VoiceName[], room: boolean): Promise<readonly Signal[]> =>
    new Promise((resolve, reject) => {
      asked += 1;
      waiting.set(asked, { signals: [], resolve, reject });
      worker ??= opened();
      endWatch ??= watchStall(
        () => heard,
        () => close('the worker for sounds does not answer'),
      );
      worker.postMessage({ id: asked, sampleRate, voices, room } satisfies SynthRequest);
    });

  return {
    voice: (name) => ask([name], false),
    room: () => ask([], true),
    dispose: () => close('the renderer was disposed of'),
  };
}
