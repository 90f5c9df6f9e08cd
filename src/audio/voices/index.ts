/** The sounds of the kit: pure functions from a name to samples, and from a stroke to a name. */
export type { SynthAnswer, SynthRequest } from './answer.ts';
export { METRONOME_VOICES, VOICES, variantsOf, type VoiceName } from './names.ts';
export { renderVoice } from './render.ts';
export { ROOM_SECONDS, renderRoom } from './room.ts';
export { hash, rng, xoshiro128 } from './rng.ts';
export type { Signal } from './signal.ts';
export { soundOf, voiceOf, voicesOf, type Sound } from './sound.ts';
