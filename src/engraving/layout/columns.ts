import { beamsOf, type Stroke, type Ticks, type VoicePart, type Written, type WrittenBar } from '../../core/index.ts';
import { SIZE } from './sizes.ts';

/** All that stands at one tick, and how far it reaches to either side of it. */
export interface Column {
  tick: Ticks;
  left: number;
  right: number;
  /** How far its flag reaches to the right. */
  flag: number;
}

/** How far the grace notes of a primary reach to its left. */
export function graceReach(count: number, ghost: boolean): number {
  if (count === 0) return 0;
  return graceOffset(count, 0, ghost) + SIZE.head * SIZE.grace + 1;
}

/** From a primary back to one of its grace notes, middle to middle. */
export function graceOffset(count: number, nth: number, ghost: boolean): number {
  return SIZE.graceGap + (count - 1 - nth) * SIZE.graceStep + (ghost ? 5 : 0);
}

/** Grace notes of a stroke that are drawn as such. */
export const graceCount = (stroke: Stroke): number => (stroke.opened ? 0 : stroke.graces.length);

function strokeColumn(stroke: Stroke, tick: Ticks): Column {
  const side = stroke.ghost ? SIZE.head + 5 : stroke.surface === 'rimshot' ? SIZE.head + 3 : SIZE.head;
  return { tick, left: Math.max(side, graceReach(graceCount(stroke), stroke.ghost)), right: side, flag: 0 };
}

/** Whether two heads of one chord stand beside each other. */
export const isDoubled = (strokes: readonly Stroke[]): boolean =>
  new Set(strokes.map((stroke) => stroke.surface)).size < strokes.length;

function symbolColumns(symbol: Written, flagged: boolean): Column[] {
  const { tick, kind, value, onset } = symbol;
  const dot = value.dots ? 8 : 0;
  if (kind === 'rest') return [{ tick, left: SIZE.head, right: SIZE.head + dot, flag: 0 }];
  const doubled = isDoubled(onset!.strokes) && !onset!.slashes ? 2 * SIZE.head : 0;
  return onset!.strokes.map((stroke) => {
    const column = strokeColumn(stroke, symbol.begins && onset!.slashes ? stroke.tick : tick);
    return { ...column, right: column.right + dot + doubled, flag: flagged ? SIZE.head + SIZE.flag : 0 };
  });
}

/** The columns of a voice; a whole rest stands in the middle of its bar, in nobody's way. */
function partColumns({ symbols, beams, stem }: VoicePart): Column[] {
  const beamed = new Set(beams.flatMap(({ notes }) => notes));
  return symbols.flatMap((symbol, i) => {
    if (symbol.kind === 'rest' && symbol.value.base === 1) return [];
    return symbolColumns(symbol, stem > 0 && !beamed.has(i) && beamsOf(symbol.value) > 0);
  });
}

/** The columns of a bar in order of time, one a tick. */
export function columnsOf(bar: WrittenBar): Column[] {
  const all = bar.fragments.flatMap((fragment) => fragment.voices).flatMap(partColumns);
  const byTick = Map.groupBy(all, (column) => column.tick);
  const columns = [...byTick].map(([tick, group]) => ({
    tick,
    left: Math.max(...group.map((column) => column.left)),
    right: Math.max(...group.map((column) => column.right)),
    flag: Math.max(...group.map((column) => column.flag)),
  }));
  return columns.sort((a, b) => a.tick - b.tick);
}
