/** What a link sets for one bar: it lies over the player's own settings until something is changed. */
import { mount } from 'svelte';
import { LINK_LABELS, noPlaceSays, overridesSay, refusedSays } from '../../../src/words/links.ts';
import { type LinkOverrides, override } from '../player/settings.svelte.ts';
import { LEAD_OF } from '../../../src/core/phrase/types.ts';
import type { PlayerProps } from '../player/props.ts';
import OverrideLine from './OverrideLine.svelte';
import { type LinkSettings, type QueryName, withoutSettings } from './query.ts';
import { readQuery } from './read-query.ts';

/** What the settings of a link are called where they are remembered. */
const QUERY_NAMES: Record<string, QueryName> = { tempo: 'tempo', lead: 'lead', flamMs: 'flam' };

class Overrides implements LinkOverrides {
  readonly id: string;
  #settings = $state.raw<LinkSettings>({});
  #ended = $state.raw(false);

  constructor(id: string, settings: LinkSettings) {
    this.id = id;
    this.#settings = settings;
  }

  get tempo(): number | undefined {
    return this.#settings.tempo;
  }

  get lead() {
    return this.#settings.lead && LEAD_OF[this.#settings.lead];
  }

  get flamMs(): number | undefined {
    return this.#settings.flam;
  }

  get any(): boolean {
    return Object.keys(this.#settings).length > 0;
  }

  get says(): string {
    return this.#ended ? LINK_LABELS.ownAgain : overridesSay(this.#settings);
  }

  /** The address loses what no longer holds, so that a reload does not bring it back. */
  end(names: readonly string[]): void {
    const ended = names.flatMap((name) => QUERY_NAMES[name] ?? []);
    if (!ended.some((name) => this.#settings[name] !== undefined)) return;
    const left = Object.entries(this.#settings).filter(([name]) => !ended.includes(name as QueryName));
    this.#settings = Object.fromEntries(left);
    const query = withoutSettings(location.search, ended);
    history.replaceState(history.state, '', location.pathname + query + location.hash);
  }

  endAll(): void {
    this.end(Object.keys(QUERY_NAMES));
    this.#ended = true;
  }
}

/** Reads what the address sets for the bar whose player is the form `root`, and puts a line about it there. */
export function overrideByLink(root: Element, { id, leads, graces }: PlayerProps): void {
  const { settings, refused } = readQuery(location.search, { leads, graces });
  const anchor = location.hash.slice(1);
  const missing = anchor && !document.getElementById(anchor) ? [noPlaceSays(anchor)] : [];
  const overrides = new Overrides(id, settings);
  override(overrides);
  mount(OverrideLine, {
    target: root,
    anchor: root.firstElementChild ?? undefined,
    props: {
      overrides,
      refused: [...missing, ...refused.map(refusedSays)],
      onback: () => {
        overrides.endAll();
        // The button that was pressed is gone.
        root.querySelector<HTMLButtonElement>('.transport button')?.focus();
      },
    },
  });
}
