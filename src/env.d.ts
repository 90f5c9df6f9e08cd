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
