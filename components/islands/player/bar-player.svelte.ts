import type { PlayRequest } from '../../../src/audio/index.ts';
import { loadAgain } from '../../../src/audio/load-again.ts';
import type { Lead, Timeline } from '../../../src/core/index.ts';
import type { SiteSettings } from '../../../src/storage/index.ts';
import { Playback } from './playback.svelte.ts';
import { leadsOf, type PlayerProps } from './props.ts';
import { BarSettings } from './settings.svelte.ts';

type Engine = typeof import('./engine.ts');

/** The player of one bar: what its settings make of the bar, and its sound. */
export class BarPlayer {
  readonly props: PlayerProps;
  readonly leads: readonly [Lead, ...Lead[]];
  /** Whether the bar's subdivision can swing. */
  readonly swings: boolean;
  readonly playback = new Playback();
  readonly #settings: BarSettings;
  #touched = $state.raw(false);
  #engine = $state.raw<Engine | undefined>();
  readonly #timeline = $derived.by(() => this.#engine?.timelineOf(this.props, this.lead, this.site.flams));
  readonly #check = $derived.by(() => this.#engine?.checkOf(this.props, this.lead));
  readonly #request = $derived.by(() => {
    const [engine, timeline, check] = [this.#engine, this.#timeline, this.#check];
    return engine && timeline && check && this.#requestOf(engine, timeline, check);
  });

  /** To be called while its component is set up. */
  constructor(props: PlayerProps) {
    this.props = props;
    this.leads = leadsOf(props);
    this.swings = props.grid === 2 || props.grid === 4;
    this.#settings = new BarSettings(props);
    // The letters on the page are those of the first lead.
    $effect(() => {
      if (this.lead !== this.leads[0]) this.expect();
    });
    $effect(() => {
      if (this.#request) this.playback.change(this.#request);
    });
    $effect(() => () => this.playback.dispose());
  }

  /** Beats a minute. */
  get tempo(): number {
    return this.#settings.tempo;
  }

  set tempo(tempo: number) {
    this.#choose(() => (this.#settings.tempo = tempo));
  }

  get lead(): Lead {
    return this.#settings.lead;
  }

  set lead(lead: Lead) {
    this.#choose(() => (this.#settings.lead = lead));
  }

  /** What holds for the whole site. */
  get site(): Readonly<SiteSettings> {
    return this.#settings.site;
  }

  /** Whether anyone pressed or chose anything here: until then the figure stays as the page drew it. */
  get touched(): boolean {
    return this.#touched;
  }

  /** True in the one player that has to say that nothing can be remembered. */
  get forgetful(): boolean {
    return this.#settings.forgetful;
  }

  /** The engine, and what it made of the bar; undefined until it is loaded. */
  get engine(): Engine | undefined {
    return this.#engine;
  }

  get timeline(): Timeline | undefined {
    return this.#timeline;
  }

  get check(): Timeline | undefined {
    return this.#check;
  }

  readonly set = (change: Partial<SiteSettings>): void => this.#choose(() => this.#settings.setSite(change));
  readonly resetHere = (): void => this.#choose(() => this.#settings.resetHere());
  readonly resetAll = (): void => this.#choose(() => this.#settings.resetAll());

  /** A press is coming: whatever it will want may be fetched already. Where it does not arrive, the press says so. */
  readonly expect = (): void => void this.#load().catch(() => undefined);

  /** One button: call it inside the press. */
  readonly toggle = (): void => {
    if (this.playback.active) return this.playback.stop();
    this.#touched = true;
    this.playback.play(this.#request ?? this.#load().then(() => this.#request!));
  };

  /** Takes what a link sets for the player at `root`; where the code for it does not arrive, its own settings hold. */
  async override(root: Element): Promise<void> {
    const link = await loadAgain(() => import('../links/overrides.svelte.ts')).catch(() => undefined);
    link?.overrideByLink(root, this.props);
  }

  #choose(change: () => void): void {
    this.#touched = true;
    this.expect();
    change();
  }

  /** Fetches the engine; rejects where it does not arrive, and tries again when asked again. */
  async #load(): Promise<Engine> {
    return (this.#engine ??= await loadAgain(() => import('./engine.ts')));
  }

  #requestOf(engine: Engine, timeline: Timeline, check: Timeline): PlayRequest {
    const { flamMs, loop, countIn, click, heard, swing, check: bars } = this.site;
    const { meter, counts } = this.props;
    return {
      timeline,
      ...(bars ? { check: { timeline: check, bars } } : {}),
      bpm: engine.quartersPerMinute(meter, this.tempo),
      swing: this.swings ? swing : 1,
      flamMs,
      loop,
      countIn,
      click,
      heard,
      ...(counts ? { countSystem: counts } : {}),
    };
  }
}
