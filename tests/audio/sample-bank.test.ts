import { describe, expect, it } from 'vitest';
import { SampleBank, type Renderer } from '../../src/audio/engine/sample-bank.ts';

const context = {
  sampleRate: 48000,
  createBuffer: (channels: number, length: number) => {
    const data = Array.from({ length: channels }, () => new Float32Array(length));
    return { length, getChannelData: (i: number) => data[i] };
  },
} as unknown as BaseAudioContext;

function countingRenderer(fails: { left: number } = { left: 0 }): Renderer & { asked: string[] } {
  const asked: string[] = [];
  return {
    asked,
    async voice(name) {
      asked.push(name);
      if (fails.left > 0) {
        fails.left -= 1;
        throw new Error('no memory');
      }
      return [new Float32Array([1]), new Float32Array([2])];
    },
    room: async () => [new Float32Array(3), new Float32Array(3)],
    dispose: () => undefined,
  };
}

describe('the bank of sounds', () => {
  it('has each voice rendered once, however often it is wanted', async () => {
    const renderer = countingRenderer();
    const bank = new SampleBank(context, renderer);
    await Promise.all([bank.load(['tap', 'kick']), bank.load(['tap'])]);
    await bank.load(['tap', 'kick']);
    expect(renderer.asked).toEqual(['tap', 'kick']);
    expect(bank.take('tap', 1).getChannelData(0)[0]).toBe(2);
  });

  it('says which voice is missing', () => {
    expect(() => new SampleBank(context, countingRenderer()).take('crash', 0)).toThrow(/"crash" was not loaded/);
  });

  it('tries a voice again that failed', async () => {
    const bank = new SampleBank(context, countingRenderer({ left: 1 }));
    await expect(bank.load(['tap'])).rejects.toThrow('no memory');
    await bank.load(['tap']);
    expect(bank.take('tap', 0).getChannelData(0)[0]).toBe(1);
  });
});
