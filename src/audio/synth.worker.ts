import { answerRequest, type Post, type SynthRequest } from './voices/answer.ts';

/** The part of a worker's global scope that is used here; the page's own types know only windows. */
interface Scope {
  onmessage: ((event: MessageEvent<SynthRequest>) => void) | null;
  postMessage: Post;
}

/** Renders drum sounds off the main thread: takes a `SynthRequest`, answers with `SynthAnswer`s. */
const scope = globalThis as unknown as Scope;
scope.onmessage = ({ data }) => answerRequest(data, (answer, transfer) => scope.postMessage(answer, transfer));
