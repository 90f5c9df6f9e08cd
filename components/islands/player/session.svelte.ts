/** What one player knows and does: its settings, what they make of the phrase, and the sound. */
import { pageHouse } from '../../../src/audio/house.ts';
import { createPlayer } from '../../../src/audio/index.ts';
import type { Player, PlayRequest, Position } from '../../../src/audio/index.ts';
import { quartersPerMinute } from '../../../src/core/time/meter.ts';
import type { Lead, Timeline } from '../../../src/core/index.ts';
import { DEFAULTS } from '../../../src/storage/index.ts';
import type { SiteSettings } from '../../../src/storage/index.ts';
import type { SoundNews } from '../../../src/words/player.ts';
import { about } from './about.ts';
import { loadAgain } from './again.ts';
import { createMemory } from './memory.ts';
import { leadsOf, type PlayerProps } from './props.ts';

type Engine = typeof import('./engine.ts');

/** A player's session. */
export type Session = ReturnType<typeof createSession>;

/** Opens the session of one player; `wake` reads what was remembered and gives the way to end it all. */
export function createSession(props: PlayerProps) {
  const leads = leadsOf(props);
  const { meter, grid, slots, graces } = about(props);
  const swings = grid === 2 || grid === 4;
  const memory = createMemory(props.id);

  let tempo = $state.raw(props.tempo.from);
  let lead = $state.raw<Lead>(leads[0]);
  let site = $state.raw<SiteSettings>({ ...DEFAULTS });
  let news = $state.raw<SoundNews>({ state: 'stopped' });
  let touched = $state.raw(false);
  let forgetful = $state.raw(false);
  let engine = $state.raw<Engine | undefined>();
  let player: Player | undefined;

  const timeline = $derived(engine?.timelineOf(props, lead, site.flams));
  const check = $derived(engine?.checkOf(props, lead));
  const sounding = $derived(news.state === 'opening' || news.state === 'playing');

  function requestOf(pattern: Timeline, plain: Timeline): PlayRequest {
    const { flamMs, loop, countIn, click, heard } = site;
    return {
      timeline: pattern,
      ...(site.check ? { check: { timeline: plain, bars: site.check } } : {}),
      bpm: quartersPerMinute(meter.text, tempo),
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
    if (lead !== leads[0]) void load();
  }

  /** Where the code for it does not arrive, the player's own settings hold. */
  async function receive(root: Element): Promise<void> {
    const link = await loadAgain(() => import('../links/sent.svelte.ts')).catch(() => undefined);
    memory.receive(link?.receive(root, { leads: props.leads, graces }, recall));
    recall();
  }

  function remember(write: (kept: typeof memory) => void): void {
    touched = true;
    void load();
    write(memory);
    forgetful ||= memory.mustSayForgetful();
  }

  /** Fetches the engine; gives undefined where it does not arrive, and tries again when asked again. */
  async function load(): Promise<Engine | undefined> {
    engine ??= await loadAgain(() => import('./engine.ts')).catch(() => undefined);
    return engine;
  }

  /** The sound is opened in the press itself, even if there is nothing to play yet: later a phone would refuse. */
  async function play(): Promise<void> {
    touched = true;
    if (request) return begin(request);
    news = { state: 'opening' };
    pageHouse.open();
    await load();
    if (news.state !== 'opening') return;
    if (request) begin(request);
    else news = { state: 'silent', reason: 'failed' };
  }

  function begin(wanted: PlayRequest): void {
    player ??= openPlayer();
    player.play(wanted);
  }

  function openPlayer(): Player {
    const opened = createPlayer();
    opened.on((event) => (news = event));
    return opened;
  }

  function stop(): void {
    player?.stop();
    news = { state: 'stopped' };
  }

  return {
    props,
    leads,
    swings,
    graces,
    slots,
    compound: meter.compound,
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
    get news() {
      return news;
    },
    get sounding() {
      return sounding;
    },
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
    position: (): Position | undefined => player?.position(),
    set: (change: Partial<SiteSettings>) => remember((kept) => kept.setSite(change)),
    resetHere: () => remember((kept) => kept.resetHere()),
    resetAll: () => remember((kept) => kept.resetAll()),
    /** A press is coming: whatever it will want may be fetched already. */
    expect: () => void load(),
    /** One button: call it inside the press. */
    toggle: () => (sounding ? stop() : void play()),
    stop,
    /** Goes on from the same place as things are set now. */
    follow: (next: PlayRequest) => player?.change(next),
    /** Begins with what is remembered, or with what a link set for the player at `root`. */
    wake(root: Element): () => void {
      recall();
      if (location.search) void receive(root);
      const sleep = memory.on(recall);
      return () => {
        sleep();
        player?.dispose();
      };
    },
  };
}
