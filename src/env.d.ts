/** What the school has set, put in by the build (`src/build/school.ts`); read in `src/words/site.ts` alone. */
declare const __BAR_WORD__: 'bar' | 'measure' | undefined;
declare const __COUNTING__: import('./core/index.ts').CountSystem | undefined;
declare const __SITE_NAME__: string | undefined;
declare const __SCHOOL__: string | undefined;
declare const __LANGUAGE__: string | undefined;
declare const __CONTACT__: string | undefined;
declare const __OWN_COLORS__: boolean | undefined;
declare const __TEXT_PAGES__: { id: string; title: string }[] | undefined;

declare namespace App {
  /** What the parts of one page tell each other while it is rendered. */
  interface Locals {
    /** Glyphs of the music font that the page's notation uses. */
    glyphs?: Set<string>;
    /** Ids of figures, and how often each was wanted. */
    figures?: Map<string, number>;
    /** The lesson that is rendered: its file for faults, its id and tempo for its bars. */
    lesson?: { file: string; id: string; tempo: { from: number; to: number } };
  }
}
