import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { squareCode } from '../../src/formats/square-code.ts';
import { runs } from '../helpers/arbitrary.ts';
import { readSquareCode } from '../helpers/read-square-code.ts';

const QUIET = 4;

/** Fills the field as a browser fills the path; the quiet edge has to be empty. */
function drawn({ size, path }: { size: number; path: string }): boolean[][] {
  const field = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
    for (let at = 0; at < Number(length); at += 1) field[Number(y)]![Number(x) + at] = true;
  return field;
}

function inside(field: boolean[][]): boolean[][] {
  return field.slice(QUIET, -QUIET).map((row) => row.slice(QUIET, -QUIET));
}

describe('a square code', () => {
  test('reads back as the address it was made of', () => {
    const address = 'https://school.example/drums/exercises/flam-drag-slow/?tempo=72&lead=left';
    expect(readSquareCode(inside(drawn(squareCode(address))))).toBe(address);
  });

  test('reads back whatever it was made of', () => {
    // Level M of version 10 holds 213 bytes.
    const text = fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 210 })
      .filter((one) => new TextEncoder().encode(one).length <= 213);
    const inBytes = text.filter((one) => !/^[0-9A-Z $%*+\-./:]*$/.test(one));
    fc.assert(
      fc.property(inBytes, (one) => {
        expect(readSquareCode(inside(drawn(squareCode(one))))).toBe(one);
      }),
      runs(100),
    );
  });

  test('keeps a quiet edge of four squares', () => {
    const field = drawn(squareCode('https://school.example/'));
    const edge = field.flatMap((row, y) =>
      row.filter((_, x) => Math.min(x, y, field.length - 1 - x, field.length - 1 - y) < QUIET),
    );
    expect(edge).not.toContain(true);
    expect(field[QUIET]![QUIET]).toBe(true);
  });
});
