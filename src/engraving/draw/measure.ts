import { Element, Font } from 'vexflow/core';
import { codeOf, glyph } from '../glyphs/table.ts';

/** An em of the table in pixels. */
export const EM = 40;

const PIXELS: Record<string, number> = { pt: 4 / 3, px: 1 };

function sizeOf(font: string): number {
  const found = /([\d.]+)(pt|px)/.exec(font);
  return found ? Number(found[1]) * PIXELS[found[2]] : EM;
}

/** The part of TextMetrics that VexFlow reads, from the table. */
function metricsOf(text: string, size: number) {
  const scale = size / EM;
  const [shape] = [...text].filter((char) => char !== '\0').map((char) => glyph(codeOf(char)));
  const [left, top, right, bottom] = (shape?.box ?? [0, 0, 0, 0]).map((n) => n * scale);
  return {
    width: (shape?.width ?? 0) * scale,
    actualBoundingBoxLeft: -left,
    actualBoundingBoxRight: right,
    actualBoundingBoxAscent: -top,
    actualBoundingBoxDescent: bottom,
  };
}

let ready = false;

/**
 * Lets VexFlow measure by the glyph table, so that it needs no document, canvas or font, and gives the same numbers in
 * Node and in every browser.
 */
export function measureByTable(): void {
  if (ready) return;
  ready = true;
  const context = {
    font: '',
    measureText(text: string) {
      return metricsOf(text, sizeOf(this.font));
    },
  };
  Element.setTextMeasurementCanvas({ getContext: () => context } as unknown as HTMLCanvasElement);
  // VexFlow reads a font shorthand by asking the document for a <span>; its own shorthands are plain enough to read here.
  Font.fromCSSString = (font) => ({
    family: font.slice(font.lastIndexOf(' ') + 1),
    size: `${sizeOf(font)}px`,
    weight: 'normal',
    style: 'normal',
  });
}
