import { createReckoner, type Reckoner } from '../../../src/bar-math/orders/reckoner.ts';
import type { AnswerTo, Question, Task } from '../../../src/bar-math/orders/tasks.ts';

/** A wait shorter than this needs no words. */
const PATIENCE_MS = 300;

/** Follows a question: its answer at once where that is quick, else the last one until a worker has the next. */
export function createLate<Q extends Question>(task: () => Task<Q>, reckoner: Reckoner) {
  let last = $state.raw<AnswerTo<Q>>();
  let waits = $state.raw<'' | 'long' | 'in vain'>('');
  const now = $derived(reckoner.atOnce(task()));

  $effect(() => {
    waits = '';
    if (now !== undefined) return void (last = now);
    let dropped = false;
    const patience = setTimeout(() => (waits = 'long'), PATIENCE_MS);
    const settle = (how: typeof waits, answer = last): void => {
      clearTimeout(patience);
      if (!dropped) [last, waits] = [answer, how];
    };
    reckoner.later(task()).then(
      (answer) => settle('', answer),
      () => settle('in vain'),
    );
    return () => {
      dropped = true;
      clearTimeout(patience);
    };
  });

  return {
    get answer(): AnswerTo<Q> | undefined {
      return now ?? last;
    },
    /** Whether the answer is being waited for, or did not come. */
    get waits() {
      return now === undefined ? waits : '';
    },
  };
}

/** A reckoner that ends with its island. */
export function reckonerHere(): Reckoner {
  const reckoner = createReckoner();
  $effect(() => () => reckoner.end());
  return reckoner;
}
