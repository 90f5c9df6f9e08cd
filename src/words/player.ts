/** What a player says: the labels of its controls and the sentences about its state. */
import { sayBars } from './grammar.ts';

/** What becomes of the sound, and why; states and reasons are the sound's own. */
export interface SoundStatus {
  state: 'stopped' | 'opening' | 'playing' | 'interrupted' | 'silent';
  reason?: keyof typeof SILENT | 'hidden' | undefined;
}

/** Labels of the controls. */
export const PLAYER_LABELS = sayBars({
  play: 'Play',
  stop: 'Stop',
  tempo: 'tempo',
  slower: 'slower by one',
  faster: 'faster by one',
  tap: 'tap',
  tapLong: 'tap the tempo',
  check: 'check pattern',
  lead: 'lead',
  flams: 'flams written',
  flamWidth: 'flam width',
  more: 'More',
  loop: 'repeat',
  countIn: 'count in a bar',
  counts: 'show the count',
  heights: 'draw stroke heights',
  click: 'metronome',
  heard: 'hands heard',
  swing: 'swing',
  resetOne: 'Reset tempo and lead here',
  resetAll: 'Reset every player',
  loading: 'Loading the player …',
  failed: 'The player did not load: the connection may be gone. Press again to try again.',
  checkBar: 'check bar',
  engraving: 'Writing it out …',
  notEngraved: 'The new notes could not be drawn: the connection may be gone. The sound is as chosen.',
  forgetful: 'This browser does not let the site remember your tempo and settings. They hold until you leave the page.',
});

/** One way of a choice: what is kept, and what is read on it. */
export interface Choice<T> {
  value: T;
  label: string;
  /** The whole of it, where the label is short. */
  says?: string;
}

/** Bars of check pattern before as many of the exercise. */
export const CHECKS: readonly Choice<0 | 1 | 2 | 4>[] = [
  { value: 0, label: 'off' },
  { value: 1, label: '1:1', says: '1:1, one to one' },
  { value: 2, label: '2:2', says: '2:2, two to two' },
  { value: 4, label: '4:4', says: '4:4, four to four' },
];

/** The hand that leads. */
export const LEAD_CHOICES = [
  { value: 'written', label: 'right' },
  { value: 'left', label: 'left' },
  { value: 'alternating', label: 'alternating' },
] as const satisfies readonly Choice<string>[];

/** How grace notes are played: as wide as chosen, or as notes of their own. */
export const FLAMS = [
  { value: 'grace', label: 'grace', says: 'grace notes' },
  { value: 'before', label: 'before', says: 'written out before the beat' },
  { value: 'on', label: 'on the beat', says: 'written out on the beat' },
] as const satisfies readonly Choice<string>[];

/** Whose strokes sound. */
export const HEARD = [
  { value: 'all', label: 'both' },
  { value: 'R', label: 'right only' },
  { value: 'L', label: 'left only' },
] as const satisfies readonly Choice<string>[];

/**
 * What the metronome clicks, by the name of the subdivision.
 *
 * @example clickChoices('sixteenths')[2].label // 'beats and sixteenths'
 */
export function clickChoices(slots: string): readonly Choice<'off' | 'beats' | 'slots'>[] {
  return [
    { value: 'off', label: 'off' },
    { value: 'beats', label: 'beats' },
    { value: 'slots', label: `beats and ${slots}` },
  ];
}

/**
 * The button's full name, for those who hear it without seeing what stands above it.
 *
 * @example playName(false, 'The flam drag') // 'Play: The flam drag'
 */
export function playName(sounding: boolean, what: string | undefined): string {
  const verb = sounding ? PLAYER_LABELS.stop : PLAYER_LABELS.play;
  return what ? `${verb}: ${what}` : verb;
}

/**
 * What a beat is and how many there are.
 *
 * @example tempoSays(72, false) // '72 quarter notes a minute'
 */
export const tempoSays = (tempo: number, compound: boolean): string => `${tempo} ${tempoUnit(compound)}`;

/** What a tempo counts. */
export const tempoUnit = (compound: boolean): string =>
  `${compound ? 'dotted quarter notes' : 'quarter notes'} a minute`;

/**
 * Swing as a ratio of the long to the short note.
 *
 * @example swingSays(1.5) // '1.5 : 1'
 */
export function swingSays(ratio: number): string {
  return ratio === 1 ? 'even' : `${Number(ratio.toFixed(1))} : 1`;
}

/**
 * What the rarer settings change, told beside the closed drawer so that nothing odd is heard without a reason.
 *
 * @example changesSay({ swing: 2, heard: 'L' }) // 'left only, swing 2 : 1'
 */
export function changesSay(settings: { swing: number; heard: 'all' | 'R' | 'L' }): string {
  const hand = HEARD.find((choice) => choice.value === settings.heard);
  const parts = [
    settings.heard === 'all' ? '' : (hand?.label ?? ''),
    settings.swing === 1 ? '' : `${PLAYER_LABELS.swing} ${swingSays(settings.swing)}`,
  ];
  return parts.filter(Boolean).join(', ');
}

/** Each says what is known and no more: what may be the cause is said to be so. */
const SILENT = {
  'no-output': 'This browser gave the page no way to make sound. Press again to try again.',
  loading: 'The sound did not load: the connection may be slow or gone. Press again to try again.',
  sounds: 'The drum sounds were not ready in time. Press again to try again.',
  suspended:
    'The browser has not started the sound: it may be blocked for this page, or there may be no sound device. Press again to try again.',
  'no-device': 'No sound comes out: the sound device may be gone or in use elsewhere. Press again to try again.',
  closed: 'The browser has closed the sound. Press again to play.',
  failed: 'The sound broke off. Press again to play.',
};

const INTERRUPTED = 'The browser has paused the sound. It goes on when the browser lets it, or press to begin again.';
const HIDDEN = 'Stopped when the page was left. Press to play again.';

/**
 * One sentence about the sound; nothing where it is stopped as asked.
 *
 * @example soundSays({ state: 'opening' }) // 'Opening the sound …'
 */
export function soundSays({ state, reason }: SoundStatus): string {
  if (state === 'opening') return 'Opening the sound …';
  if (state === 'playing') return 'Playing.';
  if (state === 'interrupted') return INTERRUPTED;
  if (reason === 'hidden') return HIDDEN;
  return state === 'silent' ? SILENT[reason ?? 'failed'] : '';
}
