/** What a question says of counts, in the syllables of the school. */
import type { CountSystem, TimelineBar } from '../../src/core/index.ts';
import { answerIn, beatsApart, strangersIn, textIn } from '../../src/curriculum/index.ts';
import type { Answer } from '../../src/curriculum/index.ts';
import { countsApart } from '../../src/words/lessons.ts';

/** How a question about some bars says an answer and a text, and what is to be added to what it says. */
export function inSyllables(bars: readonly TimelineBar[], system: CountSystem) {
  return {
    answer: (answer: Answer) => (bars.length > 0 ? answerIn(answer, bars, system) : answer),
    text: (text: string) => textIn(text, bars, system),
    /** That its text counts otherwise, where it still names a syllable by itself. */
    apart: (text: string) => countsApart(strangersIn(text, beatsApart(bars, system))),
  };
}
