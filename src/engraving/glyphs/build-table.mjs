/**
 * Writes table.json: outline and metrics of the glyphs that the engraver uses, from the music font's own file.
 * Bravura is under the SIL Open Font License, and so are the outlines.
 * Run it after adding a code below: node src/engraving/glyphs/build-table.mjs
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import * as fontkit from 'fontkit';

const FONT = createRequire(import.meta.url).resolve('@vexflow-fonts/bravura/bravura.otf');

/** SMuFL code points by what they are for. */
const CODES = {
  clefAndMeter: 'E069 E080 E081 E082 E083 E084 E085 E086 E087 E088 E089 E08C',
  heads: 'E0A2 E0A3 E0A4 E0A8 E0A9 E0B3 E0BE E0CF E0DB',
  parentheses: 'E0F5 E0F6',
  flags: 'E240 E241 E242 E243 E244 E245 E246 E247 E248 E249',
  rests: 'E4E3 E4E4 E4E5 E4E6 E4E7 E4E8 E4E9 E4EA E4F4 E4F5',
  accents: 'E4A0 E4AC',
  stemSigns: 'E220 E221 E222 E22A',
  kitSigns: 'E7F7 E7F8 E7F9',
  dotsAndNumbers: 'E1E7 E880 E881 E882 E883 E884 E885 E886 E887 E888 E889',
};

/** Pixels to a font unit: an em is four staff spaces of ten. */
const EM = 40;

const font = fontkit.create(readFileSync(FONT));
const scale = EM / font.unitsPerEm;
const round = (n) => Math.round(n * scale * 100) / 100;

const LETTERS = { moveTo: 'M', lineTo: 'L', bezierCurveTo: 'C', quadraticCurveTo: 'Q', closePath: 'z' };

function outline(path) {
  const step = ({ command, args }) =>
    LETTERS[command] +
    args
      .map((n, i) => round(i % 2 ? -n : n))
      .join(' ')
      .replaceAll(' -', '-');
  return path.commands
    .map(step)
    .join('')
    .replace(/(^|[^\d])0\./g, '$1.');
}

function record(code) {
  const glyph = font.glyphForCodePoint(parseInt(code, 16));
  if (glyph.id === 0) throw new Error(`U+${code} is not in the font`);
  const { minX, minY, maxX, maxY } = glyph.bbox;
  return { width: round(glyph.advanceWidth), box: [minX, -maxY, maxX, -minY].map(round), path: outline(glyph.path) };
}

/** A row as the formatter would have it. */
function row(code) {
  const { width, box, path } = record(code);
  return `  "${code}": {\n    "width": ${width},\n    "box": [${box.join(', ')}],\n    "path": "${path}"\n  }`;
}

const codes = Object.values(CODES).join(' ').split(' ');
writeFileSync(join(import.meta.dirname, 'table.json'), `{\n${codes.map(row).join(',\n')}\n}\n`);
