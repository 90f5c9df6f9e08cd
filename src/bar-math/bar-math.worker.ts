import { answerTo, type Question } from './questions.ts';

/** The part of a worker's global scope that is used here; the page's own types know only windows. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<Question>) => void) | null;
  postMessage(answer: unknown): void;
}

/** Answers beside the page what would hold it up: takes a `Question`, posts its answer. */
const scope = globalThis as unknown as WorkerScope;
scope.onmessage = ({ data }) => scope.postMessage(answerTo(data));
