import { createPlayer, type Player, type PlayRequest } from '../../../src/audio/index.ts';
import { pageHouse } from '../../../src/audio/house.ts';
import { quartersPerMinute } from '../../../src/core/time/meter.ts';
import type { SoundNews } from '../../../src/words/player.ts';
import { about } from '../player/about.ts';
import { loadAgain } from '../player/again.ts';
import { createMemory } from '../player/memory.ts';
import { leadsOf, type PlayerProps } from '../player/props.ts';
import { climbed, FOOT, moved, turned, type Climb } from './climb.ts';

/** What a ladder is handed by the page: its player's bar, the tempos on the way up, and how often each goes round. */
export interface LadderProps {
  player: PlayerProps;
  tempos: readonly number[];
  rounds: number;
}

/** How often it is looked where the sound has got to. */
const LOOK_MS = 40;

/** A ladder that plays: lead, flams, metronome and hands heard are those of the player above it. */
export function createLadder({ player: props, tempos, rounds }: LadderProps) {
  const rungs = { steps: tempos.length, rounds };
  const { meter } = about(props);
  const memory = createMemory(props.id);

  let at = $state.raw<Climb | undefined>();
  let news = $state.raw<SoundNews>({ state: 'stopped' });
  let player: Player | undefined;
  let engine: typeof import('../player/engine.ts') | undefined;
  let looking: ReturnType<typeof setInterval> | undefined;

  const sounding = $derived(news.state === 'opening' || news.state === 'playing');

  function request(step: number): PlayRequest {
    const { site, lead } = memory.recall();
    const leads = leadsOf(props);
    return {
      timeline: engine!.timelineOf(props, leads.find((one) => one === lead) ?? leads[0], site.flams),
      bpm: quartersPerMinute(meter.text, tempos[step]),
      swing: 1,
      flamMs: site.flamMs,
      loop: true,
      countIn: site.countIn,
      click: site.click,
      heard: site.heard,
      ...(props.counts ? { countSystem: props.counts } : {}),
    };
  }

  function go(next: Climb): void {
    const tempo = at && tempos[at.step];
    at = next;
    if (tempo !== tempos[next.step]) player?.change(request(next.step));
  }

  function look(): void {
    const round = player?.position()?.pass;
    if (!at || round === undefined) return;
    const next = climbed(at, round, rungs);
    if (next) go(next);
    else stop();
  }

  /** The sound is opened in the press itself; a phone would refuse later. */
  async function play(): Promise<void> {
    news = { state: 'opening' };
    pageHouse.open();
    engine ??= await loadAgain(() => import('../player/engine.ts')).catch(() => undefined);
    if (news.state !== 'opening') return;
    if (!engine) return void (news = { state: 'silent', reason: 'failed' });
    rest();
    at = FOOT;
    player ??= opened();
    player.play(request(at.step));
    looking = setInterval(look, LOOK_MS);
  }

  function opened(): Player {
    const one = createPlayer();
    one.on((event) => {
      news = event;
      if (event.state === 'stopped') rest();
    });
    return one;
  }

  function rest(): void {
    clearInterval(looking);
    at = undefined;
  }

  function stop(): void {
    player?.stop();
    news = { state: 'stopped' };
    rest();
  }

  return {
    get at() {
      return at;
    },
    get news() {
      return news;
    },
    get sounding() {
      return sounding;
    },
    toggle: () => (sounding ? stop() : void play()),
    turn: () => {
      if (at) at = turned(at);
    },
    /** Goes on from another step while it plays; else sets the tempo of the player above. Says which it did. */
    step(step: number): boolean {
      const round = player?.position()?.pass ?? 1;
      if (at) go(moved(at, step, round));
      else memory.setExercise({ tempo: tempos[step] });
      return at === undefined;
    },
    dispose(): void {
      rest();
      player?.dispose();
    },
  };
}
