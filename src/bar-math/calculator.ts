import { TooLarge } from '../core/index.ts';
import { ON_PAGE } from './limits.ts';
import { answerTo, type AnswerTo, type Question, type QuestionName } from './questions.ts';

/** Answers on the page what is small, and beside it what is not. */
export interface Calculator {
  /** The answer, or undefined where it would hold up the page. */
  onPage<Q extends QuestionName>(question: Question<Q>): AnswerTo<Q> | undefined;
  /** The answer, worked out in a worker. A question before it that is not answered yet is dropped. */
  inWorker<Q extends QuestionName>(question: Question<Q>): Promise<AnswerTo<Q>>;
  /** Drops what is being worked out. */
  stop(): void;
}

/** A calculator; its worker is loaded when it is first needed. */
export function createCalculator(): Calculator {
  let worker: Worker | undefined;
  let isBusy = false;
  const stop = (): void => {
    worker?.terminate();
    worker = undefined;
    isBusy = false;
  };
  return {
    onPage(question) {
      try {
        return answerTo(question, ON_PAGE);
      } catch (error) {
        if (error instanceof TooLarge) return undefined;
        throw error;
      }
    },
    inWorker<Q extends QuestionName>(question: Question<Q>) {
      if (isBusy) stop();
      worker ??= new Worker(new URL('./bar-math.worker.ts', import.meta.url), { type: 'module' });
      isBusy = true;
      return new Promise<AnswerTo<Q>>((resolve, reject) => {
        worker!.onmessage = ({ data }: MessageEvent<AnswerTo<Q>>) => {
          isBusy = false;
          resolve(data);
        };
        worker!.onerror = () => {
          stop();
          reject(new Error('the worker of the calculators did not load'));
        };
        worker!.postMessage(question);
      });
    },
    stop,
  };
}
