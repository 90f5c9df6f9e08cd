/** The sounds of the kit: pure functions from a name to samples, and from a stroke to a name. */
export type { Post, SynthAnswer, SynthRequest } from './answer.ts';
export { METRONOME_VOICES, VOICES, hasHands, variantsOf, type VoiceName } from './names.ts';
export { renderVoice } from './render.ts';
export { ROOM_SECONDS, renderRoom } from './room.ts';
export { hash, rng, xoshiro128, type GeneratorState, type Random } from './rng.ts';
export type { SampleRate, Signal } from './signal.ts';
export { soundOf, voiceOf, voicesOf, type Sound } from './sound.ts';
