import type { Grid } from '../time/units.ts';
import type { Difficulty } from './types.ts';

/** How many halvings lead from the choices to the answers; big numbers are exact enough as floating ones here. */
const bits = (choices: bigint, answers: bigint): number =>
  Math.max(0, Math.log2(Number(choices)) - Math.log2(Number(answers)));

/** Measures a puzzle: how much there is to choose, to keep in mind and to count. The weights are ours. */
export function difficultyOf(
  facts: Pick<Difficulty, 'answers' | 'choices' | 'rules' | 'depth'>,
  grid: Grid,
): Difficulty {
  const odd = [1, 2, 4, 8].includes(grid) ? 0 : 1;
  const score = bits(facts.choices, facts.answers) + facts.rules + facts.depth / 2 + odd;
  return { ...facts, score: Math.round(score * 100) / 100 };
}
