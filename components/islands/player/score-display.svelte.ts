import { untrack } from 'svelte';
import type { Position } from '../../../src/audio/index.ts';
import { PLAYER_LABELS as labels } from '../../../src/words/player.ts';
import type { BarPlayer } from './bar-player.svelte.ts';

/** A drawing that takes no longer than this needs no words. */
const PATIENCE_MS = 300;

/** What is counted now, and in what. */
interface Counted {
  count: string;
  phase?: Position['phase'];
}

/** What one player shows in its figure: light and playhead, the letters of the lead, bars that are drawn on request. */
export class ScoreDisplay {
  readonly #player: BarPlayer;
  #root = $state.raw<Element | undefined>();
  /** Counts the drawings, so that light, letters and heights know of a new one. */
  #drawings = $state.raw(0);
  #note = $state.raw('');
  #counted = $state.raw<Counted>({ count: '' });
  readonly #figure = $derived.by(() => this.#root && this.#player.engine?.joinFigure(this.#root));
  readonly #touched = $derived.by(() => (this.#player.touched ? this.#figure : undefined));
  readonly #flams = $derived.by(() => this.#player.site.flams);
  readonly #checked = $derived.by(() => this.#player.site.check > 0);
  /** The words stay as the page has them until someone turns the lead. */
  #described: string;

  /** To be called while its component is set up. */
  constructor(player: BarPlayer) {
    this.#player = player;
    [this.#described] = player.leads;
    $effect(() => this.#drawScore());
    $effect(() => this.#drawCheck());
    $effect(() => this.#write());
    $effect(() => this.#describe());
    $effect(() => this.#follow());
  }

  /** A sentence about a drawing that is late or did not come. */
  get note(): string {
    return this.#note;
  }

  get counted(): Counted {
    return this.#counted;
  }

  /** Finds the figure once the player is in its place. */
  join(root: Element): void {
    this.#root = root;
  }

  /** Written-out flams are another score; the page's own is kept for when it is wanted again. A lead is only letters. */
  #drawScore() {
    const [figure, written] = [this.#touched, this.#flams !== 'grace' && this.#flams];
    const { engine, timeline, props } = this.#asItIs();
    if (!figure || !engine || !timeline) return;
    if (written) return this.#whenDrawn(engine.draw(timeline, props), figure.setScore);
    figure.setScore(undefined);
    this.#isNew();
  }

  #drawCheck() {
    const [figure, wanted] = [this.#touched, this.#checked];
    const { engine, check, props } = this.#asItIs();
    if (!figure || !engine || !check) return;
    if (!wanted) return figure.setCheck(undefined, '');
    const drawing = engine.draw(check, { ...props, names: undefined });
    return this.#whenDrawn(drawing, (drawn) => figure.setCheck(drawn, labels.checkBar));
  }

  #write() {
    const { engine, timeline, check, site, touched } = this.#player;
    if (!engine || !timeline || !check || this.#drawings < 0) return;
    this.#figure?.score?.write(engine.lettersOf(timeline));
    this.#figure?.check?.write(engine.lettersOf(check));
    engine.drawHeights(this.#figure?.score, site.heights && touched ? timeline : undefined);
  }

  #describe() {
    const { engine, timeline, lead, props } = this.#player;
    const figure = this.#figure;
    if (!figure || !engine || !timeline || lead === this.#described) return;
    return this.#whenDrawn(engine.reread(timeline, props), (words) => {
      this.#described = lead;
      figure.describe(words);
    });
  }

  #follow() {
    const { engine, playback, timeline, check } = this.#player;
    const figure = this.#figure;
    if (!figure || !engine || !playback.active || !timeline || !check || this.#drawings < 0) return;
    const ticks = { pattern: engine.ticksOf(timeline), check: engine.ticksOf(check) };
    const position = () => playback.position();
    const stop = engine.everyFrame(position, (now) => {
      engine.showPosition(figure, now, ticks);
      this.#counted = counted(now, this.#player.site.counts);
    });
    return () => {
      stop();
      figure.clear();
      this.#counted = { count: '' };
    };
  }

  /** What there is to draw; an effect that asks does not run again when it changes. */
  #asItIs() {
    return untrack(() => {
      const { engine, timeline, check, props } = this.#player;
      return { engine, timeline, check, props };
    });
  }

  #isNew(): void {
    this.#drawings = untrack(() => this.#drawings) + 1;
  }

  /** Waits for a drawing; where another one is wanted meanwhile, it is dropped. */
  #whenDrawn<T>(drawing: Promise<T>, put: (drawing: T) => void): () => void {
    let wanted = true;
    const patience = setTimeout(() => (this.#note = labels.engraving), PATIENCE_MS);
    const end = () => {
      wanted = false;
      clearTimeout(patience);
      this.#note = '';
    };
    const place = (drawn: T) => {
      if (!wanted) return;
      end();
      put(drawn);
      this.#isNew();
    };
    drawing.then(place, () => {
      if (!wanted) return;
      end();
      this.#note = labels.notEngraved;
    });
    return end;
  }
}

/** The count-in is always counted; the rest where it is wanted. */
function counted(position: Position | undefined, always: boolean): Counted {
  if (!position) return { count: '' };
  const { count, phase } = position;
  return { count: always || phase === 'count-in' ? count : '', phase };
}
