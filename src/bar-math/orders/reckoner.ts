import { TooLarge } from '../../core/index.ts';
import { AT_ONCE } from './problem.ts';
import { answerTo, type AnswerTo, type Question, type Task } from './tasks.ts';

/** Answers at once what is small, and beside the page what is not. */
export interface Reckoner {
  /** The answer, or undefined where it would hold up the page. */
  atOnce<Q extends Question>(task: Task<Q>): AnswerTo<Q> | undefined;
  /** The answer, counted in a worker. What was asked before and is not answered yet is dropped. */
  later<Q extends Question>(task: Task<Q>): Promise<AnswerTo<Q>>;
  /** Drops what is being counted. */
  end(): void;
}

/** A reckoner; its worker is loaded when it is first needed. */
export function createReckoner(): Reckoner {
  let worker: Worker | undefined;
  let busy = false;
  const end = (): void => {
    worker?.terminate();
    worker = undefined;
    busy = false;
  };
  return {
    atOnce(task) {
      try {
        return answerTo(task, AT_ONCE);
      } catch (error) {
        if (error instanceof TooLarge) return undefined;
        throw error;
      }
    },
    later<Q extends Question>(task: Task<Q>) {
      if (busy) end();
      worker ??= new Worker(new URL('./orders.worker.ts', import.meta.url), { type: 'module' });
      busy = true;
      return new Promise<AnswerTo<Q>>((resolve, reject) => {
        worker!.onmessage = ({ data }: MessageEvent<AnswerTo<Q>>) => {
          busy = false;
          resolve(data);
        };
        worker!.onerror = () => {
          end();
          reject(new Error('what counts beside the page did not load'));
        };
        worker!.postMessage(task);
      });
    },
    end,
  };
}
