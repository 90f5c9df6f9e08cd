import { answerTo, type Task } from './tasks.ts';

/** The part of a worker's global scope that is used here; the page's own types know only windows. */
interface Scope {
  onmessage: ((event: MessageEvent<Task>) => void) | null;
  postMessage(answer: unknown): void;
}

/** Counts beside the page what would hold it up: takes a `Task`, posts its answer. */
const scope = globalThis as unknown as Scope;
scope.onmessage = ({ data }) => scope.postMessage(answerTo(data));
