import type { PlayRequest } from '../../../src/audio/index.ts';
import { loadAgain } from '../../../src/audio/load-again.ts';
import { Playback } from '../player/playback.svelte.ts';
import type { PlayerProps } from '../player/props.ts';
import { BarSettings } from '../player/settings.svelte.ts';
import { climbed, FOOT, moved, turned, type Climb, type Rungs } from './climb.ts';

/** What a ladder is handed by the page: its player's bar, the tempos on the way up, and how often each goes round. */
export interface LadderProps {
  player: PlayerProps;
  tempos: readonly number[];
  rounds: number;
}

type Engine = typeof import('../player/engine.ts');

/** How often it is looked where the sound has got to. */
const LOOK_MS = 40;

/** A ladder that plays: lead, flams, metronome and hands heard are those of the player above it. */
export class Ladder {
  readonly playback = new Playback();
  readonly #props: PlayerProps;
  readonly #tempos: readonly number[];
  readonly #rungs: Rungs;
  readonly #settings: BarSettings;
  #at = $state.raw<Climb | undefined>();
  #engine: Engine | undefined;

  /** To be called while a component is set up: the climb ends with the sound. */
  constructor({ player, tempos, rounds }: LadderProps) {
    this.#props = player;
    this.#tempos = tempos;
    this.#rungs = { steps: tempos.length, rounds };
    this.#settings = new BarSettings(player);
    $effect(() => {
      if (!this.playback.active) return;
      const looking = setInterval(() => this.#look(), LOOK_MS);
      return () => {
        clearInterval(looking);
        this.#at = undefined;
      };
    });
  }

  /** Where one stands on it; undefined while it is silent. */
  get at(): Climb | undefined {
    return this.#at;
  }

  /** One button: call it inside the press. */
  toggle(): void {
    if (this.playback.active) return this.playback.stop();
    this.#at = FOOT;
    this.playback.play(this.#opening());
  }

  /** From here on down. */
  turn(): void {
    if (this.#at) this.#at = turned(this.#at);
  }

  /** Goes on from another step while it plays; else sets the tempo of the player above. Says whether it did that. */
  step(step: number): boolean {
    const round = this.playback.position()?.pass ?? 1;
    if (this.#at) this.#go(moved(this.#at, step, round));
    else this.#settings.tempo = this.#tempos[step];
    return this.#at === undefined;
  }

  /** Meanwhile another step may have been pressed. */
  async #opening(): Promise<PlayRequest> {
    this.#engine ??= await loadAgain(() => import('../player/engine.ts'));
    return this.#request(this.#engine, (this.#at ?? FOOT).step);
  }

  #request(engine: Engine, step: number): PlayRequest {
    const { site, lead } = this.#settings;
    const { meter, counts } = this.#props;
    return {
      timeline: engine.timelineOf(this.#props, lead, site.flams),
      bpm: engine.quartersPerMinute(meter, this.#tempos[step]),
      swing: 1,
      flamMs: site.flamMs,
      loop: true,
      countIn: site.countIn,
      click: site.click,
      heard: site.heard,
      ...(counts ? { countSystem: counts } : {}),
    };
  }

  #go(next: Climb): void {
    const before = this.#at?.step;
    this.#at = next;
    if (this.#engine && next.step !== before) this.playback.change(this.#request(this.#engine, next.step));
  }

  #look(): void {
    const round = this.playback.position()?.pass;
    if (!this.#at || round === undefined) return;
    const next = climbed(this.#at, round, this.#rungs);
    if (next) this.#go(next);
    else this.playback.stop();
  }
}
