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
  test('posts each voice on its own, in the order asked, then says that it is done', () => {
    const kinds = ask(['beat', 'tap', 'kick']).map(({ answer }) =>
      answer.kind === 'voice' ? answer.voice : answer.kind,
    );
    expect(kinds).toEqual(['beat', 'tap', 'kick', 'done']);
  });

  test('hands over the memory of every take', () => {
    const [{ answer, transfer }] = ask(['tap']) as [Posted];
    if (answer.kind !== 'voice') throw new Error(answer.kind);
    expect(answer.id).toBe(7);
    expect(answer.variants).toHaveLength(variantsOf('tap'));
    expect(answer.variants[3]).toEqual(renderVoice('tap', 48000, 3));
    expect(transfer).toEqual(answer.variants.map(({ buffer }) => buffer));
  });

  test('renders the room when asked', () => {
    const [{ answer }] = ask([], true) as [Posted];
    expect(answer).toEqual({ id: 7, kind: 'room', channels: renderRoom(48000) });
  });

  test('reports what fails and goes on', () => {
    const answers = ask(['gong' as VoiceName, 'beat']).map(({ answer }) => answer);
    expect(answers.map(({ kind }) => kind)).toEqual(['failed', 'voice', 'done']);
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
    expect(postMessage.mock.calls.map(([answer]) => answer.kind)).toEqual(['voice', 'done']);
    expect(postMessage.mock.calls[0][1]).toHaveLength(1);
  });

  test('the whole kit fits in 20 million bytes at 48 kHz', () => {
    const bytes = ask(VOICES, true)
      .flatMap(({ transfer }) => transfer)
      .reduce((sum, { byteLength }) => sum + byteLength, 0);
    expect(bytes).toBeLessThan(20e6);
  });
});
