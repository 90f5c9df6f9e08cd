import { tryBar, type TriedBar } from '../../../src/bar-math/try-bar.ts';
import { engrave, glyphSprite } from '../../../src/engraving/index.ts';
import { describe } from '../../../src/words/describe.ts';
import { COUNTING } from '../../../src/words/site.ts';

/** A sticking to be read and drawn. */
export interface TryRequest {
  text: string;
  meter: string;
  grid: number;
  /** Codes of the glyphs that the page has already. */
  glyphs: readonly string[];
}

/** What became of it, and its picture as markup and in words where it is right. */
export interface TryAnswer {
  tried: TriedBar;
  picture?: { html: string; reading: string };
}

/** The part of a worker's global scope that is used here; the page's own types know only windows. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<TryRequest>) => void) | null;
  postMessage(answer: TryAnswer): void;
}

/** Reads and engraves beside the page, which either would hold up: takes a `TryRequest`, posts a `TryAnswer`. */
const scope = globalThis as unknown as WorkerScope;
scope.onmessage = ({ data }) => scope.postMessage(answerTo(data));

function answerTo({ text, meter, grid, glyphs }: TryRequest): TryAnswer {
  const tried = tryBar(text, meter, grid);
  if (!tried.ok) return { tried };
  const drawn = engrave(tried.drawn, { staff: 'auto', counts: COUNTING });
  const missing = drawn.glyphs.filter((code) => !glyphs.includes(code));
  const sprite = missing.length ? glyphSprite(missing) : '';
  return {
    tried,
    picture: { html: sprite + drawn.html, reading: describe(tried.drawn).reading },
  };
}
