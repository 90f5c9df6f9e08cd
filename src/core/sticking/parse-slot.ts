import { isHand, type Surface, SURFACES } from './limbs.ts';
import { isSpace, type Reader } from './reader.ts';
import { sortChord } from './mirror.ts';
import type { Chord, Grace, HoldItem, Limb, SlotItem, StrokeText } from './types.ts';

const PLAYED = 'R, L, K, H or a grace note r, l';
/** Where a part of a slot begins, a rest can stand as well. */
const STROKES = 'R, L, K, H, a rest "-" or a grace note r, l';
const MOST_PARTS = 4;
const MOST_GRACES = 3;
const SURFACE = /[A-Za-z0-9]+/y;

const ends = (reader: Reader): boolean => reader.done || isSpace(reader.here) || reader.here === '}';

/** Reads one slot: a hold, a rest, or up to four parts that share it. */
export function readSlot(reader: Reader): SlotItem | HoldItem {
  if (reader.take('_')) return endOfHold(reader);
  const parts: Chord[] = [];
  while (!ends(reader)) {
    if (parts.length === MOST_PARTS)
      reader.refuse(`a slot holds at most ${MOST_PARTS} strokes; put a space before "${reader.found}"`, 'a space');
    parts.push(reader.take('-') ? [] : readChord(reader));
  }
  return { kind: 'slot', parts: parts.every((p) => p.length === 0) ? [[]] : parts };
}

function endOfHold(reader: Reader): HoldItem {
  if (!ends(reader))
    reader.refuse(`"_" fills a slot alone; put a space before "${reader.found}"`, 'a space or the end of the line');
  return { kind: 'hold' };
}

function readChord(reader: Reader): Chord {
  const start = reader.at;
  const chord = [readStroke(reader, STROKES)];
  while (reader.take('+')) {
    if (ends(reader))
      reader.refuse('"+" joins two strokes; R, L, K or H belongs after it', 'R, L, K or H', reader.at - 1);
    const at = reader.at;
    const stroke = readStroke(reader, PLAYED);
    if (chord.some((s) => s.limb === stroke.limb))
      reader.refuse(
        `"${stroke.limb}" stands twice in one chord; each limb can strike once`,
        'another limb',
        at,
        stroke.limb,
      );
    chord.push(stroke);
  }
  if (chord.filter((s) => isHand(s.limb)).length === 2 && chord.some((s) => s.graces))
    reader.refuse(
      'both hands strike together here, so neither is free for a grace note; write the flam with one hand',
      'one hand with its grace note, or two hands without',
      start,
      reader.text.slice(start, reader.at),
    );
  return sortChord(chord);
}

function readStroke(reader: Reader, could: string): StrokeText {
  const start = reader.at;
  const accent = reader.take('>^') as '' | '>' | '^';
  if (reader.here === '(') return accent ? refuseAccentedGhost(reader, start, accent) : readGhost(reader);
  return { ...readBody(reader, accent ? PLAYED : could), ...(accent ? { accent } : {}) };
}

function refuseAccentedGhost(reader: Reader, at: number, accent: string): never {
  return reader.refuse(
    'a ghost note cannot be accented; write > or the brackets, not both',
    'a plain stroke',
    at,
    accent,
  );
}

function readGhost(reader: Reader): StrokeText {
  const open = reader.at;
  reader.take('(');
  if (reader.here === '>' || reader.here === '^') refuseAccentedGhost(reader, reader.at, reader.here);
  const stroke = readBody(reader, PLAYED);
  if (!reader.take(')'))
    reader.refuse(
      ends(reader)
        ? 'the bracket of this ghost note is not closed'
        : 'a ghost note is one stroke; close its bracket first',
      '")"',
      ends(reader) ? open : reader.at,
      ends(reader) ? '(' : reader.found,
    );
  return { ...stroke, ghost: true };
}

/** Grace notes, the limb, the buzz and the surface; `could` says what may stand where they begin. */
function readBody(reader: Reader, could: string): StrokeText {
  const graces = readGraces(reader);
  const at = reader.at;
  const limb = readLimb(reader, graces.length > 0, could);
  if (graces.length) checkGraces(reader, graces, limb, at);
  const buzz = reader.take('z') !== '';
  if (buzz && !isHand(limb))
    reader.refuse('a foot cannot play a buzz; z goes after R or L', 'R or L before z', reader.at - 1, 'z');
  const surface = readSurface(reader);
  return {
    limb,
    ...(graces.length ? { graces: graces.map((g) => g.grace) } : {}),
    ...(buzz ? { buzz: true as const } : {}),
    ...(surface ? { surface } : {}),
  };
}

function readGraces(reader: Reader): { grace: Grace; at: number }[] {
  const graces: { grace: Grace; at: number }[] = [];
  for (let at = reader.at, letter = reader.take('rl'); letter; at = reader.at, letter = reader.take('rl')) {
    if (graces.length === MOST_GRACES)
      reader.refuse(`at most ${MOST_GRACES} grace notes lead to a stroke`, 'R or L', at, letter);
    const surface = readSurface(reader);
    graces.push({ grace: { hand: letter === 'r' ? 'R' : 'L', ...(surface ? { surface } : {}) }, at });
  }
  return graces;
}

function readLimb(reader: Reader, afterGrace: boolean, could: string): Limb {
  const limb = reader.take('RLKH');
  if (limb) return limb as Limb;
  if (afterGrace && ends(reader))
    reader.refuse(
      'a grace note leads to a stroke; R or L belongs after it (a small letter alone is no stroke)',
      'R or L',
      reader.at - 1,
      reader.text[reader.at - 1],
    );
  if (afterGrace) reader.refuse(`"${reader.found}" cannot follow a grace note; R or L can stand here`, 'R or L');
  if (ends(reader)) reader.refuse(`a stroke is missing; ${could} can stand here`, could, reader.at - 1);
  const what = `"${reader.found}" ${reader.here === '-' ? 'is a rest' : 'is not a stroke'}`;
  return reader.refuse(`${what}; ${hint(reader.here)}${could} can stand here`, could);
}

const hint = (c: string): string => (c === 'k' || c === 'h' ? `feet are capitals, ${c.toUpperCase()}; ` : '');

function checkGraces(reader: Reader, graces: { grace: Grace; at: number }[], limb: Limb, at: number): void {
  if (!isHand(limb)) reader.refuse(`a foot takes no grace note; R or L can stand before "${limb}"`, 'R or L', at, limb);
  const last = graces[graces.length - 1];
  if (last.grace.hand === limb) {
    const letter = limb.toLowerCase();
    const other = limb === 'R' ? 'l' : 'r';
    reader.refuse(
      `"${letter}${limb}": the last grace note is played by the hand that is free, so ${other} can stand here, not ${letter}`,
      other,
      last.at,
      letter,
    );
  }
}

function readSurface(reader: Reader): Surface | undefined {
  const at = reader.at;
  if (!reader.take('@')) return undefined;
  const name = reader.match(SURFACE);
  if (!(SURFACES as readonly string[]).includes(name)) refuseSurface(reader, at, name);
  reader.take(':');
  return name as Surface;
}

function refuseSurface(reader: Reader, at: number, name: string): never {
  const run = [...SURFACES].sort((a, b) => b.length - a.length).find((s) => name.startsWith(s));
  const help = run ? `; where a letter follows, write "@${run}:"` : '';
  const list = SURFACES.join(', ');
  return reader.refuse(`"@${name}" is no surface of the kit${help}; there are ${list}`, list, at, `@${name}`);
}
