import type { Signal, VoiceName } from '../voices/index.ts';

/** What makes the samples: all takes of a voice, and the room's impulse response as two channels, at one sample rate. */
export interface Renderer {
  voice(name: VoiceName): Promise<readonly Signal[]>;
  room(): Promise<readonly Signal[]>;
  dispose(): void;
}

/** The sounds of one audio context as buffers. */
export class SampleBank {
  readonly #context: BaseAudioContext;
  readonly #renderer: Renderer;
  readonly #loading = new Map<VoiceName, Promise<void>>();
  readonly #takes = new Map<VoiceName, AudioBuffer[]>();

  constructor(context: BaseAudioContext, renderer: Renderer) {
    this.#context = context;
    this.#renderer = renderer;
  }

  /** Resolves once all these voices can be played; each is rendered once. Rejects, and can be tried again, where one fails. */
  async load(names: readonly VoiceName[]): Promise<void> {
    await Promise.all(names.map((name) => this.#loading.get(name) ?? this.#begin(name)));
  }

  /** One take of a voice. Throws RangeError where it was not loaded. */
  take(name: VoiceName, variant: number): AudioBuffer {
    const takes = this.#takes.get(name);
    if (!takes) throw new RangeError(`the voice "${name}" was not loaded`);
    return takes[variant % takes.length];
  }

  /** The room's impulse response. */
  async room(): Promise<AudioBuffer> {
    return this.#bufferOf(await this.#renderer.room());
  }

  dispose(): void {
    this.#renderer.dispose();
  }

  #begin(name: VoiceName): Promise<void> {
    const loading = this.#fetch(name);
    this.#loading.set(name, loading);
    loading.catch(() => this.#loading.delete(name));
    return loading;
  }

  async #fetch(name: VoiceName): Promise<void> {
    const signals = await this.#renderer.voice(name);
    const buffers = signals.map((signal) => this.#bufferOf([signal]));
    this.#takes.set(name, buffers);
  }

  #bufferOf(channels: readonly Signal[]): AudioBuffer {
    const buffer = this.#context.createBuffer(channels.length, channels[0].length, this.#context.sampleRate);
    channels.forEach((channel, i) => buffer.getChannelData(i).set(channel));
    return buffer;
  }
}
