/** What one player knows and does: its settings, what they make of the phrase, and the sound. */
import type { PlayRequest } from '../../../src/audio/index.ts';
import { loadAgain } from '../../../src/audio/load-again.ts';
import type { Lead, Timeline } from '../../../src/core/index.ts';
import type { SiteSettings } from '../../../src/storage/index.ts';
import { Playback } from './playback.svelte.ts';
import { leadsOf, type PlayerProps } from './props.ts';
import { BarSettings } from './settings.svelte.ts';

type Engine = typeof import('./engine.ts');

/** A player's session. */
export type Session = ReturnType<typeof createSession>;

/** Opens the session of one player, to be called while its component is set up; `wake` gives the way to end it all. */
export function createSession(props: PlayerProps) {
  const leads = leadsOf(props);
  const { meter, grid, graces } = props;
  const settings = new BarSettings(props);
  const swings = grid === 2 || grid === 4;
  const playback = new Playback();

  let touched = $state.raw(false);
  let engine = $state.raw<Engine | undefined>();

  const timeline = $derived(engine?.timelineOf(props, settings.lead, settings.site.flams));
  const check = $derived(engine?.checkOf(props, settings.lead));

  function requestOf(pattern: Timeline, plain: Timeline): PlayRequest {
    const { tempo, site } = settings;
    const { flamMs, loop, countIn, click, heard } = site;
    return {
      timeline: pattern,
      ...(site.check ? { check: { timeline: plain, bars: site.check } } : {}),
      bpm: engine!.quartersPerMinute(meter, tempo),
      swing: swings ? site.swing : 1,
      flamMs,
      loop,
      countIn,
      click,
      heard,
      ...(props.counts ? { countSystem: props.counts } : {}),
    };
  }

  const request = $derived(timeline && check && requestOf(timeline, check));

  // The letters on the page are those of the first lead.
  $effect(() => {
    if (settings.lead !== leads[0]) load();
  });

  /** Where the code for it does not arrive, the player's own settings hold. */
  async function override(root: Element): Promise<void> {
    const link = await loadAgain(() => import('../links/overrides.svelte.ts')).catch(() => undefined);
    link?.overrideByLink(root, props);
  }

  function choose(change: () => void): void {
    touched = true;
    load();
    change();
  }

  /** Fetches the engine; rejects where it does not arrive, and tries again when asked again. */
  async function loadEngine(): Promise<Engine> {
    return (engine ??= await loadAgain(() => import('./engine.ts')));
  }

  /** For what can wait: where it does not arrive, the next press asks again and says so. */
  const load = (): void => void loadEngine().catch(() => undefined);

  function play(): void {
    touched = true;
    playback.play(request ?? loadEngine().then(() => request!));
  }

  return {
    props,
    leads,
    swings,
    graces,
    slots: props.slots,
    compound: props.compound,
    get tempo() {
      return settings.tempo;
    },
    set tempo(tempo: number) {
      choose(() => (settings.tempo = tempo));
    },
    get lead() {
      return settings.lead;
    },
    set lead(lead: Lead) {
      choose(() => (settings.lead = lead));
    },
    get site(): Readonly<SiteSettings> {
      return settings.site;
    },
    playback,
    /** Whether anyone pressed or chose anything here: until then the figure stays as the page drew it. */
    get touched() {
      return touched;
    },
    /** True in the one player that has to say that nothing can be remembered. */
    get forgetful() {
      return settings.forgetful;
    },
    /** The engine, and what it made of the phrase; undefined until it is loaded. */
    get engine() {
      return engine;
    },
    get timeline() {
      return timeline;
    },
    get check() {
      return check;
    },
    get request() {
      return request;
    },
    set: (change: Partial<SiteSettings>) => choose(() => settings.setSite(change)),
    resetHere: () => choose(() => settings.resetHere()),
    resetAll: () => choose(() => settings.resetAll()),
    /** A press is coming: whatever it will want may be fetched already. */
    expect: load,
    /** One button: call it inside the press. */
    toggle: () => (playback.active ? playback.stop() : play()),
    /** Takes what a link sets for the player at `root`. What loads players has found out which one that is. */
    wake(root: Element): () => void {
      if (root.hasAttribute('data-linked')) void override(root);
      return () => playback.dispose();
    },
  };
}
