import { stringify } from 'yaml';

/** A text as YAML writes it on one line, in quotes where it needs them: single ones, unless it has such itself. */
const said = (text: string): string => stringify(text, { lineWidth: 0, singleQuote: true }).trim();

/** What a new lesson begins with. */
export interface LessonStart {
  id: string;
  part: number;
  order: number;
  title: string;
}

/**
 * A lesson to write on: it builds as it is, and its comments say what goes where. Each is one line: a formatter of MDX may
 * take the star of a longer one for emphasis.
 */
export function lessonText({ id, part, order, title }: LessonStart): string {
  return `---
id: ${id} # the address of the lesson, for ever
part: ${part}
order: ${order} # the place in the part
title: ${said(title)}
idea: Say here, in one sentence, the one idea of this lesson.
meter: 4/4 # of most of its bars
grid: 4 # slots a beat: 2 eighths, 3 triplets, 4 sixteenths; in 6/8 3 eighths, in 7/8 1 eighths, 2 sixteenths
level: 1 # 1 for beginners, 3 for the far end
tempo: { from: 60, to: 90 } # quarters a minute (dotted ones in 6/8, 9/8, 12/8): where to begin, where to arrive
rudiments: [] # pages of rudiments this lesson has to do with, like [flam, flam-drag]
terms: [] # words of the glossary, like [accent, lead-hand]
---

{/* Lines like this one are for you: they never reach the page. Delete them as you go. */}

{/* What is it? Two or three sentences, then the bar they speak of. */}

Say here what this lesson is about. Leave an empty line between two paragraphs.

{/* A bar is one line. Capitals strike, small letters are grace notes, > is an accent, - is a rest. */}

{/* Two letters together share one slot. All fill the bar exactly: 4/4 with four slots a beat takes sixteen. */}

<Bar sticking=">R L R R >L R L L >R L R R >L R L L" meter="4/4" grid={4} />

{/* What to listen for, or to feel in the hand; the mistake that most people make here, and its cure. */}

Say here how one hears that it is right.

{/* Exercises to practice from, each by its id: <Exercise id="flam-drag-slow" />. */}

{/* "npm run new -- exercise our-exercise" makes one of your own. */}

{/* One question. The site works out the answer from the bar above it; between the tags stands why. */}

<Question ask="Which hand plays the a of 2?" from="hand-at" at="2 a">
  Say here how one finds it. Counting along out loud is a good way.
</Question>
`;
}

/** What a new exercise begins with. */
export interface ExerciseStart {
  title: string;
  sticking: string;
}

/** An exercise to write on. */
export function exerciseText({ title, sticking }: ExerciseStart): string {
  return `# The name of this file is the address of the exercise, for ever. Lines that begin with # are for you.
title: ${said(title)}
purpose: Say here, in one sentence, what it is for.
# The bar. Capitals strike, small letters are grace notes, > is an accent, two letters together share one slot, - is a rest.
# The letters fill the bar exactly: 4/4 with four slots a beat takes sixteen. Or name cells: cells: [rll, rll, ...]
sticking: '${sticking}'
meter: 4/4
# Slots a beat: 2 eighths, 3 triplets, 4 sixteenths; in 6/8 3 eighths, in 7/8 1 eighths, 2 sixteenths.
grid: 4
# Which hands may lead, the first one to begin with: right, left, alternating.
leads: [right, left]
# Quarters a minute (dotted ones in 6/8, 9/8 and 12/8): where to begin, where to arrive.
tempo: { from: 60, to: 90 }
enough: when it goes round four times without a thought
# Pages of rudiments it has to do with, like [flam, flam-drag].
rudiments: []
`;
}

/** A cell to write on. */
export const cellText = (
  name: string,
): string => `# The name of this file is the id of the cell: it stands in the cells of a bar or an exercise.
# It stands over the cell's bracket.
name: ${said(name)}
# A plain row of slots, written for a right lead. Capitals strike, small letters are grace notes, > is an accent.
sticking: 'R L L'
`;

/** A term to write on. */
export const termText = (
  term: string,
): string => `# The name of this file is the id of the term: <Term id="…">the word</Term> in a lesson leads here.
term: ${said(term)}
says: Say here what it means, in a sentence or two.
# Other words for it, which search finds too, and terms worth looking at next, by their ids.
also: []
see: []
`;
