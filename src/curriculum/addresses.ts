/** The addresses of the site, without its base path; each ends in a slash. They never change. */
export const ADDRESSES = {
  home: '/',
  course: '/course/',
  exercises: '/exercises/',
  rudiments: '/rudiments/',
  glossary: '/glossary/',
  barMath: '/bar-math/',
  puzzles: '/puzzles/',
  search: '/search/',
  hearing: '/hearing/',
  privacy: '/privacy/',
  license: '/license/',
  write: '/write/',
  proof: '/proof/',
  lesson: (id: string) => `/lessons/${id}/`,
  /** Exercises chosen for paper. */
  sheet: '/sheet/',
  exercise: (id: string) => `/exercises/${id}/`,
  /** An exercise alone, for a frame in another page. */
  embed: (id: string) => `/embed/${id}/`,
  rudiment: (slug: string) => `/rudiments/${slug}/`,
  term: (id: string) => `/glossary/#${id}`,
} as const;

/** Pages that are there whatever the content; the page on hearing is a page of the content. */
export const FIXED_PAGES: readonly string[] = [
  ADDRESSES.home,
  ADDRESSES.course,
  ADDRESSES.exercises,
  ADDRESSES.sheet,
  ADDRESSES.rudiments,
  ADDRESSES.puzzles,
  ADDRESSES.glossary,
  ADDRESSES.barMath,
  ADDRESSES.search,
  ADDRESSES.privacy,
  ADDRESSES.license,
  ADDRESSES.write,
  ADDRESSES.proof,
];

/** The address of a lesson's part in the contents. */
export const partAddress = (number: number): string => `${ADDRESSES.course}#part-${number}`;
