import { engrave, type Engraving } from '../../src/engraving/index.ts';
import type { Case } from './cases.ts';

/** One picture of a score, read back from its markup. */
export interface Picture {
  tick: number;
  ticks: number;
  /** Room before the first tick, as a share of the width. */
  pad: number;
  width: number;
  markup: string;
}

/** The markup of each stroke by its id. */
export interface StrokeMarkup {
  id: string;
  markup: string;
  picture: Picture;
}

export const drawn = ({ timeline, options }: Case): Engraving => engrave(timeline, options);

const attribute = (tag: string, name: string): string => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1] ?? '';

/** The pictures of a score in order. */
export function pictures(html: string): Picture[] {
  return [...html.matchAll(/(<svg class="beat[^>]*>)(.*?)<\/svg>/g)].map(([, tag, markup]) => ({
    tick: Number(attribute(tag, 'data-tick')),
    ticks: Number(attribute(tag, 'data-ticks')),
    pad: Number(attribute(tag, 'data-pad')),
    width: Number(attribute(tag, 'viewBox').split(' ')[2]),
    markup,
  }));
}

/** The layouts of a score, by columns. */
export const layoutsOf = (html: string): string[] =>
  [...html.matchAll(/ (?:least|fits|hangs|pairs)-(\d+)/g)].map(([, columns]) => columns);

/** What the style sheet shows of a score on lines of so many columns: what is for others is taken away. */
export function shownIn(html: string, columns: string): string {
  let depth = 0;
  return [...html.matchAll(/<(\/?)(\w+)([^>]*?)(\/?)>[^<]*/g)]
    .filter(([, closes, , attributes, alone]) => {
      const at = / data-at="([^"]*)"/.exec(attributes)?.[1].split(' ');
      if (depth > 0 || (at && !at.includes(columns))) {
        if (!alone) depth += closes ? -1 : 1;
        return false;
      }
      return true;
    })
    .map(([text]) => text)
    .join('');
}

/** The strokes of a score in the order they are drawn. */
export function strokeGroups(html: string): StrokeMarkup[] {
  return pictures(html).flatMap((picture) =>
    [...picture.markup.matchAll(/<g data-stroke="([^"]*)">(.*?)<\/g>/g)].map(([, id, markup]) => ({
      id,
      markup,
      picture,
    })),
  );
}

/** A text of a score: what it is, what it says and where. */
export interface TextMark {
  type: string;
  of: string;
  says: string;
  x: number;
  y: number;
  picture: Picture;
}

/** Texts that carry a `data-` attribute of this name. */
export function texts(html: string, name: 'letter' | 'count'): TextMark[] {
  const each = new RegExp(`<text class="([^"]*)" data-${name}="([^"]*)" x="([^"]*)" y="([^"]*)">([^<]*)</text>`, 'g');
  return pictures(html).flatMap((picture) =>
    [...picture.markup.matchAll(each)].map(([, type, of, x, y, says]) => ({
      type,
      of,
      says: says.replaceAll('&amp;', '&'),
      x: Number(x),
      y: Number(y),
      picture,
    })),
  );
}

/** Places of a glyph at full size in some markup. */
export const placesOf = (markup: string, code: string): { x: number; y: number }[] =>
  [...markup.matchAll(new RegExp(`<use href="#g${code}" x="([^"]*)" y="([^"]*)"/>`, 'g'))].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
