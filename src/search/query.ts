/** What someone typed into the search: a sticking, or words. */
import { parseSticking, printSticking, slotsOnly, type Sticking } from '../core/index.ts';

/** A sticking with its text as it is printed. */
export interface PrintedSticking {
  text: string;
  sticking: Sticking;
}

/** As long as the longest sticking. */
export const MOST_CHARACTERS = 4_096;

/** What is looked for. */
export type Query =
  | {
      as: 'sticking';
      /** The text as the letters stand; left out where they are no sticking as they stand. */
      written?: PrintedSticking;
      /** The same letters with a stroke to each slot, where that is another sticking. */
      single?: PrintedSticking;
    }
  | {
      as: 'words';
      /** Where it looked like a sticking: why it is none, and what the letters are with a stroke to each slot. */
      because?: string;
      single?: PrintedSticking;
    };

/**
 * Tells a sticking from words. A letter alone is a word. Letters that stand close together (`RLRR LRLL`) or small
 * (`rll`) have a second reading, a stroke to each slot. What has strokes in it and a fault is words, and says why.
 *
 * @example readQuery('rll').single.text // 'R L L'
 */
export function readQuery(text: string): Query {
  const words = text.trim();
  const read = parseSticking(words);
  // Nothing so long is looked for, neither letter by letter nor word by word.
  if (words.length > MOST_CHARACTERS) return { as: 'words', ...(!read.ok && { because: read.fault.message }) };
  const written = read.ok && strokes(read.sticking) > 1 ? printed(read.sticking) : undefined;
  const single = oneStrokeASlot(words, written?.text);
  if (written || (single && !isMixed(words)))
    return { as: 'sticking', ...(written && { written }), ...(single && !isMixed(words) && { single }) };
  if (read.ok || !looksLikeSticking(words)) return { as: 'words' };
  return { as: 'words', because: read.fault.message, ...(single && { single }) };
}

/** Small letters among capitals are meant as grace notes, or capitals as accents. */
const isMixed = (words: string): boolean => /[rlkh]/.test(words) && /[RLKH]/.test(words);

const printed = (sticking: Sticking): PrintedSticking => ({ text: printSticking(sticking), sticking });

/** Strokes of the hands' line, grace notes with them. */
function strokes({ hands }: Sticking): number {
  const chords = slotsOnly(hands).flatMap((slot) => (slot.kind === 'slot' ? slot.parts.flat() : []));
  return chords.reduce((sum, stroke) => sum + 1 + (stroke.graces?.length ?? 0), 0);
}

function oneStrokeASlot(words: string, written: string | undefined): PrintedSticking | undefined {
  if (!/^[RLKH\s]+$/i.test(words)) return undefined;
  const letters = words.toUpperCase().match(/[RLKH]/g) ?? [];
  const spaced = parseSticking(letters.join(' '));
  if (letters.length < 2 || !spaced.ok) return undefined;
  return letters.join(' ') === written ? undefined : printed(spaced.sticking);
}

/** Signs of a sticking and a stroke among them. */
const SIGNS = /^(?=.*[RLKH])[RLKHrlz>^(){}[\]|+_\d\s:/@-]+$/;

/** Only signs of a sticking, or a stroke on a surface, or more strokes than other words. */
function looksLikeSticking(words: string): boolean {
  const parts = words.split(/\s+/);
  const good = parts.filter((part) => /[RLKH]/.test(part) && parseSticking(part).ok).length;
  return SIGNS.test(words) || /(^|\s)\W?[RLKH]@/.test(words) || (good > 1 && good * 2 > parts.length);
}
