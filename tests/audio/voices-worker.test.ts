import { afterEach, describe, expect, test, vi } from 'vitest';
import { answerRequest } from '../../src/audio/voices/answer.ts';
import {
  renderRoom,
  renderVoice,
  variantsOf,
  VOICES,
  type SynthAnswer,
  type VoiceName,
} from '../../src/audio/voices/index.ts';

interface Posted {
  answer: SynthAnswer;
  transfer: ArrayBuffer[];
}

function ask(voices: readonly VoiceName[], room = false, sampleRate = 48000): Posted[] {
  const posted: Posted[] = [];
  answerRequest({ id: 7, sampleRate, voices, room }, (answer, transfer) => posted.push({ answer, transfer }));
  return posted;
}

afterEach(() => vi.unstubAllGlobals());

describe('the synth worker', () => {
  test('posts every take on its own, in the order asked, then says that it is done', () => {
    const kinds = ask(['beat', 'subdivision', 'kick']).map(({ answer }) =>
      answer.kind === 'take' ? `${answer.voice} ${answer.variant}` : answer.kind,
    );
    expect(kinds).toEqual(['beat 0', 'subdivision 0', 'kick 0', 'kick 1', 'kick 2', 'kick 3', 'kick 4', 'done']);
  });

  test('hands over the memory of every take', () => {
    const takes = ask(['tap']).slice(0, -1);
    expect(takes).toHaveLength(variantsOf('tap'));
    for (const { answer, transfer } of takes) {
      if (answer.kind !== 'take') throw new Error(answer.kind);
      expect(answer).toMatchObject({ id: 7, voice: 'tap' });
      expect(transfer).toEqual([answer.signal.buffer]);
    }
    expect(takes[3].answer).toMatchObject({ variant: 3, signal: renderVoice('tap', 48000, 3) });
  });

  test('renders the room when asked', () => {
    const [{ answer }] = ask([], true) as [Posted];
    expect(answer).toEqual({ id: 7, kind: 'room', channels: renderRoom(48000) });
  });

  test('reports what fails and goes on', () => {
    const answers = ask(['gong' as VoiceName, 'beat']).map(({ answer }) => answer);
    expect(answers.map(({ kind }) => kind)).toEqual(['failed', 'take', 'done']);
    expect(answers[0]).toMatchObject({ id: 7, voice: 'gong', message: expect.stringContaining('"gong"') });
    expect(ask(['beat'], false, 0)[0].answer).toMatchObject({ kind: 'failed', voice: 'beat' });
  });

  test('listens to messages and answers by messages', async () => {
    const postMessage = vi.fn();
    vi.stubGlobal('postMessage', postMessage);
    vi.stubGlobal('onmessage', null);
    await import('../../src/audio/synth.worker.ts');
    const listen = (globalThis as unknown as { onmessage: (event: unknown) => void }).onmessage;
    listen({ data: { id: 1, sampleRate: 48000, voices: ['subdivision'] } });
    expect(postMessage.mock.calls.map(([answer]) => answer.kind)).toEqual(['take', 'done']);
    expect(postMessage.mock.calls[0][1]).toHaveLength(1);
  });

  test('the whole kit fits in 20 million bytes at 48 kHz', () => {
    const bytes = ask(VOICES, true)
      .flatMap(({ transfer }) => transfer)
      .reduce((sum, { byteLength }) => sum + byteLength, 0);
    expect(bytes).toBeLessThan(20e6);
  });
});
