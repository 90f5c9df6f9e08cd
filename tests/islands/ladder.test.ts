import { describe, expect, test } from 'vitest';
import { climbed, FOOT, moved, turned, type Climb } from '../../components/islands/ladder/climb.ts';
import { LADDER_STEP, ladderTempos, roundsAStep, RUDIMENT_TEMPO } from '../../src/curriculum/index.ts';

const RUNGS = { steps: 4, rounds: 2 };

/** The steps of a ladder by round, until it is over. */
function walk(from: Climb, at: Climb | undefined = from): number[] {
  const steps: number[] = [];
  for (let round = from.since; at; round += 1) {
    at = climbed(at, round, RUNGS);
    if (at) steps.push(at.step);
  }
  return steps;
}

describe('the tempos of a ladder', () => {
  test('go up by even steps from the first to the last', () => {
    const tempos = ladderTempos(RUDIMENT_TEMPO);
    expect([tempos[0], tempos.at(-1)]).toEqual([RUDIMENT_TEMPO.from, RUDIMENT_TEMPO.to]);
    expect(new Set(tempos.slice(1).map((tempo, index) => tempo - tempos[index]))).toEqual(new Set([LADDER_STEP]));
  });

  test('end on the last tempo where the steps do not come out even', () => {
    expect(ladderTempos({ from: 60, to: 85 })).toEqual([60, 70, 80, 85]);
  });

  test('are each held for four bars or a little more', () => {
    expect([1, 2, 3, 4, 8].map(roundsAStep)).toEqual([4, 2, 2, 1, 1]);
  });
});

describe('on a ladder', () => {
  test('every step is held as long as the others, the top one once, up and down', () => {
    expect(walk(FOOT)).toEqual([0, 0, 1, 1, 2, 2, 3, 3, 2, 2, 1, 1, 0, 0]);
  });

  test('who turns round plays the step to its end and goes down from there', () => {
    expect(walk(turned({ step: 2, falling: false, since: 1 }))).toEqual([2, 2, 1, 1, 0, 0]);
  });

  test('who presses a step goes on from it in the same direction', () => {
    expect(walk(moved({ step: 0, falling: false, since: 1 }, 2, 5))).toEqual([2, 2, 3, 3, 2, 2, 1, 1, 0, 0]);
    expect(walk(moved({ step: 3, falling: true, since: 1 }, 1, 5))).toEqual([1, 1, 0, 0]);
  });

  test('a round that was missed skips no step', () => {
    expect(climbed(FOOT, 9, RUNGS)).toEqual({ step: 1, falling: false, since: 9 });
  });
});
