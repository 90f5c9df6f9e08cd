import { Beam, Stem, type StemmableNote } from 'vexflow/core';

/** What a beam must know of one of its notes. */
export interface Beamed {
  note: StemmableNote;
  /** Beam lines of its own value. */
  lines: number;
  /** How many lines lead on to the next note. */
  joins: number;
  /** Which way a line of this note alone points. */
  stub: 'forward' | 'back';
}

/** How long a line of one note alone is. */
const STUB = 9;

/** A flat beam at a height of ours, whose lines are drawn only where the rhythm joins them. */
export class FlatBeam extends Beam {
  readonly #beamed: readonly Beamed[];
  readonly y: number;

  constructor(beamed: readonly Beamed[], y: number, thickness = 5) {
    super(beamed.map(({ note }) => note));
    this.#beamed = beamed;
    this.y = y;
    Object.assign(this.renderOptions, { flatBeams: true, flatBeamOffset: y, beamWidth: thickness });
  }

  /** Lengthens the stems up to the beam. VexFlow would move the beam first. */
  override postFormat(): void {
    if (this.postFormatted) return;
    this.applyStemExtensions();
    this.postFormatted = true;
  }

  override getBeamYToDraw(): number {
    return this.y;
  }

  /** Stems are drawn with their notes, so that a stroke is lit as a whole. */
  protected override drawStems(): void {}

  /** The lines of one level; VexFlow names the levels by the values that have one beam fewer. */
  override getBeamLines(duration: string): { start: number; end: number }[] {
    const level = Math.log2(Number(duration)) - 1;
    const lines: { start: number; end: number }[] = [];
    for (let i = 0; i < this.#beamed.length; i += 1) {
      if (this.#beamed[i].lines < level) continue;
      const from = i;
      while (this.#leadsOn(i, level)) i += 1;
      lines.push(from === i ? this.#stub(i) : { start: this.#x(from), end: this.#x(i) });
    }
    return lines;
  }

  #x(i: number): number {
    return this.#beamed[i].note.getStemX() - Stem.WIDTH / 2;
  }

  #leadsOn(i: number, level: number): boolean {
    return i + 1 < this.#beamed.length && this.#beamed[i + 1].lines >= level && this.#beamed[i].joins >= level;
  }

  #stub(i: number): { start: number; end: number } {
    const x = this.#x(i);
    return this.#beamed[i].stub === 'forward' ? { start: x, end: x + STUB } : { start: x - STUB, end: x };
  }
}
