import { renderRoom, renderVoice, variantsOf } from '../voices/index.ts';
import type { Renderer } from './bank.ts';

/** Renders where it is called, for rendering offline: there nobody waits for the page. */
export function pageRenderer(sampleRate: number): Renderer {
  return {
    voice: async (name) => Array.from({ length: variantsOf(name) }, (_, take) => renderVoice(name, sampleRate, take)),
    room: async () => renderRoom(sampleRate),
    dispose: () => undefined,
  };
}
