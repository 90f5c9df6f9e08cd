/** What one player knows and does: its settings, what they make of the phrase, and the sound. */
import type { PlayRequest } from '../../../src/audio/index.ts';
import { loadAgain } from '../../../src/audio/load-again.ts';
import type { Lead, Timeline } from '../../../src/core/index.ts';
import { DEFAULTS } from '../../../src/storage/index.ts';
import type { SiteSettings } from '../../../src/storage/index.ts';
import { createMemory } from './memory.ts';
import { Playback } from './playback.svelte.ts';
import { leadsOf, type PlayerProps } from './props.ts';

type Engine = typeof import('./engine.ts');

/** A player's session. */
export type Session = ReturnType<typeof createSession>;

/** Opens the session of one player; `wake` reads what was remembered and gives the way to end it all. */
export function createSession(props: PlayerProps) {
  const leads = leadsOf(props);
  const { meter, grid, graces } = props;
  const swings = grid === 2 || grid === 4;
  const memory = createMemory(props.id);
  const playback = new Playback();

  let tempo = $state.raw(props.tempo.from);
  let lead = $state.raw<Lead>(leads[0]);
  let site = $state.raw<SiteSettings>({ ...DEFAULTS });
  let touched = $state.raw(false);
  let forgetful = $state.raw(false);
  let engine = $state.raw<Engine | undefined>();

  const timeline = $derived(engine?.timelineOf(props, lead, site.flams));
  const check = $derived(engine?.checkOf(props, lead));

  function requestOf(pattern: Timeline, plain: Timeline): PlayRequest {
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

  /** Reads again what is remembered: at first, and when another player or another page changed it. */
  function recall(): void {
    const kept = memory.recall();
    tempo = kept.tempo ?? props.tempo.from;
    lead = leads.find((offered) => offered === kept.lead) ?? leads[0];
    site = kept.site;
    // The letters on the page are those of the first lead.
    if (lead !== leads[0]) load();
  }

  /** Where the code for it does not arrive, the player's own settings hold. */
  async function receive(root: Element): Promise<void> {
    const link = await loadAgain(() => import('../links/sent.svelte.ts')).catch(() => undefined);
    memory.receive(link?.receive(root, { leads: props.leads, graces }, recall));
    recall();
  }

  function remember(write: (kept: typeof memory) => void): void {
    touched = true;
    load();
    write(memory);
    forgetful ||= memory.mustSayForgetful();
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
      return tempo;
    },
    set tempo(next: number) {
      remember((kept) => kept.setExercise({ tempo: next }));
      tempo = next;
    },
    get lead() {
      return lead;
    },
    set lead(next: Lead) {
      remember((kept) => kept.setExercise({ lead: next }));
      lead = next;
    },
    get site(): Readonly<SiteSettings> {
      return site;
    },
    playback,
    /** Whether anyone pressed or chose anything here: until then the figure stays as the page drew it. */
    get touched() {
      return touched;
    },
    /** True in the one player that has to say that nothing can be remembered. */
    get forgetful() {
      return forgetful;
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
    set: (change: Partial<SiteSettings>) => remember((kept) => kept.setSite(change)),
    resetHere: () => remember((kept) => kept.resetHere()),
    resetAll: () => remember((kept) => kept.resetAll()),
    /** A press is coming: whatever it will want may be fetched already. */
    expect: load,
    /** One button: call it inside the press. */
    toggle: () => (playback.active ? playback.stop() : play()),
    /** Begins with what is remembered, or with what a link set for the player at `root`. */
    wake(root: Element): () => void {
      recall();
      if (location.search) void receive(root);
      const sleep = memory.on(recall);
      return () => {
        sleep();
        playback.dispose();
      };
    },
  };
}
