import { sayBar, sayBars } from './grammar.ts';

/** The claims of the site, each with what it was checked against; the tests of a claim are named by `claimOf`. */

/** How well the source behind a check is known. */
export type Standing = 'read' | 'recalled' | 'computed' | 'common practice';

/** One thing the site claims. */
export interface Claim {
  id: string;
  /** What is claimed. */
  claim: string;
  /** What the tests compare, in a sentence or two. */
  check: string;
  /** What it is held against: a publication, a standard, a calculation of another kind. */
  against: string;
  standing: Standing;
}

/** A heading of the page with its claims. */
export interface ClaimGroup {
  id: string;
  title: string;
  claims: readonly Claim[];
}

const GROUPS: readonly ClaimGroup[] = [
  {
    id: 'rudiments',
    title: 'Rudiments',
    claims: [
      {
        id: 'forty-rudiments',
        claim: 'The forty rudiments are the standard list, with its numbers, names and stickings.',
        check:
          'Every rudiment has its strokes, rhythm, accents and length written in two ways, and both must agree. What is true by definition is tested: a five-stroke roll has five strokes, a flam has one grace note by the other hand, a paradiddle starts the next one with the other hand.',
        against:
          'International Drum Rudiments, Percussive Arts Society, 1984. Stickings of part of the list were read in public listings, the rest is from memory; the list at the end says which. Rhythms are one usual length of each stroke, not a copy of the chart.',
        standing: 'recalled',
      },
    ],
  },
  {
    id: 'counts',
    title: 'Counting and bars',
    claims: [
      {
        id: 'counting',
        claim: 'Every sixteenth, triplet or eighth has the syllable a teacher would say.',
        check: 'Syllables of each subdivision in simple and compound meters, one for every place in the bar.',
        against: 'Common practice for one to four notes a beat. Syllables for five to eight are our own.',
        standing: 'common practice',
      },
      {
        id: 'bars-add-up',
        claim: 'A bar that does not add up is refused, with the count where it stops.',
        check: 'Sums that drum teachers do in their heads: five flam drags leave one of sixteen sixteenths, and so on.',
        against: 'Common practice.',
        standing: 'common practice',
      },
      {
        id: 'resolves',
        claim: 'The site says after how many bars a cell starts on beat 1 again.',
        check: 'Cells of 3 to 10 sixteenths over bars of 12 and 16, and the same cells laid end to end.',
        against: 'The least common multiple, worked by hand.',
        standing: 'computed',
      },
    ],
  },
  {
    id: 'orders',
    title: 'Orders',
    claims: [
      {
        id: 'orders-counted',
        claim: 'The number of orders that fill a bar is exact.',
        check: 'Counts for nine sets of lengths over 8 to 32 places, and for cells that are each used so many times.',
        against:
          'The On-Line Encyclopedia of Integer Sequences: A000930, A182097, A017817, A013979 were read; A000045, A000073, A000078 are well known. The rest was computed by recurrence, by sums over multisets and by listing.',
        standing: 'read',
      },
      {
        id: 'orders-listed',
        claim: 'The orders shown are all there are, and none is shown twice.',
        check: 'A hundred and twenty sets of cells, compared order by order.',
        against:
          'Exact covers (D. Knuth, Dancing Links, 2000) found by the package dancing-links, and permutations from js-combinatorics.',
        standing: 'computed',
      },
      {
        id: 'runs',
        claim: 'Limits on strokes in a row by one hand are kept, also around a loop.',
        check: 'Stickings of two to eight strokes with no three in a row.',
        against: 'A007040 for loops (read); twice a Fibonacci number where the bar is played once (computed).',
        standing: 'read',
      },
      {
        id: 'necklaces',
        claim: 'Orders that are the same loop begun elsewhere are counted once.',
        check: 'Loops of eight places by number of notes, and five notes in sixteen.',
        against: 'A047996 (read); 273 for five of sixteen (computed).',
        standing: 'read',
      },
    ],
  },
  {
    id: 'spreads',
    title: 'Even spreads and polyrhythms',
    claims: [
      {
        id: 'even-spreads',
        claim: 'Accents are spread as evenly as they can be.',
        check: 'Six rows of the paper, and every number of accents in 2 to 32 places, up to where the bar begins.',
        against:
          'G. Toussaint, The Euclidean Algorithm Generates Traditional Musical Rhythms, BRIDGES 2005; its table was read in two printings, both of which misprint five in sixteen. The package euclidean-rhythms follows the same paper.',
        standing: 'read',
      },
      {
        id: 'polyrhythms',
        claim: 'Two rhythms against each other fall on the right places.',
        check: 'Three against two, four against three and five against four, place by place.',
        against: 'Worked by hand: a against b has a + b minus their greatest common divisor notes.',
        standing: 'computed',
      },
    ],
  },
  {
    id: 'notation',
    title: 'Notation',
    claims: [
      {
        id: 'staff-positions',
        claim: 'Drums and cymbals are on the lines and spaces where drummers expect them.',
        check: 'Position and note head of every part of the kit, read back from the finished drawing.',
        against:
          'N. Weinberg, Guidelines for Drumset Notation, Percussive Notes, June 1994 (its opening pages were read). Toms of a five-piece kit: common practice. Splash, choke, rim, stick click and cowbell: our own.',
        standing: 'read',
      },
      {
        id: 'note-values',
        claim: 'Notes, rests, beams and ties are what a percussionist would write.',
        check:
          'Written values of bars in simple, compound and uneven meters; every voice fills its bar, beams stay within the beat, ties are complete.',
        against: 'Common practice of engraving.',
        standing: 'common practice',
      },
    ],
  },
  {
    id: 'sound',
    title: 'Sound',
    claims: [
      {
        id: 'onsets',
        claim: 'Every stroke sounds at its exact time.',
        check:
          'Sound is rendered in a browser at 44.1 and 48 kHz and the start of each stroke is found in the samples: every subdivision, flams, swing, tempo changes, the seam of a loop. The limit is one sample; the tests also plant a late, a missing and an extra stroke and must see them.',
        against: 'Times computed from the bar, by another program than the one that plays.',
        standing: 'computed',
      },
      {
        id: 'drum-modes',
        claim: 'The drum sounds start from how a round membrane vibrates.',
        check: 'Frequencies of the ten lowest modes, and values of the functions they come from.',
        against:
          'Zeros of the Bessel functions, computed by a power series; table 9.1 of Abramowitz and Stegun, Handbook of Mathematical Functions (recalled). A real drum is not ideal, and no ear has judged the sounds yet.',
        standing: 'computed',
      },
    ],
  },
  {
    id: 'hearing',
    title: 'Hearing',
    claims: [
      {
        id: 'noise-limits',
        claim: 'The table of levels and times on the page about hearing is the published one.',
        check: 'Each row follows from 85 dBA for eight hours and half the time for every 3 dBA more.',
        against: 'NIOSH, recommended exposure limit for noise (its page was read).',
        standing: 'read',
      },
    ],
  },
  {
    id: 'puzzles',
    title: 'Puzzles',
    claims: [
      {
        id: 'same-puzzle',
        claim: 'A puzzle’s number gives the same puzzle on every device, for good.',
        check: 'The random numbers behind puzzles, and puzzles of the first version kept as they were.',
        against:
          'SplitMix64: G. Steele, D. Lea and C. Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014; the numbers programmers compare implementations with are recalled.',
        standing: 'recalled',
      },
    ],
  },
];

/** Everything that is claimed, in the order of the page. */
export const CLAIM_GROUPS: readonly ClaimGroup[] = GROUPS.map(({ id, title, claims }) => ({
  id,
  title: sayBar(title),
  claims: claims.map((one) => ({ ...one, ...sayBars({ claim: one.claim, check: one.check, against: one.against }) })),
}));

/** Every claim, in order. */
export const CLAIMS: readonly Claim[] = CLAIM_GROUPS.flatMap(({ claims }) => claims);

/**
 * The sentence of a claim, for the tests that check it. Throws RangeError where there is no such claim.
 *
 * @example claimOf('onsets') // → 'Every stroke sounds at its exact time.'
 */
export function claimOf(id: string): string {
  const found = CLAIMS.find((claim) => claim.id === id);
  if (!found) throw new RangeError(`claim "${id}": there is none of that name in src/words/proof.ts`);
  return found.claim;
}

/** What the page itself says. */
export const PROOF = {
  title: 'How we know',
  idea: 'What this site claims, how each claim is tested, and what it was tested against.',
  about:
    'Every claim below is checked by tests that run before a version is published. A claim whose test fails stops the version. The source says how well we know it: read means that its own text was in front of us, recalled means from memory, computed means worked out in another way than the site does it.',
  columns: { claim: 'Claim', check: 'What is tested', against: 'Against', standing: 'Source' },
  rests: 'What each rudiment rests on',
  link: 'How we know',
} as const;
