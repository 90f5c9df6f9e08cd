import { Stage } from './stage.ts';
import { workerRenderer } from './worker-renderer.ts';

/** The stage on which the page plays. Everything heavy stands behind this module, which is loaded at the first play. */
export function openStage(context: AudioContext): Stage {
  return new Stage({ context, renderer: workerRenderer(context.sampleRate) });
}
