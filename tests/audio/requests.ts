import { checkPhrase, perform, type PerformOptions } from '../../src/core/index.ts';
import type { PlayRequest } from '../../src/audio/index.ts';
import type { NoteEvent } from '../../src/audio/sequence/sequence.ts';
import { phraseOf } from '../helpers/phrases.ts';

type Laid = Omit<Parameters<typeof phraseOf>[1] & object, never> & PerformOptions & { checked?: 1 | 2 | 4 };

/** A request to play a text at tempo 60, in a loop and without metronome, as far as nothing else is said. */
export function requestOf(text: string, laid: Laid = {}, rest: Partial<PlayRequest> = {}): PlayRequest {
  const { checked, flams, orchestration, counts, ...request } = laid;
  const phrase = phraseOf(text, request);
  return {
    timeline: perform(phrase, { flams, orchestration, counts }),
    ...(checked ? { check: { timeline: perform(checkPhrase(phrase)), bars: checked } } : {}),
    bpm: 60,
    swing: 1,
    flamMs: 30,
    loop: true,
    countIn: false,
    click: 'off',
    heard: 'all',
    ...rest,
  };
}

/** What a event is, in a word: the limb, small for a grace note, or the rank of a click. */
export function nameOf({ note }: NoteEvent): string {
  if ('click' in note) return note.click;
  return note.stroke.kind === 'grace' ? note.stroke.limb.toLowerCase() : note.stroke.limb;
}

/** Milliseconds, so that times compare as whole numbers. */
export const ms = (seconds: number): number => Math.round(seconds * 1e6) / 1e3;
