import { createCalculator } from '../../../src/bar-math/calculator.ts';
import type { AnswerTo, Question, QuestionName } from '../../../src/bar-math/questions.ts';
import type { SumProps } from '../../../src/bar-math/types.ts';
import { MATH_LABELS } from '../../../src/words/bar-math.ts';

/** A wait shorter than this needs no words. */
const PATIENCE_MS = 300;

/** How it stands with an answer that the page cannot give at once. */
export type Progress = 'none' | 'counting' | 'failed' | 'stopped';

/**
 * The answer to a question that changes: at once where that is quick, else the last one until a worker has the next. To
 * be made while a component is set up; its worker ends with the component.
 */
export class Calculation<Q extends QuestionName> {
  readonly #calculator = createCalculator();
  #last = $state.raw<AnswerTo<Q>>();
  #progress = $state.raw<Progress>('none');
  #tries = $state.raw(0);
  readonly #question: () => Question<Q>;
  readonly #now = $derived.by(() => this.#calculator.onPage(this.#question()));

  constructor(question: () => Question<Q>) {
    this.#question = question;
    $effect(() => this.#follow());
    $effect(() => () => this.#calculator.stop());
  }

  get answer(): AnswerTo<Q> | undefined {
    return this.#now ?? this.#last;
  }

  /** Whether the answer is being waited for, did not come, or is no longer wanted. */
  get progress(): Progress {
    return this.#now === undefined ? this.#progress : 'none';
  }

  /** Gives up what is being worked out; a change of the question begins anew, as `again` does. */
  stop = (): void => {
    this.#calculator.stop();
    this.#progress = 'stopped';
  };

  again = (): void => {
    this.#tries += 1;
  };

  /** Keeps up with the question; gives the way to let go of it. */
  #follow(): (() => void) | undefined {
    void this.#tries;
    this.#progress = 'none';
    if (this.#now !== undefined) {
      this.#last = this.#now;
      return undefined;
    }
    let isDropped = false;
    const patience = setTimeout(() => (this.#progress = 'counting'), PATIENCE_MS);
    const settle = (progress: Progress, answer: AnswerTo<Q> | undefined): void => {
      clearTimeout(patience);
      if (isDropped) return;
      this.#progress = progress;
      if (answer !== undefined) this.#last = answer;
    };
    this.#calculator.inWorker(this.#question()).then(
      (answer) => settle('none', answer),
      () => settle('failed', undefined),
    );
    return () => {
      isDropped = true;
      clearTimeout(patience);
    };
  }
}

/** What is said in place of the answer while there is none; undefined where there is one. */
export const progressSays = (progress: Progress): string | undefined =>
  ({
    none: undefined,
    counting: MATH_LABELS.counting,
    failed: MATH_LABELS.countFailed,
    stopped: MATH_LABELS.countStopped,
  })[progress];

/** A worker takes plain data only. Spread by hand: Svelte's own copy would weigh on every player of the site. */
export const plainProps = ({ named }: SumProps): SumProps => ({ named: named.map((cell) => ({ ...cell })) });
