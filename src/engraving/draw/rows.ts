import { containsTick, isFoot, type Stroke } from '../../core/index.ts';
import type { BracketName, BracketPart, Over } from '../layout/brackets.ts';
import { graceCount } from '../layout/columns.ts';
import type { CountLabel } from '../layout/counts.ts';
import type { Rows } from '../layout/rows.ts';
import { SIZE } from '../layout/sizes.ts';
import { letterOf } from '../letters.ts';
import { graceX, soundingStrokes, widthOf, xAt, type Desk } from './music.ts';
import { escapeText, num } from './pen.ts';

const text = (type: string, attributes: string, x: number, y: number, words: string): string =>
  `<text class="${type}"${attributes} x="${num(x)}" y="${num(y)}">${escapeText(words)}</text>`;

const line = (type: string, path: string): string => `<path class="${type}" d="${path}"/>`;

/** Half the distance between two letters under one chord. */
const BESIDE = 6;

/** Where the letters of one tick stand: beside each other where two limbs of one row strike together. */
function letterXs(desk: Desk, strokes: readonly Stroke[]): [Stroke, number][] {
  const x = xAt(desk, strokes[0].tick);
  if (strokes.length === 1) return [[strokes[0], x]];
  const doubled = strokes[0].surface === strokes[1].surface ? BESIDE : 0;
  const order = [...strokes].sort((a, b) => (doubled ? 0 : 'RLKH'.indexOf(a.limb) - 'RLKH'.indexOf(b.limb)));
  return order.map((stroke, i) => [stroke, x + doubled + (2 * i - order.length + 1) * BESIDE]);
}

/** The letters under a fragment's strokes, grace notes smaller, each row on one line. */
export function letterRow(desk: Desk, rows: Rows): string {
  const row = (stroke: Stroke): number => (isFoot(stroke) ? rows.feet : rows.letters);
  const main = [...Map.groupBy(soundingStrokes(desk), (s) => `${s.tick}/${row(s)}`).values()]
    .flatMap((together) => letterXs(desk, together))
    .map(([stroke, x]) => letter('hand', stroke, x, row(stroke)));
  const graces = soundingStrokes(desk)
    .filter((primary) => graceCount(primary) > 0)
    .flatMap((primary) =>
      primary.graces.map((id, i) => letter('grace', desk.strokes.get(id)!, graceX(desk, primary, i), rows.letters)),
    );
  return [...main, ...graces].join('');
}

const letter = (type: string, stroke: Stroke, x: number, y: number): string =>
  text(type, ` data-letter="${escapeText(stroke.id)}"`, x, y, letterOf(stroke));

const SHORT_MARK = 8;

/** How far the bar line of a fragment's bar stands beyond its edge. */
export const barOver = ({ fragment, spacing }: Desk): number => spacing.over.get(fragment.bar) ?? 0;

/** The ruler under a fragment: its line, a mark a slot, longer at beats, and the counts. */
export function ruler(desk: Desk, rows: Rows, labels: readonly CountLabel[]): string {
  const { fragment, spacing } = desk;
  const width = widthOf(desk) + (fragment.last ? barOver(desk) : 0);
  const own = labels.filter(({ tick }) => containsTick(fragment, tick));
  const marks = own.map(({ tick, strong }) => {
    const from = strong ? rows.marks : rows.ruler - SHORT_MARK;
    return `M${num(xAt(desk, tick))} ${num(from)}V${num(rows.ruler)}`;
  });
  if (fragment.last) marks.push(`M${num(width)} ${num(rows.marks)}V${num(rows.ruler)}`);
  const start = fragment.index === 0 ? spacing.pad : 0;
  const counts = own.map((label) =>
    text(
      label.strong ? 'count beat-count' : 'count',
      ` data-count="${label.tick}"`,
      xAt(desk, label.tick),
      rows.counts,
      label.text,
    ),
  );
  return line('rule', `M${num(start)} ${num(rows.ruler)}H${num(width)}${marks.join('')}`) + counts.join('');
}

const HOOK = 7;

/** The brackets of cells over a fragment, with their names; open where they go on in the next picture. */
export const brackets = ({ parts, names }: Over, rows: Rows): string =>
  parts.map((part) => bracketLine(part, rows)).join('') + names.map((name) => nameText(name, rows)).join('');

function bracketLine({ left, right, opens, closes }: BracketPart, { bracket }: Rows): string {
  const start = opens ? `M${num(left)} ${num(bracket + HOOK)}V${num(bracket)}` : `M${num(left)} ${num(bracket)}`;
  return line('cell', `${start}H${num(right)}${closes ? `V${num(bracket + HOOK)}` : ''}`);
}

function nameText({ text: words, size, x, row, at }: BracketName, { names }: Rows): string {
  const shown = at ? ` data-at="${at.join(' ')}"` : '';
  return text(size < SIZE.name ? 'name small' : 'name', shown, x, names[row], words);
}
