import { describe, expect, it } from 'vitest';
import {
  barOfTime,
  gradePuzzle,
  LEVELS,
  levelOf,
  makePuzzle,
  PUZZLE_KINDS,
  PUZZLES,
  readPhrase,
  solutionOf,
  type Answer,
} from '../../../src/core/index.ts';
import { plainKeeps, plainRight } from './solver.ts';
import { everyPuzzle, faultsOf } from './seeds.ts';

const asText = (value: unknown): string => JSON.stringify(value);

describe('where does it start', () => {
  it('has cells that fill its bars, and one slot alone is right', () => {
    const faults = faultsOf('start', (p) => {
      const read = readPhrase({ cells: p.cells, meter: p.meter, grid: p.grid, pickup: p.pickup });
      if (!read.ok) return read.fault.message;
      const placed = read.phrase.cells[p.ask];
      const answer = p.starts[p.ask];
      if (placed.bar !== answer.bar) return `starts in bar ${placed.bar}`;
      const slot = read.phrase.slots[placed.from].slot;
      for (let given = 0; given < p.barSlots; given += 1) {
        const { right, wrongs } = gradePuzzle(p, given);
        if (right !== (given === slot)) return `${given} is graded ${right}`;
        if (!right && asText(wrongs) !== asText([{ wrong: 'start', given, by: given - slot }])) return asText(wrongs);
      }
      return undefined;
    });
    expect(faults).toEqual([]);
  });
});

describe('fix the sticking', () => {
  it('breaks its rule, and a stroke is right where changing it makes the rule hold', () => {
    const faults = faultsOf('fix', (p) => {
      if (plainKeeps(p, p.strokes)) return 'nothing is broken';
      for (let slot = 0; slot < p.slots; slot += 1) {
        const right = plainRight(p, slot);
        if (gradePuzzle(p, slot).right !== right || p.answers.includes(slot) !== right)
          return `slot ${slot} is ${right}`;
      }
      return p.answers.length ? undefined : "no stroke's change makes it hold";
    });
    expect(faults).toEqual([]);
  });
});

describe('resolves', () => {
  it('is right where counting bar by bar it starts on beat 1 again', () => {
    const faults = faultsOf('resolves', (p) => {
      let bars = 1;
      while ((bars * p.barSlots) % p.cell.slots) bars += 1;
      for (let given = 1; given <= 2 * bars; given += 1) {
        const { right, wrongs } = gradePuzzle(p, given);
        if (right !== (given === bars)) return `${given} bars are graded ${right}`;
        const again = (given * p.barSlots) % p.cell.slots === 0;
        if (!right && wrongs[0].wrong !== (again ? 'resolved-before' : 'not-resolved')) return asText(wrongs);
      }
      return undefined;
    });
    expect(faults).toEqual([]);
  });
});

describe('which is which', () => {
  it('has two that differ in what it asks about, and can be played', () => {
    const faults = faultsOf('which', (p) => {
      const [a, b] = p.heard;
      const differs = { cells: a.text !== b.text, width: a.flamMs !== b.flamMs, lead: a.lead !== b.lead }[p.about];
      if (!differs || a.id === b.id) return 'they do not differ';
      if (p.heard[p.answer - 1].id !== p.ask) return 'the answer is not what is asked for';
      const bad = p.heard
        .map(({ id, text }) => readPhrase({ cells: [{ id, text }], meter: p.meter, grid: p.grid }))
        .find((read) => !read.ok);
      return bad && !bad.ok ? bad.fault.message : undefined;
    });
    expect(faults).toEqual([]);
  });

  it('knows the other one for wrong', () => {
    const puzzle = makePuzzle('which', 1);
    expect(gradePuzzle(puzzle, puzzle.answer === 1 ? 2 : 1)).toEqual({ right: false, wrongs: [{ wrong: 'other' }] });
  });
});

describe.each(PUZZLE_KINDS)('%s', (kind) => {
  it('is the same each time, and no two numbers in a row are one puzzle', () => {
    const again = Array.from({ length: 60 }, (_, i) => makePuzzle(kind, i + 1));
    const texts = [...everyPuzzle(kind, 60)].map(({ seed: _seed, ...rest }) => asTextOf(rest));
    expect(again.map(({ seed: _seed, ...rest }) => asTextOf(rest))).toEqual(texts);
    expect(new Set(texts).size).toBeGreaterThan(kind === 'which' ? 15 : 30);
  });

  it('has the level that its number says, and is harder from level to level', () => {
    const scores = LEVELS.map(() => [] as number[]);
    for (const puzzle of everyPuzzle(kind, 500)) {
      expect(puzzle.level).toBe(levelOf(puzzle.seed));
      scores[puzzle.level - 1].push(puzzle.difficulty.score);
    }
    const means = scores.map((list) => list.reduce((sum, score) => sum + score, 0) / list.length);
    expect(means).toEqual([...means].sort((a, b) => a - b));
  });

  it('throws for an answer that cannot be given', () => {
    const puzzle = makePuzzle(kind, 20261125);
    const given = 'shelf' in puzzle ? [undefined, null, 'kick', {}] : [undefined, NaN, -1, 0.5, 1000.5];
    for (const answer of given) expect(() => gradePuzzle(puzzle, answer as Answer), String(answer)).toThrow(RangeError);
  });

  it('has a source of chance of its own', () => {
    const numbers = PUZZLE_KINDS.map((one) => PUZZLES[one].number);
    expect(numbers.filter((one) => one === PUZZLES[kind].number)).toHaveLength(1);
  });

  it('takes its own solution', () => {
    const puzzle = makePuzzle(kind, 20261125);
    expect(gradePuzzle(puzzle, solutionOf(puzzle))).toEqual({ right: true, wrongs: [] });
  });

  it('refuses an answer of another kind, and a number that is none', () => {
    const strange = 'shelf' in makePuzzle(kind, 1) ? 1 : ['kick'];
    expect(() => gradePuzzle(makePuzzle(kind, 1), strange)).toThrow(RangeError);
    for (const seed of [0, -1, 1.5, NaN, 1e9])
      expect(() => makePuzzle(kind, seed)).toThrow(/seed is .*; a whole number from 1 to/);
  });
});

const asTextOf = (value: unknown): string => JSON.stringify(value, (_, v) => (typeof v === 'bigint' ? `${v}` : v));

describe('a bar of time', () => {
  it('fills its bar in every meter and grid', () => {
    for (const meter of ['2/4', '3/4', '4/4', '5/4', '6/8', '7/8', '2+2+3/8', '12/8'])
      for (const grid of [1, 2, 3, 4, 5, 6, 7, 8])
        expect(readPhrase({ cells: [{ id: 'time', text: barOfTime(meter, grid) }], meter, grid }).ok).toBe(true);
  });
});
