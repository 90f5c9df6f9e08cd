/**
 * What students and teachers type into the search, each with addresses of which one must be among the first three
 * results. Ours: written down before the order of results was chosen, and the order holds for all of them at once.
 */
export const QUESTIONS: readonly (readonly [asked: string, ...addresses: string[]])[] = [
  // Words.
  ['flam drag', 'rudiments/flam-drag/', 'lessons/the-flam-drag/'],
  ['count sixteenths out loud', 'lessons/counting-out-loud/'],
  ['paradiddle left hand', 'lessons/the-single-paradiddle/', 'lessons/longer-paradiddles/'],
  ['kick', 'glossary/#kick'],
  ['ghost notes', 'lessons/ghost-notes/'],
  ['ratamacue', 'rudiments/single-ratamacue/'],
  ['hearing', 'hearing/'],
  ['five stroke roll', 'rudiments/five-stroke-roll/'],
  ['shuffle', 'glossary/#shuffle'],
  ['metronome', 'glossary/#metronome'],
  ['check pattern', 'lessons/against-a-check-pattern/'],
  ['wrist hurts', 'hearing/'],
  ['lead hand', 'lessons/single-strokes-and-the-lead-hand/'],
  ['buzz roll', 'rudiments/multiple-bounce-roll/'],
  ['how to count triplets', 'glossary/#triplet', 'lessons/counting-out-loud/'],
  ['Accents', 'glossary/#accent'],
  ['what is a rudiment', 'glossary/#rudiment'],
  ['bass drum', 'glossary/#kick'],
  ['swiss army triplet', 'rudiments/swiss-army-triplet/'],
  // Stickings.
  ['R L L', 'exercises/rll-in-triplets/'],
  ['lR LL R', 'rudiments/flam-drag/'],
  ['RLRR LRLL', 'rudiments/single-paradiddle/'],
  ['R L R R L R L L', 'rudiments/single-paradiddle/'],
  ['{lR LL R}5 K', 'exercises/left-over-kick/'],
  ['{R L L}5 R', 'exercises/rll-walks/'],
  ['llR', 'rudiments/drag/'],
  ['rll', 'exercises/rll-in-triplets/'],
  ['RR LL >R', 'rudiments/five-stroke-roll/'],
  ['R L R L R R', 'rudiments/double-paradiddle/'],
  ['lR rL', 'rudiments/flam/'],
  ['>R LL RR >L', 'rudiments/six-stroke-roll/'],
  ['RLRRLL', 'rudiments/single-paradiddle-diddle/'],
];
