import type { Fault } from '../fault.ts';

/** A fault on its way out of the parser; it never leaves `parseSticking`. */
export class Refusal extends Error {
  readonly fault: Fault;
  constructor(fault: Fault) {
    super(fault.message);
    this.fault = fault;
  }
}

/** A text and a place in it. Reads one line of a sticking; positions are those of the whole text. */
export class Reader {
  readonly text: string;
  readonly end: number;
  at: number;

  constructor(text: string, start: number, end: number) {
    this.text = text;
    this.at = start;
    this.end = end;
  }

  get done(): boolean {
    return this.at >= this.end;
  }

  /** The character here; nothing at the end of the line. */
  get here(): string {
    return this.done ? '' : this.text[this.at];
  }

  /** What stands here as a person sees it: a whole character, or the end of the text. */
  get found(): string {
    return this.done ? 'the end of the line' : String.fromCodePoint(this.text.codePointAt(this.at)!);
  }

  take(characters: string): string {
    if (this.done || !characters.includes(this.here)) return '';
    return this.text[this.at++];
  }

  /** Takes what a pattern (sticky) matches here. */
  match(pattern: RegExp): string {
    pattern.lastIndex = this.at;
    const hit = pattern.exec(this.text.slice(0, this.end))?.[0] ?? '';
    this.at += hit.length;
    return hit;
  }

  skipSpaces(): void {
    while (isSpace(this.here)) this.at += 1;
  }

  /** Refuses at a place, by default here; never past the end of the text. */
  refuse(message: string, expected: string, at = this.at, found = this.found): never {
    const inside = Math.max(0, Math.min(at, this.text.length - 1));
    throw new Refusal({ at: inside, found: found || 'nothing', expected, message });
  }
}

/** A space, a tab or a space that came with pasted text. */
export const isSpace = (character: string): boolean => character !== '' && ' \t\u00a0'.includes(character);
