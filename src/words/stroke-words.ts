import type { Limb, Stroke, StrokeKind, Surface } from '../core/index.ts';

const LIMBS: Record<Limb, string> = { R: 'right', L: 'left', K: 'kick', H: 'hi-hat foot' };

const KINDS: Partial<Record<StrokeKind, string>> = {
  flam: ' flam',
  drag: ' drag',
  ruff: ' four-stroke ruff',
  buzz: ' buzz',
};

/** Where a stroke is, said only where it is not where that limb strikes anyway. */
const SURFACES: Partial<Record<Surface, string>> = {
  rimshot: ' rimshot',
  cross: ' cross-stick',
  rim: ' on the rim',
  click: ' stick click',
  tom1: ' on the high tom',
  tom2: ' on the middle tom',
  floor: ' on the floor tom',
  hat: ' on the hi-hat',
  open: ' on the open hi-hat',
  half: ' on the half-open hi-hat',
  splash: ' on the splash',
  ride: ' on the ride',
  bell: ' on the ride bell',
  crash: ' on the crash',
  choke: ' on the crash, choked',
  china: ' on the china',
  cowbell: ' on the cowbell',
};

const surfaceWords = (stroke: Stroke): string => SURFACES[stroke.surface] ?? '';

/** Grace notes that stand elsewhere than their primary are said with their place. */
function graceWords(stroke: Stroke, all: Map<string, Stroke>): string {
  const graces = stroke.opened ? [] : stroke.graces.map((id) => all.get(id)!);
  const moved = graces.filter((grace) => grace.surface !== stroke.surface);
  if (moved.length === 0) return '';
  return ` with its grace note${surfaceWords(moved[0]) || ' on the snare'}`;
}

function strokeWords(stroke: Stroke, all: Map<string, Stroke>): string {
  const force = stroke.marcato ? 'strongly accented ' : stroke.accent ? 'accented ' : stroke.ghost ? 'ghosted ' : '';
  const kind = stroke.opened ? '' : (KINDS[stroke.kind] ?? '');
  return force + LIMBS[stroke.limb] + kind + surfaceWords(stroke) + graceWords(stroke, all);
}

const REPEATS = ['', '', ' double', ' three times', ' four times'];

/**
 * The strokes of one slot: together, one after another, or one hand's double.
 * @example
 * chordWords(strokes, all) // → 'accented right flam'
 */
export function chordWords(strokes: Stroke[], all: Map<string, Stroke>): string {
  const chords = [...Map.groupBy(strokes, (stroke) => stroke.tick).values()].map((chord) =>
    chord.map((stroke) => strokeWords(stroke, all)).join(' and '),
  );
  const plain = (words: string): string => words.replace(/^(strongly )?accented /, '');
  const alike = chords.length > 1 && chords.slice(1).every((words) => words === plain(chords[0]));
  if (!alike) return chords.join(' then ');
  const foot = strokes[0].kind === 'foot' && chords.length === 2;
  return chords[0] + (foot ? ' twice' : REPEATS[chords.length]);
}
