import type { CountSystem, Timeline } from '../../../src/core/index.ts';
import { loadAgain } from '../../../src/audio/load-again.ts';
import type { Drawn } from './figure.ts';
import type { PlayerProps } from './props.ts';

/** Engraves a score in the browser; the engraver is fetched when it is first wanted. Rejects where it does not arrive. */
export async function draw(timeline: Timeline, { staff, counts, names }: PlayerProps): Promise<Drawn> {
  const { engrave, glyphSprite } = await loadAgain(() => import('../../../src/engraving/index.ts'));
  // An unknown system is the default one to the engraver, as it is to the sound.
  const { html, glyphs } = engrave(timeline, { staff, counts: counts as CountSystem | false, names });
  const missing = glyphs.filter((code) => !document.getElementById(`g${code}`));
  return { html, sprite: missing.length ? glyphSprite(missing) : '' };
}

/** The score in words, for another lead. */
export async function reread(timeline: Timeline, { names, counts }: PlayerProps) {
  const { describe } = await loadAgain(() => import('../../../src/words/describe.ts'));
  return describe(timeline, { names, ...(counts && { counts: counts as CountSystem }) });
}
