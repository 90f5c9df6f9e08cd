/** Settings that a link sent to one bar: they lie over the player's own until something is changed. */
import { mount } from 'svelte';
import type { ExerciseMemory, SiteSettings } from '../../../src/storage/index.ts';
import { LINK_LABELS, noPlaceSays, refusedSays, sentSays } from '../../../src/words/links.ts';
import { LEADS } from '../player/props.ts';
import { type LinkSettings, type Offered, readSettings, withoutSettings } from './settings.ts';
import SentLine from './SentLine.svelte';

/** What is remembered for a player. */
type Kept = ExerciseMemory & { site: SiteSettings };

/** What a link set, as the player's memory sees it. */
export interface Sent {
  /** What is remembered, with what the link set laid over it. */
  over(own: Kept): Kept;
  /** Gives up settings of these names, because the player chose for themselves. */
  giveUp(change: object): void;
}

/** What the player's memory calls a link's settings. */
const NAME_OF: Record<string, keyof LinkSettings> = { tempo: 'tempo', lead: 'lead', flamMs: 'flam' };

/**
 * Reads what the address sets for the player in the form `root`, and puts a line about it there. Gives undefined where
 * the address says nothing about that player. `again` is called when the player's own come back.
 */
export function receive(root: Element, offered: Offered, again: () => void): Sent | undefined {
  // What loads the player on the first sign has found out which one the address leads to.
  if (!root.hasAttribute('data-linked')) return undefined;
  const { settings, refused } = readSettings(location.search, offered);
  if (Object.keys(settings).length + refused.length === 0) return undefined;
  let left = $state.raw(settings);
  let back = $state.raw(false);

  /** The address gives up what no longer holds, so that a reload does not bring it back. */
  const drop = (names: readonly string[]) => {
    left = Object.fromEntries(Object.entries(left).filter(([name]) => !names.includes(name)));
    history.replaceState(
      history.state,
      '',
      location.pathname + withoutSettings(location.search, names) + location.hash,
    );
  };
  const backToOwn = () => {
    drop(['tempo', 'lead', 'flam']);
    back = true;
    again();
    // The button that was pressed is gone.
    root.querySelector<HTMLButtonElement>('.transport button')?.focus();
  };

  mount(SentLine, {
    target: root,
    anchor: root.firstElementChild ?? undefined,
    props: {
      says: () => (back ? LINK_LABELS.ownAgain : sentSays(left)),
      canGoBack: () => Object.keys(left).length > 0,
      refused: [...noPlace(location.hash.slice(1)), ...refused.map(refusedSays)],
      onback: backToOwn,
    },
  });
  return {
    over: (own) => ({
      ...own,
      ...(left.tempo && { tempo: left.tempo }),
      ...(left.lead && { lead: LEADS[left.lead] }),
      ...(left.flam && { site: { ...own.site, flamMs: left.flam } }),
    }),
    giveUp: (change) => {
      const names = Object.keys(change).flatMap((name) => NAME_OF[name] ?? []);
      if (names.some((name) => left[name] !== undefined)) drop(names);
    },
  };
}

const noPlace = (anchor: string): string[] => (anchor && !document.getElementById(anchor) ? [noPlaceSays(anchor)] : []);
