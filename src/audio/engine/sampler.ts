import type { Seconds } from '../../core/index.ts';
import type { Instrument, ScheduledNote } from '../scheduler/scheduler.ts';
import type { ClickRank } from '../sequence/metronome.ts';
import type { Note } from '../sequence/sequence.ts';
import { soundOf, type Sound, type VoiceName } from '../voices/index.ts';
import type { SampleBank } from './sample-bank.ts';
import type { Graph } from './graph.ts';

const CLICKS: Record<ClickRank, VoiceName> = { bar: 'downbeat', beat: 'beat', slot: 'subdivision' };
/** Hats that ring on until the next stroke or step on them. */
const RINGING: readonly VoiceName[] = ['open', 'half', 'splash'];
const CLOSING: readonly VoiceName[] = ['hat', 'hat-tap', 'pedal', ...RINGING];
/** How fast closing the hats takes their sound away: to a third in so many seconds. */
const CLOSE: Seconds = 0.012;

interface PlayingNote {
  voice: VoiceName;
  when: Seconds;
  source: AudioBufferSourceNode;
  level: GainNode;
}

/** What is played for a note in a round of the loop, counted from 0. */
export function voiceFor(note: Note, round: number): Sound {
  if ('stroke' in note) return soundOf(note.stroke, round);
  return { voice: CLICKS[note.click], variant: 0, gain: 1, pan: 0 };
}

/** Plays the samples of a bank at exact times of an audio context. */
export class Sampler implements Instrument {
  readonly #context: BaseAudioContext;
  readonly #graph: Graph;
  readonly #bank: SampleBank;
  readonly #playing = new Set<PlayingNote>();

  constructor(context: BaseAudioContext, graph: Graph, bank: SampleBank) {
    this.#context = context;
    this.#graph = graph;
    this.#bank = bank;
  }

  now(): Seconds {
    return this.#context.currentTime;
  }

  trigger(note: Note, when: Seconds, round: number): ScheduledNote {
    const { voice, variant, gain, pan } = voiceFor(note, round);
    const source = this.#context.createBufferSource();
    const level = this.#context.createGain();
    source.buffer = this.#bank.take(voice, variant);
    level.gain.value = gain;
    source.connect(level).connect('click' in note ? this.#graph.click : this.#graph.drum(pan));
    source.start(when);
    const playing = { voice, when, source, level };
    const reopen = CLOSING.includes(voice) ? this.#close(when) : undefined;
    this.#playing.add(playing);
    source.onended = () => this.#remove(playing);
    return {
      cancel: () => {
        source.stop();
        this.#remove(playing);
        reopen?.();
      },
    };
  }

  /** Ends every sound at a time. */
  stopAll(when: Seconds): void {
    for (const { source } of this.#playing) source.stop(when);
  }

  /** Takes the ring of open hats away, and gives back what undoes that. */
  #close(when: Seconds): () => void {
    const open = [...this.#playing].filter((note) => RINGING.includes(note.voice) && note.when < when);
    for (const { level } of open) level.gain.setTargetAtTime(0, when, CLOSE);
    return () => open.forEach(({ level }) => level.gain.cancelScheduledValues(when));
  }

  #remove(note: PlayingNote): void {
    this.#playing.delete(note);
    note.source.disconnect();
    note.level.disconnect();
  }
}
