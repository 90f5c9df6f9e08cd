import { answerAgainst, AGAINST } from '../../../src/bar-math/against.ts';
import { printSumAddress, readSumAddress } from '../../../src/bar-math/address.ts';
import { answerCount, COUNT } from '../../../src/bar-math/count.ts';
import { answerFit, FIT } from '../../../src/bar-math/fit.ts';
import { ON_PAGE } from '../../../src/bar-math/limits.ts';
import { answerOrders, ORDERS } from '../../../src/bar-math/orders/orders.ts';
import { answerResolve, RESOLVE } from '../../../src/bar-math/resolve.ts';
import { beatsOf, MOST_DRAWN } from '../../../src/bar-math/ruler.ts';
import { answerSpeed, SPEED } from '../../../src/bar-math/speed.ts';
import { answerSpread, SPREAD } from '../../../src/bar-math/spread.ts';
import type { Answer, Inputs, SumProps } from '../../../src/bar-math/types.ts';
import { TooLarge } from '../../../src/core/index.ts';
import { attackOf, between, pick } from './attack.ts';
import { damaged, nearlySticking } from './sticking-text.ts';

const props: SumProps = { named: [{ id: 'flam-drag', name: 'flam drag', text: '>lR LL R' }] };

const SUMS: [Inputs, (inputs: Inputs) => Answer][] = [
  [FIT, (inputs) => answerFit(inputs, props, ON_PAGE)],
  [RESOLVE, (inputs) => answerResolve(inputs, props, ON_PAGE)],
  [COUNT, answerCount],
  [SPEED, answerSpeed],
  [ORDERS, (inputs) => answerOrders(inputs, props, ON_PAGE)],
  [SPREAD, answerSpread],
  [AGAINST, answerAgainst],
];

const TYPED = [
  '',
  ' ',
  '0',
  '-1',
  '8',
  '15',
  '15/4',
  '2+2+3/8',
  '1e9',
  '4 a',
  'yes',
  '1-2,2-2',
  '\ud800',
  '9'.repeat(500),
];
const LARGE = ['{R}4091', '{lR}4095', 'R,L', '{{R}64}64', 'llR+K+HllR+K+HllR+K+HllR+K+H', '1, '.repeat(3000)];

function typed(random: () => number): string {
  const kind = random();
  if (kind < 0.3) return pick(random, TYPED);
  if (kind < 0.4) return pick(random, LARGE);
  if (kind < 0.6) return String(between(random, 0, 40));
  const text = nearlySticking(random);
  return kind < 0.8 ? text : damaged(random, text);
}

/** What is wrong with an answer, or nothing. */
function wrongWith({ says, faults, ruler }: Answer): string | undefined {
  if (!says && Object.keys(faults).length === 0) return 'nothing is said';
  if (/NaN|undefined|Infinity/.test(says + JSON.stringify(faults))) return 'what is said is no sentence';
  const counts = ruler ? beatsOf(ruler).flatMap((beat) => beat.counts).length : 0;
  return counts > MOST_DRAWN ? `${counts} slots are drawn` : undefined;
}

/** Anything typed into a sum: it answers, says at a field why it cannot, or leaves it to a worker; the address holds it. */
export const barMath = attackOf('bar math', { short: 1_500, long: 60_000 }, (random, about) => {
  const [first, answer] = pick(random, SUMS);
  const changed = Object.fromEntries(Object.keys(first).flatMap((f) => (random() < 0.4 ? [[f, typed(random)]] : [])));
  const inputs = { ...first, ...changed };
  const address = printSumAddress({ name: 'sum', inputs });
  about(address);
  if (Object.keys(readSumAddress(address).inputs).length !== Object.keys(inputs).length)
    return 'the address lost a field';
  try {
    return wrongWith(answer(inputs));
  } catch (error) {
    if (error instanceof TooLarge) return undefined;
    throw error;
  }
});
