import type { Renderer } from '../../../src/audio/engine/sample-bank.ts';

/** In place of every sound one sample, with silence before it so that it may fall between two; `shifted` comes later. */
export function impulses(shifted?: { voice: string; samples: number }): Renderer {
  return {
    voice: async (name) => {
      const signal = new Float32Array(8);
      signal[1 + (shifted?.voice === name ? shifted.samples : 0)] = 1;
      return [signal];
    },
    room: async () => [new Float32Array(8), new Float32Array(8)],
    dispose: () => undefined,
  };
}

/** Where the sample of an impulse stands in its sound. */
export const IMPULSE_AT = 1;
