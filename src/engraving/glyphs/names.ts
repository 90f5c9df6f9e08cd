/** The music font's glyphs that we place ourselves, by SMuFL code point (read). */
export const GLYPH = {
  black: '\uE0A4',
  half: '\uE0A3',
  whole: '\uE0A2',
  x: '\uE0A9',
  xHalf: '\uE0A8',
  circledX: '\uE0B3',
  triangle: '\uE0BE',
  slashed: '\uE0CF',
  diamond: '\uE0DB',
  leftParenthesis: '\uE0F5',
  rightParenthesis: '\uE0F6',
  dot: '\uE1E7',
  accent: '\uE4A0',
  marcato: '\uE4AC',
  slashes: ['\uE220', '\uE221', '\uE222'],
  buzz: '\uE22A',
  halfOpen: '\uE7F7',
  open: '\uE7F8',
  choke: '\uE7F9',
  clef: '\uE069',
  wholeRest: '\uE4E3',
  plusSign: '\uE08C',
} as const;

/** A figure of a meter. */
export const meterFigure = (figure: string): string => String.fromCodePoint(0xe080 + Number(figure));
/** A figure of a tuplet. */
export const tupletFigure = (figure: string): string => String.fromCodePoint(0xe880 + Number(figure));
