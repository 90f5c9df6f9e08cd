import { isObject, must, text as checkText } from '../check.ts';
import type { Fault } from '../fault.ts';
import { cellsOf } from '../sticking/cells.ts';
import { parseSticking } from '../sticking/parse.ts';
import { layPhrase } from './lay.ts';
import type { Cell, Phrase, PhraseRequest } from './types.ts';

/** A cell as it is written in content: a name and a text. */
export interface CellText {
  id: string;
  text: string;
}

/** What `readPhrase` takes: texts in place of stickings. */
export interface PhraseTextRequest extends Omit<PhraseRequest, 'cells'> {
  cells: readonly CellText[];
}

/** A fault of a phrase; where the text of a cell is bad, `cell` says which and `at` is an index into its text. */
export interface PhraseFault extends Fault {
  cell?: number;
}

/**
 * Reads texts and lays them as a phrase; each repeat of a top-level group is a cell of its own under the same id.
 * @example
 * readPhrase({ cells: [{ id: 'flam-drag', text: '{>lR LL R}4' }], meter: '4/4', grid: 3 }).phrase.cells.length // → 4
 */
export function readPhrase(
  request: PhraseTextRequest,
): { ok: true; phrase: Phrase } | { ok: false; fault: PhraseFault } {
  must(
    isObject(request) && Array.isArray(request.cells),
    'what is asked for',
    request,
    'an object with a list of cells',
  );
  const cells: Cell[] = [];
  for (const [index, cell] of request.cells.entries()) {
    must(isObject(cell), 'cell', cell, 'an id and a text');
    checkText('cell id', cell.id);
    const { id, text } = cell;
    const read = parseSticking(text);
    if (!read.ok) return { ok: false, fault: { ...read.fault, cell: index } };
    cells.push(...cellsOf(read.sticking).map((sticking) => ({ id, sticking })));
  }
  return layPhrase({ ...request, cells });
}
