import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { workerRenderer } from '../../src/audio/engine/worker-renderer.ts';
import { answerRequest, type SynthRequest } from '../../src/audio/voices/answer.ts';

/** Workers in the order they were opened; one that is `lost` never loads, a `mute` one never answers. */
const opened: FakeWorker[] = [];
let fate: 'well' | 'lost' | 'mute' = 'well';

class FakeWorker {
  onmessage?: (event: unknown) => void;
  onerror?: (event: unknown) => void;
  terminated = false;

  constructor() {
    opened.push(this);
    if (fate === 'lost') queueMicrotask(() => this.onerror?.({ message: '' }));
  }

  postMessage(request: SynthRequest): void {
    if (fate === 'well') answerRequest(request, (data) => queueMicrotask(() => this.onmessage?.({ data })));
  }

  terminate(): void {
    this.terminated = true;
  }
}

beforeEach(() => {
  opened.length = 0;
  fate = 'well';
  vi.stubGlobal('Worker', FakeWorker);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

test('one worker renders everything, and goes with the renderer', async () => {
  const renderer = workerRenderer(8000);
  const [beat, room] = await Promise.all([renderer.voice('beat'), renderer.room()]);
  expect([beat.length, room.length]).toEqual([1, 2]);
  expect(opened).toHaveLength(1);
  renderer.dispose();
  expect(opened[0].terminated).toBe(true);
});

test('a worker that did not load fails what waits for it, and the next request opens another', async () => {
  fate = 'lost';
  const renderer = workerRenderer(8000);
  const waits = [renderer.voice('beat'), renderer.voice('downbeat')];
  expect((await Promise.allSettled(waits)).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  fate = 'well';
  expect(await renderer.voice('beat')).toHaveLength(1);
  expect(opened.map(({ terminated }) => terminated)).toEqual([true, false]);
});

test('a worker that says nothing for 5 s is given up, and the next request opens another', async () => {
  vi.useFakeTimers();
  fate = 'mute';
  const renderer = workerRenderer(8000);
  const waits = Promise.allSettled([renderer.voice('beat'), renderer.room()]);
  await vi.advanceTimersByTimeAsync(4900);
  expect(opened[0].terminated).toBe(false);
  await vi.advanceTimersByTimeAsync(200);
  expect((await waits).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  fate = 'well';
  expect(await renderer.voice('beat')).toHaveLength(1);
  expect(opened.map(({ terminated }) => terminated)).toEqual([true, false]);
});

test('a worker that takes its time but answers piece by piece is waited for', async () => {
  vi.useFakeTimers();
  fate = 'mute';
  const renderer = workerRenderer(8000);
  const voice = renderer.voice('tap');
  for (let variant = 0; variant < 3; variant += 1) {
    await vi.advanceTimersByTimeAsync(4000);
    opened[0].onmessage?.({ data: { id: 1, kind: 'take', voice: 'tap', variant, signal: new Float32Array(1) } });
  }
  opened[0].onmessage?.({ data: { id: 1, kind: 'done' } });
  expect(await voice).toHaveLength(3);
});
