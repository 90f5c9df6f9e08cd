import type { FixRule } from '../../core/index.ts';
import type { record } from '../../core/puzzle/kinds/fix.ts';
import { BAR_WORD } from '../site.ts';
import { leadNote, ordinal, placeSays, runRule, theCell, type NameOf, type WordsFor } from './say.ts';

/** What is said of the kind `fix`. */
export const words: WordsFor<typeof record> = {
  title: 'Fix the sticking',
  idea: `A ${BAR_WORD} keeps to a rule, but for one stroke. Find it.`,
  how: 'Say the sticking aloud, hand by hand, until the tongue trips. Where mending one stroke or another would do, both are right.',
  card: ({ asked }, nameOf) => ({ task: 'One stroke breaks the rule. Find it.', rules: [ruleSays(asked, nameOf)] }),
  answer: placeSays,
  wrong: (puzzle, { slot }) =>
    `That stroke is not it: with ${placeSays(puzzle, slot)} changed, the rule would still be broken.`,
};

function ruleSays(asked: FixRule, nameOf: NameOf): string {
  switch (asked.rule) {
    case 'hand-to-hand':
      return 'The hands take turns, stroke by stroke.';
    case 'no-more-than':
      return runRule(asked.most);
    case 'accents':
      return `Every ${ordinal(asked.every)} stroke has an accent, from beat 1 on, and no other has one.`;
    case 'cell': {
      const { id, text } = asked.cell;
      const lead = asked.lead === 'alternating' ? 'the hand that did not lead the one before' : 'the same hand';
      return `It is ${theCell(nameOf(id))} over and over (${text}), each led by ${lead}.${leadNote(text)}`;
    }
  }
}
