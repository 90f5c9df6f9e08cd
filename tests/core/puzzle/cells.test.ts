import { describe, expect, it } from 'vitest';
import {
  chanceOf,
  completion,
  fillings,
  gradeCells,
  cellsHint,
  makePuzzle,
  PUZZLES,
  slotsOf,
  type Chance,
  type CellsPuzzle,
} from '../../../src/core/index.ts';
import { plainSlots, plainWrongs } from './solver.ts';
import { faultsOf } from './seeds.ts';

const KINDS = ['fill', 'missing', 'ear'] as const;
const asText = (value: unknown): string => JSON.stringify(value);

/** Wrong or right, but another answer: one cell more, one less, one exchanged, two swapped, or all in another order. */
function mutated(ids: readonly string[], { shelf }: CellsPuzzle, chance: Chance): string[] {
  const at = chance.below(ids.length);
  const other = chance.pick(shelf).id;
  const ways = [
    () => ids.filter((_, i) => i !== at),
    () => [...ids.slice(0, at), other, ...ids.slice(at)],
    () => ids.map((id, i) => (i === at ? other : id)),
    () => ids.map((_, i) => ids[i === at ? (at + 1) % ids.length : i === (at + 1) % ids.length ? at : i]),
    () => chance.shuffle(ids),
  ];
  return chance.pick(ways)();
}

describe.each(KINDS)('%s', (kind) => {
  it('fills its bars and has an answer', () => {
    const faults = faultsOf(kind, (p) => {
      if (p.slots % slotsOf(p.meter, p.grid)) return 'no whole bars';
      const fixed = plainSlots([...p.before, ...p.after]).length;
      if (fixed + p.gap !== p.slots) return `${fixed} fixed and ${p.gap} open are not ${p.slots}`;
      if (p.difficulty.answers < 1n || p.difficulty.answers > p.difficulty.choices) return 'answers do not make sense';
      const { right, wrongs } = gradeCells(p, p.solution);
      return right ? undefined : `its own solution is wrong: ${asText(wrongs)}`;
    });
    expect(faults).toEqual([]);
  });

  it('grades changed answers as a look at the letters does, with the same reasons', () => {
    const faults = faultsOf(kind, (p) => {
      const chance = chanceOf(BigInt(p.seed));
      for (let i = 0; i < 4; i += 1) {
        const ids = mutated(p.solution, p, chance);
        const plain = plainWrongs(p, ids);
        const { right, wrongs } = gradeCells(p, ids);
        const [first] = plain;
        const same =
          first && /short|long/.test(first.wrong) ? asText(wrongs[0]) === asText(first) : sameReasons(wrongs, plain);
        if (right !== (plain.length === 0) || !same) return `${ids}: ${asText(wrongs)} is not ${asText(plain)}`;
      }
      return undefined;
    });
    expect(faults).toEqual([]);
  });

  it('counts its answers as grading every filling does', () => {
    const faults = faultsOf(kind, (p) => {
      if (p.difficulty.choices > 100n || p.seed % 5) return undefined;
      const right = [...fillings(p)]
        .map((ids) => ids.filter((id) => !id.startsWith('(')))
        .filter((ids) => gradeCells(p, ids).right);
      return BigInt(right.length) === p.difficulty.answers ? undefined : `${right.length}, not ${p.difficulty.answers}`;
    });
    expect(faults).toEqual([]);
  });

  it('has another answer where it says that there is one', () => {
    const faults = faultsOf(kind, (p) => {
      const other = PUZZLES[kind].another!(p as never, p.solution);
      if ((other !== undefined) !== p.difficulty.answers > 1n) return `other: ${other}`;
      return !other || (gradeCells(p, other).right && asText(other) !== asText(p.solution))
        ? undefined
        : `${other} is not`;
    });
    expect(faults).toEqual([]);
  });

  it('has hints that lead to an answer from wherever one stands', () => {
    const faults = faultsOf(kind, (p) => {
      if (p.seed % 5) return undefined;
      const chance = chanceOf(BigInt(p.seed) + 7n);
      let placed = mutated(p.solution, p, chance);
      for (let steps = 0; steps < 40; steps += 1) {
        const hint = cellsHint(p, placed, 2);
        if (hint.hint === 'done') return gradeCells(p, placed).right ? undefined : 'done, but not right';
        if (hint.hint === 'back') placed = placed.slice(0, placed.length - hint.cells);
        else if (hint.hint === 'cell') placed = [...placed, hint.cell];
        else return `a hint that says ${hint.hint} at step 2`;
      }
      return 'no answer after 40 hints';
    });
    expect(faults).toEqual([]);
  });
});

/** Several rules may be broken; the order in which they are listed is not asked for. */
const sameReasons = (a: unknown[], b: unknown[]): boolean =>
  asText(a.map(asText).sort()) === asText(b.map(asText).sort());

describe('hints', () => {
  const puzzle = makePuzzle('fill', 7);

  it('first say the count, then what is left, then a cell', () => {
    expect(cellsHint(puzzle, [], 0)).toEqual({ hint: 'count', filled: 0, of: 16, next: 0 });
    expect(cellsHint(puzzle, [], 1)).toMatchObject({ hint: 'left', left: 16 });
    expect(cellsHint(puzzle, [], 2)).toEqual({ hint: 'cell', cell: completion(puzzle, [])![0] });
  });

  it('say what to take back where no answer begins like this', () => {
    const wrong = puzzle.shelf.find(({ id }) => id !== puzzle.rules.first)!.id;
    expect(cellsHint(puzzle, [wrong], 1)).toEqual({ hint: 'back', cells: 1 });
  });
});

describe('an answer that is no answer', () => {
  it('names a cell that is not on the shelf', () =>
    expect(gradeCells(makePuzzle('fill', 7), ['nothing'])).toEqual({
      right: false,
      wrongs: [{ wrong: 'not-on-shelf', cell: 'nothing' }],
    }));

  it('is short by everything where nothing is placed', () =>
    expect(gradeCells(makePuzzle('fill', 7), []).wrongs[0]).toEqual({ wrong: 'short', left: 16, slot: 0 }));
});
