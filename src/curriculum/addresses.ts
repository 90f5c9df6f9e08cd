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
  write: '/write/',
  lesson: (id: string) => `/lessons/${id}/`,
  exercise: (id: string) => `/exercises/${id}/`,
  rudiment: (slug: string) => `/rudiments/${slug}/`,
  term: (id: string) => `/glossary/#${id}`,
} as const;

/** Pages that are there whatever the content; the page on hearing is a page of the content. */
export const FIXED_PAGES: readonly string[] = [
  ADDRESSES.home,
  ADDRESSES.course,
  ADDRESSES.exercises,
  ADDRESSES.rudiments,
  ADDRESSES.glossary,
  ADDRESSES.search,
  ADDRESSES.privacy,
  ADDRESSES.write,
];

/** The address of a lesson's part in the contents. */
export const partAddress = (number: number): string => `${ADDRESSES.course}#part-${number}`;
