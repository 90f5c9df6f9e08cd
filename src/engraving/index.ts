/** Timelines as engraved notation: the same module at build and in the browser. */
export { engrave, type Engraving, type EngraveOptions } from './engrave.ts';
export { glyphSprite } from './glyphs/table.ts';
export { letterOf, lettersOf } from './letters.ts';
