import { Font, RenderContext, type FontInfo } from 'vexflow/core';
import { codeOf, glyph } from '../glyphs/table.ts';
import { EM } from './measure.ts';

/** A number as SVG has it: at most two decimals. Throws RangeError for what is no number. */
export function num(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} is no place on a page`);
  return String(Math.round(value * 100) / 100 + 0);
}

/** Text inside SVG. */
export const escapeText = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** Width of a line that carries no width of its own: a stem's. */
const STEM_WIDTH = 1.5;

/**
 * What VexFlow and we draw with: it writes SVG text. Glyphs become references to the page's sprite, colors and fonts are
 * left to the style sheet, and groups are ours alone. It keeps the highest and lowest point drawn.
 */
export class Pen extends RenderContext {
  #out: string[] = [];
  #path = '';
  #at: [x: string, y: string] = ['', ''];
  #width = STEM_WIDTH;
  #size = EM;
  #saved: [number, number][] = [];
  readonly used: Set<string>;
  top = 0;
  bottom = 0;

  constructor(used: Set<string>) {
    super();
    this.used = used;
  }

  /** All that was drawn. */
  get svg(): string {
    return this.#out.join('');
  }

  /** Adds markup as it is. */
  raw(markup: string): this {
    this.#out.push(markup);
    return this;
  }

  /** A glyph with its origin here; `scale` 1 is the size of a staff's notes. */
  glyph(text: string, x: number, y: number, scale = 1): this {
    const code = codeOf(text);
    const { box } = glyph(code);
    this.used.add(code);
    this.reach(y + box[1] * scale);
    this.reach(y + box[3] * scale);
    const place = Math.abs(scale - 1) < 0.01 ? `x="${num(x)}" y="${num(y)}"` : placed(x, y, scale);
    return this.raw(`<use href="#g${code}" ${place}/>`);
  }

  /** A glyph centered over x. */
  centered(text: string, x: number, y: number, scale = 1): this {
    const { box } = glyph(codeOf(text));
    return this.glyph(text, x - ((box[0] + box[2]) / 2) * scale, y, scale);
  }

  /** A glyph centered on a point. */
  centeredOn(text: string, x: number, y: number): this {
    const { box } = glyph(codeOf(text));
    return this.centered(text, x, y - (box[1] + box[3]) / 2);
  }

  /** A filled shape by its path data, of which the given heights are the extremes. */
  shape(path: string, ...heights: number[]): this {
    heights.forEach((y) => this.reach(y));
    return this.raw(`<path d="${path}"/>`);
  }

  /** Takes a height into account. */
  reach(y: number): this {
    this.top = Math.min(this.top, y);
    this.bottom = Math.max(this.bottom, y);
    return this;
  }

  beginPath(): this {
    this.#path = '';
    return this;
  }
  moveTo(x: number, y: number): this {
    return this.#to('M', x, y);
  }
  lineTo(x: number, y: number): this {
    return this.#to('L', x, y);
  }
  closePath(): this {
    this.#path += 'z';
    return this;
  }
  fill(): this {
    return this.raw(`<path d="${this.#path}"/>`);
  }
  stroke(): this {
    const width = this.#width === STEM_WIDTH ? '' : ` stroke-width="${num(this.#width)}"`;
    return this.raw(`<path class="s" d="${this.#path.replace(/z$/, '')}"${width}/>`);
  }
  fillRect(x: number, y: number, width: number, height: number): this {
    return this.shape(`M${num(x)} ${num(y)}h${num(width)}v${num(height)}h${num(-width)}z`, y, y + height);
  }
  fillText(text: string, x: number, y: number): this {
    let at = x;
    for (const char of text) {
      this.glyph(char, at, y, this.#size / EM);
      at += glyph(codeOf(char)).width * (this.#size / EM);
    }
    return this;
  }
  setLineWidth(width: number): this {
    this.#width = width;
    return this;
  }
  setFont(font?: string | FontInfo, size?: string | number, weight?: string | number, style?: string): this {
    const valid = Font.validate(font as FontInfo, size, weight, style);
    this.#size = Font.convertSizeToPixelValue(valid.size);
    return this;
  }
  getFont(): string {
    return `${this.#size}px`;
  }
  save(): this {
    this.#saved.push([this.#width, this.#size]);
    return this;
  }
  restore(): this {
    [this.#width, this.#size] = this.#saved.pop() ?? [STEM_WIDTH, EM];
    return this;
  }
  /** Most lines are level or upright, which is shorter to write. */
  #to(command: 'M' | 'L', x: number, y: number): this {
    const [left, top] = this.#at;
    const to: [string, string] = [num(x), num(y)];
    this.#at = to;
    const isLine = command === 'L' && this.#path !== '';
    if (isLine && to[0] === left) this.#path += `V${to[1]}`;
    else if (isLine && to[1] === top) this.#path += `H${to[0]}`;
    else this.#path += `${command}${to.join(' ')}`;
    return this.reach(y);
  }

  // What follows is nothing to us: colors and groups are ours, and no drawing that we ask for curves or turns.
  clear(): void {}
  setFillStyle = (): this => this;
  setBackgroundFillStyle = (): this => this;
  setStrokeStyle = (): this => this;
  setShadowColor = (): this => this;
  setShadowBlur = (): this => this;
  setLineCap = (): this => this;
  setLineDash = (): this => this;
  scale = (): this => this;
  resize = (): this => this;
  rect = (): this => this;
  clearRect = (): this => this;
  pointerRect = (): this => this;
  openGroup(): void {}
  closeGroup(): void {}
  openRotation(): void {}
  closeRotation(): void {}
  add(): void {}
  bezierCurveTo = (): this => unasked('bezierCurveTo');
  quadraticCurveTo = (): this => unasked('quadraticCurveTo');
  arc = (): this => unasked('arc');
  measureText = (): never => unasked('measureText');
  set fillStyle(_: string) {}
  get fillStyle(): string {
    return '';
  }
  set strokeStyle(_: string) {}
  get strokeStyle(): string {
    return '';
  }
}

const placed = (x: number, y: number, scale: number): string =>
  `transform="translate(${num(x)} ${num(y)})scale(${num(scale)})"`;

function unasked(name: string): never {
  throw new Error(`the pen does not know ${name}; nothing that is engraved here needs it`);
}
