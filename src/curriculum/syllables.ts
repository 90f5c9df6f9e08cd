/** Counts in the syllables of a school. What a lesson writes into attributes and what is computed counts 1 e & a. */
import {
  countNames,
  countSyllables,
  saySlot,
  slotOfCount,
  type CountSystem,
  type Grid,
  type MeterText,
  type TimelineBar,
} from '../core/index.ts';
import type { Answer } from './questions/answers.ts';

/** The bar that the count of an answer stands in; before bar 1 is counted as bar 1 is. */
export function barOfCount(answer: Answer & { kind: 'count' }, bars: readonly TimelineBar[]): TimelineBar {
  return bars[(answer.bar - 1) % bars.length] ?? bars[0];
}

/**
 * An answer as a school counts; what is no count, and a count that its bar does not have, stay as they are.
 *
 * @example answerIn({ kind: 'count', count: '1 &', bar: 1 }, [{ meter: '4/4', grid: 2 }], '1 ta te ta').said // 'the te of 1'
 */
export function answerIn(answer: Answer, bars: readonly TimelineBar[], system: CountSystem): Answer {
  if (answer.kind !== 'count') return answer;
  const { meter, grid } = barOfCount(answer, bars);
  const slot = countNames(meter, grid).indexOf(answer.count);
  if (slot < 0) return answer;
  return { ...answer, count: countNames(meter, grid, system)[slot], said: saySlot(meter, grid, slot, system) };
}

/** "the a of 4", in plain text and in HTML. */
const COUNT_SAID = /\b(the)\s+(&amp;|&|[a-z]+)\s+of\s+(\d+)\b/gi;

/**
 * A text of a lesson with the counts of some bars, "the a of 4", in the syllables of a school. What is named in another
 * way stays as its author wrote it.
 *
 * @example textIn('Who plays the & of 2?', [{ meter: '4/4', grid: 2 }], '1 ta te ta') // 'Who plays the te of 2?'
 */
export function textIn(text: string, bars: readonly TimelineBar[], system: CountSystem): string {
  return text.replace(COUNT_SAID, (written: string, the: string, syllable: string, beat: string) => {
    const said = bars
      .map((bar) => saidIn(`${beat} ${syllable.replace('&amp;', '&')}`, bar, system))
      .find((one) => one !== undefined);
    return said === undefined ? written : the + said.replace('&', syllable === '&amp;' ? '&amp;' : '&').slice(3);
  });
}

/**
 * One of the choices: a count that stands alone is said as a school says it, others as in any text.
 *
 * @example choiceIn('beat 2', [{ meter: '6/8', grid: 3 }], '1 2 3 4 5 6') // 'the 4'
 */
export function choiceIn(choice: string, bars: readonly TimelineBar[], system: CountSystem): string {
  return bars.map((bar) => saidIn(choice, bar, system)).find((said) => said !== undefined) ?? choice;
}

/** A count of a bar as a school says it; nothing where it has none such, or says it as it is written. */
function saidIn(count: string, { meter, grid }: TimelineBar, system: CountSystem): string | undefined {
  const read = slotOfCount(meter, grid, count);
  const said = read.ok ? saySlot(meter, grid, read.slot, system) : undefined;
  return read.ok && said === saySlot(meter, grid, read.slot) ? undefined : said;
}

/** The syllables of a beat: as the text of a lesson counts it, and as it is counted under the notes. */
export interface BeatApart {
  text: string;
  notes: string;
}

/** A meter with its slots a beat. */
interface Ruler {
  meter: MeterText;
  grid: Grid;
}

/**
 * The beats of some bars that a school counts otherwise than the text of a lesson, each once.
 *
 * @example beatsApart([{ meter: '4/4', grid: 4 }], '1 ta te ta') // [{ text: '1 e & a', notes: '1 ta te ta' }]
 */
export function beatsApart(bars: readonly Ruler[], system: CountSystem): BeatApart[] {
  const beat = ({ meter, grid }: Ruler, one?: CountSystem) => countSyllables(meter, grid, one).slice(0, grid).join(' ');
  const all = bars.map((bar) => ({ text: beat(bar), notes: beat(bar, system) }));
  return [...new Map(all.map((one) => [one.text + one.notes, one])).values()].filter(
    ({ text, notes }) => text !== notes,
  );
}

/**
 * Those of the beats of which a text names a syllable by itself: "its e", "on the a".
 *
 * @example strangersIn('The next one is its e.', [{ text: '1 e & a', notes: '1 ta te ta' }]).length // 1
 */
export function strangersIn(text: string, beats: readonly BeatApart[]): BeatApart[] {
  return beats.filter((beat) =>
    beat.text
      .split(' ')
      .slice(1)
      .some((one) => names(text, one)),
  );
}

/** Whether a text, plain or HTML, names a syllable; "a" only where something before shows that no article is meant. */
function names(text: string, syllable: string): boolean {
  const word = syllable === '&' ? '(?:&amp;|&(?!\\w+;))' : syllable;
  const before = syllable === 'a' ? '(?:\\bthe |\\bits |<em>)' : '(?:^|[\\s>])';
  return new RegExp(`${before}${word}(?=$|[\\s.,:;?!<])`, 'i').test(text);
}
