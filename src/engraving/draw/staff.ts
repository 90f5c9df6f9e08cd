import type { Meter, Staff } from '../../core/index.ts';
import { GLYPH, meterFigure } from '../glyphs/names.ts';
import { codeOf, glyph } from '../glyphs/table.ts';
import { num, type Pen } from './pen.ts';

/** Heights of the staff's lines; the middle one is 0. */
const LINES: Record<Staff, number[]> = { pad: [0], kit: [-20, -10, 0, 10, 20] };

/** The staff's lines from one x to another. */
export function staffLines(staff: Staff, from: number, to: number): string {
  const path = LINES[staff].map((y) => `M${num(from)} ${num(y)}H${num(to)}`).join('');
  return `<path class="staff" d="${path}"/>`;
}

/** A bar line. */
export function barLine(staff: Staff, x: number): string {
  const half = staff === 'pad' ? 10 : 20;
  return `<path class="staff" d="M${num(x)} ${-half}V${half}"/>`;
}

/** The clef at the left of a line that is not the first: shown by the style sheet in the layouts given, by columns. */
export function lineClef(staff: Staff, at: readonly number[], used: Set<string>): string {
  if (at.length === 0) return '';
  const code = codeOf(GLYPH.clef);
  used.add(code);
  return `<g data-at="${at.join(' ')}">${staffLines(staff, -30, 0)}<use href="#g${code}" x="-25" y="0"/></g>`;
}

/** Staff lines beyond the edge of a picture whose last head stands over it, in the layouts in which a line ends there. */
export function lineEnd(staff: Staff, at: readonly number[], from: number, to: number): string {
  if (at.length === 0 || to <= from) return '';
  return `<g data-at="${at.join(' ')}">${staffLines(staff, from, to)}</g>`;
}

/** The widest a meter may be before it is drawn smaller. */
const METER_ROOM = 44;
const glyphsOf = (figures: string): string[] =>
  [...figures].map((figure) => (figure === '+' ? GLYPH.plusSign : meterFigure(figure)));
const widthOf = (glyphs: readonly string[]): number => glyphs.reduce((sum, g) => sum + glyph(codeOf(g)).width, 0);

/** A meter, its figures centered over x. */
export function drawMeter(meter: Meter, x: number, y: number, size: number, pen: Pen): void {
  const [upper, lower] = meter.text.split('/').map(glyphsOf);
  for (const [figures, at] of [
    [upper, y - 10 * size],
    [lower, y + 10 * size],
  ] as const) {
    const scale = Math.min(size, METER_ROOM / widthOf(figures));
    let left = x - (widthOf(figures) * scale) / 2;
    for (const figure of figures) {
      pen.glyph(figure, left, at, scale);
      left += glyph(codeOf(figure)).width * scale;
    }
  }
}

/** Clef and meter, and how wide they are in tens of pixels. */
export function drawHead(staff: Staff, meter: Meter, pen: Pen): number {
  const room = Math.min(METER_ROOM, Math.max(...meter.text.split('/').map((part) => widthOf(glyphsOf(part)))));
  const tens = Math.ceil((26 + room + 2) / 10);
  pen.raw(staffLines(staff, 0, tens * 10));
  pen.glyph(GLYPH.clef, 3, 0);
  drawMeter(meter, 26 + room / 2, 0, 1, pen);
  return tens;
}
