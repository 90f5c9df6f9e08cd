import type { BarAttributes, WordName } from './vocabulary.ts';

/** A word as an author would write it. */
export interface SpecimenWord {
  word: WordName;
  attributes: Record<string, string | number>;
  /** What stands between its tags. */
  inside?: string;
  /** For a word that stands in a sentence: what comes before it and behind it. */
  sentence?: readonly [before: string, behind: string];
}

/** Words that belong together, shown as their text and as what becomes of it. */
export interface Specimen {
  /** The word it shows. */
  of: WordName;
  words: readonly SpecimenWord[];
}

/** What a course has, to be named in a specimen. */
export interface KnownIds {
  exercise?: string | undefined;
  term?: string | undefined;
  rudiment?: string | undefined;
  cell?: string | undefined;
}

const word = (
  name: WordName,
  attributes: SpecimenWord['attributes'],
  more: Partial<SpecimenWord> = {},
): SpecimenWord => ({
  word: name,
  attributes,
  ...more,
});

const specimen = (of: WordName, ...words: SpecimenWord[]): Specimen => ({ of, words });

const FLAM_DRAGS = word('Bar', { sticking: '{>lR LL R}4', meter: '4/4', grid: 3, name: 'flam drag' });
const SINGLES = word('Bar', { sticking: '{R L R L}4', meter: '4/4', grid: 4 });
const GROOVE = word('Bar', {
  id: 'groove',
  sticking: 'L@floor R@hat+K R@hat R@hat+L R@hat R@hat+K R@hat+K R@hat+L R@hat',
  meter: '4/4',
  grid: 2,
  pickup: 1,
  staff: 'kit',
  counts: 'off',
  tempo: 70,
});

/** The specimens, in the order of the vocabulary; what a course does not have is not named. */
export function specimens({ exercise, term, rudiment, cell }: KnownIds): Specimen[] {
  return [
    specimen('Bar', FLAM_DRAGS),
    ...(cell ? [specimen('Bar', cellsOfOne(cell))] : []),
    specimen('Bar', GROOVE),
    ...(exercise ? [specimen('Exercise', word('Exercise', { id: exercise }))] : []),
    ...questions(cell),
    specimen('Puzzle', word('Puzzle', { kind: 'fill', seed: 7 })),
    specimen('Counts', word('Counts', { meter: '4/4', grid: 4 })),
    specimen('Counts', word('Counts', { meter: '6/8', grid: 3, system: '1 2 3 4 5 6' })),
    specimen('Caution', word('Caution', { about: 'wrists' }, { inside: 'Stop when it hurts, not when it is tired.' })),
    ...(term ? [specimen('Term', termInSentence(term))] : []),
    ...(rudiment ? [specimen('Rudiment', rudimentInSentence(rudiment))] : []),
    specimen('Picture', word('Picture', PICTURE)),
    specimen('Video', word('Video', VIDEO)),
  ];
}

const cellsOfOne = (id: string): SpecimenWord =>
  word('Bar', { cells: Array(4).fill(id).join(' '), meter: '4/4', grid: 3, lead: 'alternating' });

const termInSentence = (id: string) =>
  word('Term', { id }, { inside: id.replaceAll('-', ' '), sentence: ['Here the word ', ' leads to its meaning.'] });

const rudimentInSentence = (id: string) => word('Rudiment', { id }, { sentence: ['Warm up with the ', ', slowly.'] });

const PICTURE = {
  file: './heights.svg',
  text: 'Two sticks over a line: one tip high above it, the other close to it.',
  caption: 'One stick up, one stick down: before a flam.',
};

const VIDEO = {
  file: './heights.webm',
  text: 'The same two sticks play four flams, slowly, drawn.',
  poster: './heights.svg',
};

function questions(cell?: string): Specimen[] {
  const left = cell && [
    FLAM_DRAGS,
    word(
      'Question',
      { ask: 'How many of these fit into the bar?', from: 'cells-fit', cell },
      { inside: 'One a beat.' },
    ),
  ];
  return [
    specimen('Question', SINGLES, word('Question', HAND, { inside: 'Count along: every a is a left.' })),
    specimen('Question', GROOVE, word('Question', FEET, { inside: 'On 1, and twice around 3.' })),
    ...(left ? [specimen('Question', ...left)] : []),
    specimen('Question', word('Question', GIVEN, { inside: 'The & and the a of 2, then 3, its e and its &.' })),
  ];
}

const HAND = { ask: 'Which hand plays the a of 2?', from: 'hand-at', at: '2 a', in: 1 };
const FEET = { ask: 'How many strokes does the foot play?', from: 'strokes', of: 'feet', bar: 'groove' };
const GIVEN = {
  ask: 'You stop after the e of 2 and come back on the a of 3. How many sixteenths are silent?',
  answer: 5,
  choices: '4 | 5 | 6',
};

/**
 * A specimen as its author writes it.
 *
 * @example sourceOf({ of: 'Counts', words: [{ word: 'Counts', attributes: { meter: '4/4', grid: 4 } }] }) // '<Counts meter="4/4" grid={4} />'
 */
export function sourceOf({ words }: Specimen): string {
  return words.map(written).join('\n\n');
}

function written({ word: name, attributes, inside, sentence = ['', ''] }: SpecimenWord): string {
  const pairs = Object.entries(attributes).map(([key, value]) =>
    typeof value === 'number' ? `${key}={${value}}` : `${key}="${value}"`,
  );
  const tag = [name, ...pairs].join(' ');
  const text = inside === undefined ? `<${tag} />` : `<${tag}>${inside}</${name}>`;
  return sentence[0] + text + sentence[1];
}

/** The bar that a question of a specimen asks about: the last one before it. */
export function barBefore({ words }: Specimen, question: SpecimenWord): BarAttributes | undefined {
  const before = words.slice(0, words.indexOf(question)).findLast(({ word: name }) => name === 'Bar');
  return before?.attributes as BarAttributes | undefined;
}
