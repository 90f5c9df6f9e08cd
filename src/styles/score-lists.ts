/**
 * The part of the style of engraved music that is a list of numbers: style sheets cannot count. Written to score-lists.css;
 * `npx vitest run -u` on the tests of engraving writes it anew.
 */

/** Columns of a line, at the most. */
export const MOST_COLUMNS = 16;
/** Tens of drawing pixels of a column, at the most, and of clef and meter. */
export const MOST_UNIT = 40;
const HEADS = [4, 5, 6, 7, 8];
const MOST_HANG = 8;
const GAPS = [1, 2, 3];

const range = (from: number, to: number, step = 1): number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

const indent = (css: string): string => css.replace(/^(?=.)/gm, '  ');
const block = (selector: string, body: string): string => `${selector} {\n${indent(body)}\n}`;
const query = (width: string, rules: string[]): string =>
  block(`@container score (min-width: calc(${width}))`, rules.join('\n'));

/** Shows what belongs to lines of so many columns, and that alone. */
const shown = (kinds: string, columns: number): string[] => [
  block(`${kinds} [data-at]`, 'display: none;'),
  block(`${kinds} [data-at~='${columns}']`, 'display: inline;'),
];

/** A piece that fits on lines of so many columns, or its pickup and bar 1; 3rem are for clef, meter and the bar line. */
const fits = (n: number): string =>
  query(`${n}em + 3rem`, [
    block(`.fits-${n} .lines,\n.hangs-${n} .lines`, `--columns: ${n};`),
    ...shown(`:is(.fits-${n}, .hangs-${n})`, n),
    block(`.hangs-${n} .lines`, `--own: calc(${n} - var(--hang));\n--hung: var(--hang);\n--between: var(--gaps);`),
  ]);

/** Two bars on a line: where they need not shrink for it on a screen; on paper where letters keep their least size. */
const pairs = (n: number, width: string): string =>
  query(width, [
    block(`.pairs-${n} .lines`, `--columns: ${n};\n--own: ${n / 2};\n--between: var(--gaps);`),
    block(`.pairs-${n} .bar:nth-child(even)`, 'margin-inline-start: var(--between);'),
    ...shown(`.pairs-${n}`, n),
  ]);

const least = (n: number): string[] => [
  block(`.least-${n}`, `--columns: ${n};`),
  block(`.least-${n} [data-at~='${n}']`, 'display: inline;'),
];

const numbered = (name: string, numbers: number[], property: string): string[] =>
  numbers.map((n) => block(`.${name}-${n}`, `${property}: ${n};`));

/** The style sheet, in the order in which a later rule prevails. */
export function scoreLists(): string {
  const columns = range(2, MOST_COLUMNS);
  const even = range(2, MOST_COLUMNS, 2);
  return [
    '/* Written by score-lists.ts, to be read after score.css. */',
    ...columns.map((n) => block(`.span-${n}`, `grid-column-end: span ${n};`)),
    ...numbered('unit', range(2, MOST_UNIT), '--unit'),
    ...numbered('head', HEADS, '--head'),
    ...numbered('hang', range(1, MOST_HANG), '--hang'),
    ...numbered('gap', GAPS, '--gap'),
    ...range(1, MOST_COLUMNS).flatMap(least),
    ...columns.map(fits),
    ...even.map((n) => pairs(n, `${n * 1.25}em + 5rem`)),
    block('@media print', even.map((n) => pairs(n, `${n}em + 4rem`)).join('\n')),
    '',
  ].join('\n');
}
