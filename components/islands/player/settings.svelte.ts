/**
 * What players are set to. All players of a page ask here: what is remembered for the site and for each bar, under what a
 * link overrides for one bar.
 */
import { createSubscriber } from 'svelte/reactivity';
import { LEAD_OF, type Lead } from '../../../src/core/phrase/types.ts';
import { DEFAULTS, type ExerciseMemory, openPlayers, type SiteSettings } from '../../../src/storage/index.ts';
import { differing, printQuery } from '../links/query.ts';
import { leadsOf, type PlayerProps } from './props.ts';

/** What a link sets for one bar; each value holds until the player chooses another. */
export interface LinkOverrides {
  /** Of the bar. */
  readonly id: string;
  readonly tempo?: number | undefined;
  readonly lead?: Lead | undefined;
  readonly flamMs?: number | undefined;
  /** Ends those of these names, because the player has chosen. */
  end(names: readonly string[]): void;
}

/** What is remembered, as state: it follows what any player, any tab and any link changes. */
class PageSettings {
  readonly store = openPlayers(import.meta.env.SSR ? { area: undefined } : {});
  readonly #follow = createSubscriber((update) => this.store.on(update));
  overrides = $state.raw<LinkOverrides | undefined>();
  /** Whether somebody has been told that this browser remembers nothing. */
  told = false;

  get site(): SiteSettings {
    this.#follow();
    return this.store.site();
  }

  exercise(id: string): ExerciseMemory {
    this.#follow();
    return this.store.exercise(id);
  }
}

const page = new PageSettings();

/** How every bar of the site is played, where no link overrides it. */
export const siteSettings = (): Readonly<SiteSettings> => page.site;

/** Lays what a link sets over what is remembered. */
export const override = (overrides: LinkOverrides): void => void (page.overrides = overrides);

/** How one bar is played: its own tempo and lead, and what holds for the whole site. */
export class BarSettings {
  readonly #bar: Pick<PlayerProps, 'id' | 'tempo' | 'leads'>;
  readonly #leads: readonly [Lead, ...Lead[]];
  #forgetful = $state.raw(false);

  constructor(bar: Pick<PlayerProps, 'id' | 'tempo' | 'leads'>) {
    this.#bar = bar;
    this.#leads = leadsOf(bar);
  }

  get #overrides(): LinkOverrides | undefined {
    return page.overrides?.id === this.#bar.id ? page.overrides : undefined;
  }

  /** Beats a minute. */
  get tempo(): number {
    return this.#overrides?.tempo ?? page.exercise(this.#bar.id).tempo ?? this.#bar.tempo.from;
  }

  set tempo(tempo: number) {
    this.#choose(['tempo'], () => page.store.setExercise(this.#bar.id, { tempo }));
  }

  get lead(): Lead {
    const chosen = this.#overrides?.lead ?? page.exercise(this.#bar.id).lead;
    return this.#leads.find((offered) => offered === chosen) ?? this.#leads[0];
  }

  set lead(lead: Lead) {
    this.#choose(['lead'], () => page.store.setExercise(this.#bar.id, { lead }));
  }

  get site(): Readonly<SiteSettings> {
    const flamMs = this.#overrides?.flamMs;
    return flamMs === undefined ? page.site : { ...page.site, flamMs };
  }

  /** Changes what holds for the whole site. */
  setSite(change: Partial<SiteSettings>): void {
    this.#choose(Object.keys(change), () => page.store.setSite(change));
  }

  /** Tempo and lead as the bar begins by itself. */
  resetHere(): void {
    this.#choose(['tempo', 'lead'], () => page.store.resetExercise(this.#bar.id));
  }

  /** Every bar and the whole site as they begin by themselves. */
  resetAll(): void {
    this.#choose(['tempo', 'lead', 'flamMs'], () => page.store.resetPlayers());
  }

  /** True in the one bar that has to say that this browser remembers nothing. */
  get forgetful(): boolean {
    return this.#forgetful;
  }

  /** What a link to the bar carries as its query: all that is set otherwise than the bar begins by itself. */
  get query(): string {
    const nameOf = (lead: Lead) => this.#bar.leads.find((name) => LEAD_OF[name] === lead);
    const now = { tempo: this.tempo, lead: nameOf(this.lead), flam: this.site.flamMs };
    const own = { tempo: this.#bar.tempo.from, lead: nameOf(this.#leads[0]), flam: DEFAULTS.flamMs };
    return printQuery(differing(now, own));
  }

  #choose(names: readonly string[], remember: () => void): void {
    this.#overrides?.end(names);
    remember();
    if (page.store.persistent || page.told) return;
    page.told = true;
    this.#forgetful = true;
  }
}
