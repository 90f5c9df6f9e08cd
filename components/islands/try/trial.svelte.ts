/** A sticking that is being tried: what is typed, what becomes of it, and its picture. */
import { ON_PAGE } from '../../../src/bar-math/limits.ts';
import { tryBar, type TriedBar } from '../../../src/bar-math/try-bar.ts';
import { TooLarge } from '../../../src/core/index.ts';
import type { TryAnswer, TryRequest } from './try.worker.ts';

/** What is typed. */
type Typed = Omit<TryRequest, 'glyphs'>;

/** Long enough to type the next letter in. */
const PAUSE_MS = 250;

/** Reads what is typed at once where that is quick, and beside the page where it is not; what is right is drawn there. */
export class Trial {
  text = $state('');
  meter = $state('');
  grid = $state(0);
  /** Whether the last text is being read or drawn, could not be, or is no longer wanted. */
  progress = $state.raw<'none' | 'working' | 'failed' | 'stopped'>('none');
  #answer = $state.raw<TryAnswer>();
  #worker: Worker | undefined;
  readonly #typed = $derived<Typed>({ text: this.text, meter: this.meter.trim(), grid: Number(this.grid) });
  readonly #onPage = $derived(readOnPage(this.#typed));

  /** `glyphs` gives the codes of those that the page has already. To be made while a component is set up. */
  constructor({ text, meter, grid }: Typed, glyphs: () => readonly string[]) {
    [this.text, this.meter, this.grid] = [text, meter, grid];
    $effect(() => this.#follow(this.#typed, glyphs));
    $effect(() => () => this.#worker?.terminate());
  }

  /** What becomes of the text; undefined while that takes long, or was stopped. */
  get tried(): TriedBar | undefined {
    return this.#onPage ?? this.#answer?.tried;
  }

  /** The picture of what is typed; undefined where it is not right, and until it is drawn. */
  get picture(): TryAnswer['picture'] {
    return this.#answer?.picture;
  }

  /** Gives up what is being read or drawn. */
  stop = (): void => {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.progress = 'stopped';
  };

  /** Keeps up with what is typed; gives the way to let go of it. */
  #follow(typed: Typed, glyphs: () => readonly string[]): () => void {
    const pause = setTimeout(() => this.#ask({ ...typed, glyphs: glyphs() }), PAUSE_MS);
    if (!this.#onPage?.ok) this.#answer = undefined;
    this.progress = this.#onPage ? 'none' : 'working';
    return () => {
      clearTimeout(pause);
      // What is asked and not answered yet is dropped with the one who answers.
      if (this.progress === 'working') this.stop();
    };
  }

  #ask(request: TryRequest): void {
    this.progress = 'working';
    this.#worker ??= new Worker(new URL('./try.worker.ts', import.meta.url), { type: 'module' });
    this.#worker.onmessage = ({ data }: MessageEvent<TryAnswer>) => {
      this.#answer = data;
      this.progress = 'none';
    };
    this.#worker.onerror = () => {
      this.stop();
      this.progress = 'failed';
    };
    this.#worker.postMessage(request);
  }
}

/** What becomes of a text that is read in a moment; undefined for others. */
function readOnPage({ text, meter, grid }: Typed): TriedBar | undefined {
  try {
    return tryBar(text, meter, grid, ON_PAGE);
  } catch (error) {
    if (error instanceof TooLarge) return undefined;
    throw error;
  }
}
