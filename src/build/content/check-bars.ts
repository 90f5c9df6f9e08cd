import { faultText, isGrid, parseSticking, readMeter, slotNames, slotsOf, type PhraseFault } from '../../core/index.ts';
import {
  barRequest,
  layBar,
  slotsOfCell,
  type BarSpec,
  type CellLookup,
  type LaidBar,
} from '../../curriculum/index.ts';
import type { Position } from './content-fault.ts';
import { knownHint } from './nearest.ts';
import type { Library } from './library.ts';

/** Where a bar is written. */
export interface BarSite {
  file: string;
  /** Where the bar as a whole stands. */
  place: Position;
  /** Where each of its fields stands. */
  positionOf: (field: 'sticking' | 'cells' | 'meter' | 'grid' | 'pickup', index?: number) => Position;
  /** Where the text of its sticking begins, if it stands in the file as it is. */
  stickingStart?: Position;
}

/** The cells that can be laid: by id, without those whose files are faulty. */
export function cellLookup(library: Library): CellLookup {
  return (id) => library.cells.get(id)?.data;
}

/** A bar that could be laid. */
export type Laid = Extract<LaidBar, { ok: true }>;

/** Lays a bar whose faults are told where it is written; undefined where it has any. */
export function layQuietly(library: Library, spec: BarSpec): Laid | undefined {
  const cellOf = cellLookup(library);
  if (spec.cells?.some((id) => !cellOf(id))) return undefined;
  const laid = layBar(spec, cellOf);
  return laid.ok ? laid : undefined;
}

/** Lays a bar as written; notes what is wrong with it. Undefined where it cannot be laid. */
export function checkBar(library: Library, spec: BarSpec, site: BarSite): Laid | undefined {
  const cellOf = cellLookup(library);
  if (!cellsKnown(library, spec, site)) return undefined;
  const laid = layBar(spec, cellOf);
  if (laid.ok) return laid;
  library.faults.push({
    file: site.file,
    ...barPosition(laid.fault, spec, site),
    ...sayBarFault(laid.fault, spec, cellOf),
  });
  return undefined;
}

/** Notes the cells that are not there; a cell whose own file is faulty is passed over in silence. */
function cellsKnown(library: Library, spec: BarSpec, site: BarSite): boolean {
  const ids = spec.cells ?? [];
  ids.forEach((id, index) => {
    if (!library.cells.has(id))
      library.faults.push({
        file: site.file,
        ...site.positionOf('cells', index),
        message: `there is no cell "${id}"`,
        hint: knownHint(id, library.cells.keys()),
      });
  });
  return ids.every((id) => isSound(library, id));
}

const isSound = (library: Library, id: string) => {
  const text = library.cells.get(id)?.data?.sticking;
  return text !== undefined && slotsOfCell(text) !== undefined;
};

function sayBarFault(fault: PhraseFault, spec: BarSpec, cellOf: CellLookup): { message: string; hint?: string } {
  if (fault.cell === undefined) return { message: tooMany(fault, spec) ?? fault.message, hint: barHint(spec) };
  const { text } = barRequest(spec, cellOf).cells[fault.cell];
  return {
    message: faultText(text, fault),
    hint: fault.message.includes(fault.expected) ? undefined : `${fault.expected} can stand there`,
  };
}

const isRuled = (bar: BarSpec): bar is BarSpec & { meter: string; grid: number } =>
  bar.meter !== undefined && readMeter(bar.meter).ok && isGrid(bar.grid);

/** Where whole bars are full and little is left over, it is too much that was written, not too little. */
function tooMany({ at }: PhraseFault, bar: BarSpec): string | undefined {
  if (!isRuled(bar) || (!bar.cells && bar.sticking?.includes('['))) return undefined;
  const { meter, grid, pickup = 0 } = bar;
  const slots = slotsOf(meter, grid);
  const [full, over] = [Math.floor((at - pickup) / slots), (at - pickup) % slots];
  if (full < 1 || over < 1 || over > slots / 2) return undefined;
  const { one, many } = slotNames(meter, grid);
  const bars = full === 1 ? 'the bar is full' : `${full} bars are full`;
  return `${over} ${over === 1 ? one : many} too many: ${bars} after ${full * slots}, and here are ${at - pickup}`;
}

/** A sum is easier to find wrong with its parts beside it. */
function barHint(bar: BarSpec): string | undefined {
  if (!isRuled(bar)) return undefined;
  const { cells, meter, grid } = bar;
  const { many } = slotNames(meter, grid);
  return `${cells ? `${cells.length} cells` : 'the sticking'} in ${meter} with grid ${grid}: ${many}, ${slotsOf(meter, grid)} a bar`;
}

function barPosition(fault: PhraseFault, spec: BarSpec, site: BarSite): Position {
  if (fault.cell === undefined)
    return spec.sticking === undefined ? site.positionOf('cells') : site.positionOf('sticking');
  if (!site.stickingStart || (spec.sticking ?? '').slice(0, fault.at).includes('\n'))
    return site.positionOf('sticking');
  return { line: site.stickingStart.line, column: site.stickingStart.column + fault.at };
}

/** A cell on its own: a plain row of slots that parses. */
export function checkCells(library: Library): void {
  for (const { file, data, yaml } of library.cells.values()) {
    if (!data || !yaml) continue;
    const read = parseSticking(data.sticking);
    const place = yaml.positionOf(['sticking']);
    if (!read.ok) library.faults.push({ file, ...place, message: faultText(data.sticking, read.fault) });
    else if (read.sticking.hands.some(({ kind }) => kind !== 'slot' && kind !== 'hold'))
      library.faults.push({
        file,
        ...place,
        message: 'a cell is a plain row of slots, without { }, | or [ ]',
        hint: 'bar lines, heads and repeats belong to the bar that uses the cell',
      });
  }
}
