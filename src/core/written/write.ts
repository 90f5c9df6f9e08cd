import { checkOptions, oneOf } from '../check.ts';
import { checkTimeline } from '../timeline/check-timeline.ts';
import type { Ticks } from '../time/units.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';
import { beamGroups, tupletMarks, type BeamGroup, type TupletMark } from './marks.ts';
import { scoreBars, type Fragment, type ScoreBar } from './fragments.ts';
import { isFoot, placedByHeight, staffFor, type Staff } from './kit.ts';
import { longNote, longRest, type VoiceBar } from './long.ts';
import { voicesOf, type Onset, type Voice } from './voices.ts';
import { scopesOf } from './scopes.ts';
import { writeScope, type Written } from './symbols.ts';

/** What one voice has in one fragment. */
export interface VoicePart {
  stem: 1 | -1;
  /** Whether another voice shares the bar. */
  shared: boolean;
  symbols: Written[];
  beams: BeamGroup[];
  tuplets: TupletMark[];
}

/** A fragment, written out. */
export interface WrittenFragment extends Fragment {
  voices: VoicePart[];
}

/** A bar, written out. */
export interface WrittenBar extends Omit<ScoreBar, 'fragments'> {
  fragments: WrittenFragment[];
}

/** The onset that still rings at a tick. */
const heldAt = (onsets: readonly Onset[], tick: number): Onset | undefined => {
  const before = onsets.findLast((onset) => onset.tick < tick);
  return before && before.ringEnd > tick ? before : undefined;
};

/** The symbols of a voice, fragment by fragment. `earlier` are the voice's onsets before the bar. */
function symbolsOf(voice: VoiceBar, earlier: readonly Onset[]): Written[][] {
  const { bar, onsets } = voice;
  const all = [...earlier, ...onsets];
  let covered = 0;
  return bar.fragments.map((fragment, index) => {
    if (covered > 0) {
      covered -= 1;
      return [];
    }
    const held = heldAt(all, fragment.tick);
    const long = longNote(voice, index, held) ?? longRest(voice, index, held);
    covered = (long?.beats ?? 1) - 1;
    if (long) return [long.symbol];
    return scopesOf(fragment, bar, onsets).flatMap((scope) => writeScope(scope, onsets, heldAt(all, scope.tick)));
  });
}

const isRest = (symbol: Written): boolean => symbol.kind === 'rest';
const plays = (symbols: readonly Written[]): boolean => symbols.some((symbol) => !isRest(symbol));

/**
 * Rests that only fill a voice up, and are left out: in the feet where a hand plays in the beat and shows its division, in
 * the hands where a foot strikes at that moment or only feet play; in silence the hands rest.
 */
function isFiller(rest: Written, own: readonly Written[], other: readonly Written[], stem: 1 | -1): boolean {
  if (stem < 0) return !plays(own) || (plays(other) && showsDivision(rest, other));
  return (plays(other) && !plays(own)) || other.some((symbol) => !isRest(symbol) && symbol.tick === rest.tick);
}

/** Whether the other voice has the same tuplet, or there is none. */
const showsDivision = ({ scope }: Written, other: readonly Written[]): boolean =>
  scope.figure === 0 || other.some((symbol) => symbol.scope.figure === scope.figure);

/** Before the first stroke of a pickup nothing rests, but inside a tuplet that must be seen to be one. */
const isBeforePickup = (rest: Written, parts: Written[][]): boolean => {
  const [first] = parts
    .flat()
    .filter((s) => !isRest(s))
    .sort((a, b) => a.tick - b.tick);
  return first !== undefined && rest.tick < first.tick && !(rest.scope.figure && rest.scope.tick === first.scope.tick);
};

function withoutFillers(parts: Written[][], voices: readonly Voice[], number: number): Written[][] {
  return parts.map((symbols, i) =>
    symbols.filter((symbol) => {
      if (!isRest(symbol)) return true;
      if (number === 0 && isBeforePickup(symbol, parts)) return false;
      return voices.length < 2 || !isFiller(symbol, symbols, parts[1 - i], voices[i].stem);
    }),
  );
}

/** A lower voice does not repeat the figure of a tuplet that the upper one has. */
function ownTuplets(marks: TupletMark[], upper: readonly Written[] | undefined): TupletMark[] {
  return marks.filter((mark) => !upper?.some(({ scope }) => scope.figure === mark.figure));
}

function voicePart(symbols: Written[], voice: Voice, shared: boolean, upper?: readonly Written[]): VoicePart {
  const beams = beamGroups(symbols);
  const tuplets = ownTuplets(tupletMarks(symbols, beams), upper);
  return { stem: voice.stem, shared, symbols, beams, tuplets };
}

const NOWHERE: ReadonlySet<Ticks> = new Set();

/** How bars are written: on which staff, diddles as two notes or one with a slash, and where lines of the page begin. */
export interface WriteOptions {
  staff: Staff;
  slashed: boolean;
  /** No note or rest goes over one of these ticks. */
  breaks?: ReadonlySet<Ticks>;
}

/** The bars of a piece, written out voice by voice. */
export function writeBars(
  bars: readonly ScoreBar[],
  strokes: Stroke[],
  { staff, slashed, breaks = NOWHERE }: WriteOptions,
): WrittenBar[] {
  let earlier: Onset[] = [];
  const written = bars.map((bar) => {
    const voices = voicesOf(bar, strokes, slashed);
    const own = voices.map((voice) =>
      symbolsOf(
        { bar, onsets: voice.onsets, breaks },
        earlier.filter((o) => sameLimbs(o, voice)),
      ),
    );
    earlier = [...earlier, ...voices.flatMap((voice) => voice.onsets)].slice(-4);
    const fragments = bar.fragments.map((fragment, f) => {
      const parts = withoutFillers(
        own.map((symbols) => symbols[f]),
        voices,
        bar.number,
      );
      return {
        ...fragment,
        voices: parts.map((part, v) => voicePart(part, voices[v], voices.length > 1, v > 0 ? parts[0] : undefined)),
      };
    });
    return { ...bar, fragments };
  });
  linkTies(written);
  placeHeads(written, staff);
  return written;
}

const symbolsIn = (bars: readonly WrittenBar[]): Written[] =>
  bars.flatMap(({ fragments }) => fragments).flatMap(({ voices }) => voices.flatMap(({ symbols }) => symbols));

/** Gives every note its heads. */
function placeHeads(bars: readonly WrittenBar[], staff: Staff): void {
  for (const symbol of symbolsIn(bars)) if (symbol.onset) symbol.heads = placedByHeight(symbol.onset.strokes, staff);
}

/** Lets every tied note know where its tie comes from. */
function linkTies(bars: readonly WrittenBar[]): void {
  const open = new Map<string, Ticks>();
  for (const symbol of symbolsIn(bars)) {
    if (!symbol.onset || symbol.kind === 'rest') continue;
    const { id } = symbol.onset.strokes[0];
    if (!symbol.begins) symbol.from = open.get(id);
    open.set(id, symbol.tick);
  }
}

/** Whether an onset of the bar before belongs to this voice: feet to the lower one where there are two. */
function sameLimbs(onset: Onset, voice: Voice): boolean {
  const feet = onset.strokes.every(isFoot);
  return voice.stem > 0 ? !feet || voice.onsets.some((o) => o.strokes.some(isFoot)) : feet;
}

/** How a timeline is written. */
export interface WrittenNotesOptions {
  /** One line or five; left out, five as soon as a stroke needs them. */
  staff?: Staff;
  /** Diddles as two notes (default) or as one with a slash through its stem. */
  diddles?: 'notes' | 'slash';
}

/**
 * What a percussionist would write: bars, pickup first as bar 0, cut into beats, each with its voices of notes and rests,
 * ties, beams and tuplets. Ticks are the timeline's. Throws RangeError for what is no timeline or no such staff.
 * @example
 * writtenNotes(timeline)[0].fragments[0].voices[0].symbols.map(({ value }) => value.base) // → [8, 16, 16, 8]
 */
export function writtenNotes(timeline: Timeline, options: WrittenNotesOptions = {}): WrittenBar[] {
  checkTimeline(timeline);
  checkOptions('writtenNotes', options);
  const { staff = staffFor(timeline), diddles = 'notes' } = options;
  oneOf('staff', staff, ['pad', 'kit']);
  oneOf('diddles', diddles, ['notes', 'slash']);
  return writeBars(scoreBars(timeline), timeline.strokes, { staff, slashed: diddles === 'slash' });
}
