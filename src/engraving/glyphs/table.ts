import rows from './table.json' with { type: 'json' };

/** Outline and metrics of one glyph, in pixels where a staff space is ten, y downwards from the baseline. */
export interface Glyph {
  width: number;
  /** Left, top, right, bottom. */
  box: readonly number[];
  path: string;
}

const TABLE: Record<string, Glyph> = rows;

/** The code point of a one-glyph text as the table writes it: `E0A4`. */
export const codeOf = (glyph: string): string => glyph.codePointAt(0)!.toString(16).toUpperCase();

/**
 * The glyph under a code. Throws RangeError where the table has none, so that nothing is ever drawn as a gap.
 * @example
 * glyph('E0A4').width // → 11.8
 */
export function glyph(code: string): Glyph {
  const found = TABLE[code];
  if (!found) throw new RangeError(`glyph U+${code} is not in the table; add it to build-table.mjs`);
  return found;
}

/** The shapes that a page's music refers to, once a page: `<svg class="glyphs">` with one path a glyph. */
export function glyphSprite(codes: Iterable<string>): string {
  const shapes = [...new Set(codes)].sort().map((code) => `<path id="g${code}" d="${glyph(code).path}"/>`);
  return `<svg class="glyphs" width="0" height="0" aria-hidden="true"><defs>${shapes.join('')}</defs></svg>`;
}
