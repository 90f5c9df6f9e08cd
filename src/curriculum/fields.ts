import { z } from 'astro/zod';
import { COUNT_SYSTEMS, TEMPO_LIMITS, type CountSystem, type LeadName } from '../core/index.ts';

/**
 * The fields that several kinds of content share. The error text of each says what can stand there, as the end of the
 * sentence "… takes …", so that one checker can tell a teacher about all of them in the same way.
 */

/** Ids are file names and addresses: `flam-drag`. They never change. */
export const ID_PATTERN = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** What an id may be, in words. */
export const ID_SAYS = 'an id of small letters, digits and single hyphens, like flam-drag';

/** An id. */
export const id = () => z.string({ error: ID_SAYS }).regex(ID_PATTERN, { error: ID_SAYS });

/** A list of ids, each at most once; empty when left out. */
export const ids = (what: string) =>
  z
    .array(id(), { error: `a list of ${what} in square brackets, like [flam, flam-drag]` })
    .refine((list) => new Set(list).size === list.length, { error: `a list that names each of its ${what} once` })
    .default([]);

/** Words on one line: titles, ideas, purposes. */
export const line = (says: string, max = 200) =>
  z
    .string({ error: says })
    .trim()
    .min(1, { error: says })
    .max(max, { error: `${says}, at most ${max} characters long` })
    .regex(/^[^\r\n]*$/, { error: `${says}, on one line` });

/** Words that may run over several lines. */
export const prose = (says: string) => z.string({ error: says }).trim().min(1, { error: says });

/** A whole number between two limits, both included. */
export const whole = (min: number, max: number, what: string) => {
  const error = `${what}, a whole number from ${min} to ${max}`;
  return z.int({ error }).min(min, { error }).max(max, { error });
};

/** One of a few words. */
export const oneOf = <const T extends readonly [string, ...string[]]>(words: T) =>
  z.enum(words, { error: `one of: ${words.join(', ')}` });

const METER_SAYS = 'a meter like 4/4, 6/8 or 2+2+3/8';

/** A meter as it is written; what it means is core's to say. */
export const meter = () => z.string({ error: METER_SAYS }).regex(/^\d+(\+\d+)*\/\d+$/, { error: METER_SAYS });

/** What a grid is in every meter, for those who write one. */
export const GRID_SAYS =
  'slots a beat. Over 4, the beat is a quarter: 2 eighths, 3 triplets, 4 sixteenths. In 6/8, 9/8 and 12/8 it is a dotted quarter: 3 eighths, 6 sixteenths. In other meters over 8 it is an eighth: 1 eighths, 2 sixteenths';

/** What a tempo counts, for those who write one. */
export const TEMPO_SAYS =
  'beats a minute: where to begin, where to arrive. In 6/8, 9/8 and 12/8 dotted quarters, in every other meter quarters';

/** Slots a beat. */
export const grid = () => whole(1, 8, 'slots a beat');

/** Sticking text; the parser of core judges it. */
export const sticking = () => prose('a sticking in quotes, like ">lR LL R"');

/** Slots before bar 1. */
export const pickup = () => whole(1, 127, 'slots before bar 1');

const beats = () => whole(TEMPO_LIMITS.min, TEMPO_LIMITS.max, 'beats a minute');

/** Where to begin and where to arrive, in beats a minute (dotted quarters in 6/8, 9/8 and 12/8). */
export const tempo = () =>
  z
    .strictObject({ from: beats(), to: beats() }, { error: 'a tempo like { from: 50, to: 90 }' })
    .refine((range) => range.from < range.to, { error: 'a slower tempo in from than in to', path: ['from'] });

/** Which hand leads, as authors and players say it. */
export const LEADS = ['right', 'left', 'alternating'] as const satisfies readonly LeadName[];

/** Which staff a bar is drawn on. */
export const STAVES = ['pad', 'kit', 'auto'] as const;

/** One line for the pad, five for the kit, or whichever the strokes need. */
export type StaffName = (typeof STAVES)[number];

const SYSTEMS = COUNT_SYSTEMS as [CountSystem, ...CountSystem[]];

/** A way of counting, by its name in core; some places also take a word of their own, like `off`. */
export const countSystem = () => oneOf(SYSTEMS);

/** A way of counting, or none. */
export const countsOrOff = () => oneOf([...SYSTEMS, 'off']);

/** The ids in a `cells` attribute: `cellIds('kick rll')` is `['kick', 'rll']`. */
export function cellIds(text: string): string[] {
  return text.split(/\s+/).filter((one) => one !== '');
}
