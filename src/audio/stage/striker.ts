import type { Seconds } from '../../core/index.ts';
import type { Order } from '../conductor/conductor.ts';
import type { ClickRank } from '../plan/metronome.ts';
import type { Sounding } from '../plan/plan.ts';
import { soundOf, type Sound, type VoiceName } from '../voices/index.ts';
import type { Bank } from './bank.ts';
import type { Graph } from './graph.ts';

const CLICKS: Record<ClickRank, VoiceName> = { bar: 'downbeat', beat: 'beat', slot: 'subdivision' };
/** Hats that ring on until the next stroke or step on them. */
const RINGING: readonly VoiceName[] = ['open', 'half', 'splash'];
const CLOSING: readonly VoiceName[] = ['hat', 'hat-tap', 'pedal', ...RINGING];
/** How fast closing the hats takes their sound away: to a third in so many seconds. */
const CLOSE: Seconds = 0.012;

interface Strike {
  voice: VoiceName;
  when: Seconds;
  source: AudioBufferSourceNode;
  level: GainNode;
}

/** What is played for a sound in a round of the loop, counted from 0. */
export function voiceFor(sound: Sounding, round: number): Sound {
  if ('stroke' in sound) return soundOf(sound.stroke, round);
  return { voice: CLICKS[sound.click], variant: 0, gain: 1, pan: 0 };
}

/** Strikes the sounds of a bank at exact times of an audio context. */
export class Striker {
  readonly #context: BaseAudioContext;
  readonly #graph: Graph;
  readonly #bank: Bank;
  readonly #strikes = new Set<Strike>();

  constructor(context: BaseAudioContext, graph: Graph, bank: Bank) {
    this.#context = context;
    this.#graph = graph;
    this.#bank = bank;
  }

  now(): Seconds {
    return this.#context.currentTime;
  }

  strike(sound: Sounding, when: Seconds, round: number): Order {
    const { voice, variant, gain, pan } = voiceFor(sound, round);
    const source = this.#context.createBufferSource();
    const level = this.#context.createGain();
    source.buffer = this.#bank.take(voice, variant);
    level.gain.value = gain;
    source.connect(level).connect('click' in sound ? this.#graph.click : this.#graph.drum(pan));
    source.start(when);
    const strike = { voice, when, source, level };
    const reopen = CLOSING.includes(voice) ? this.#close(when) : undefined;
    this.#strikes.add(strike);
    source.onended = () => this.#remove(strike);
    return {
      cancel: () => {
        source.stop();
        this.#remove(strike);
        reopen?.();
      },
    };
  }

  /** Ends every sound at a time. */
  stopAll(when: Seconds): void {
    for (const { source } of this.#strikes) source.stop(when);
  }

  /** Takes the ring of open hats away, and gives back what undoes that. */
  #close(when: Seconds): () => void {
    const open = [...this.#strikes].filter((strike) => RINGING.includes(strike.voice) && strike.when < when);
    for (const { level } of open) level.gain.setTargetAtTime(0, when, CLOSE);
    return () => open.forEach(({ level }) => level.gain.cancelScheduledValues(when));
  }

  #remove(strike: Strike): void {
    this.#strikes.delete(strike);
    strike.source.disconnect();
    strike.level.disconnect();
  }
}
