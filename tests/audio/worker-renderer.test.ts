import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { workerRenderer } from '../../src/audio/stage/worker-renderer.ts';
import { answerRequest, type SynthRequest } from '../../src/audio/voices/answer.ts';

/** Workers in the order they were opened; one that is `lost` never loads. */
const opened: FakeWorker[] = [];
let lost = false;

class FakeWorker {
  onmessage?: (event: unknown) => void;
  onerror?: (event: unknown) => void;
  terminated = false;

  constructor() {
    opened.push(this);
    if (lost) queueMicrotask(() => this.onerror?.({ message: '' }));
  }

  postMessage(request: SynthRequest): void {
    if (!lost) answerRequest(request, (data) => queueMicrotask(() => this.onmessage?.({ data })));
  }

  terminate(): void {
    this.terminated = true;
  }
}

beforeEach(() => {
  opened.length = 0;
  vi.stubGlobal('Worker', FakeWorker);
});
afterEach(() => vi.unstubAllGlobals());

test('one worker renders everything, and goes with the renderer', async () => {
  lost = false;
  const renderer = workerRenderer(8000);
  const [beat, room] = await Promise.all([renderer.voice('beat'), renderer.room()]);
  expect([beat.length, room.length]).toEqual([1, 2]);
  expect(opened).toHaveLength(1);
  renderer.dispose();
  expect(opened[0].terminated).toBe(true);
});

test('a worker that did not load fails what waits for it, and the next request opens another', async () => {
  lost = true;
  const renderer = workerRenderer(8000);
  const waits = [renderer.voice('beat'), renderer.voice('downbeat')];
  expect((await Promise.allSettled(waits)).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  lost = false;
  expect(await renderer.voice('beat')).toHaveLength(1);
  expect(opened.map(({ terminated }) => terminated)).toEqual([true, false]);
});
