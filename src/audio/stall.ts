import type { Milliseconds } from '../core/index.ts';

/** How often it is looked whether something moves. */
const LOOK_MS: Milliseconds = 500;
/**
 * After so many looks without a change, 5 s, somebody is told. Looks are counted, not time: a page that stood still
 * itself has looked at nothing meanwhile.
 */
const LOOKS = 10;

/**
 * Watches a mark that changes as long as things move on: tells once when it has stood still for 5 s, and once when it
 * moves again. Gives back what ends the watch.
 *
 * @example
 * const end = watchStall(() => context.currentTime, (stalled) => console.log(stalled ? 'silent' : 'playing'));
 */
export function watchStall(mark: () => unknown, tell: (stalled: boolean) => void): () => void {
  let last = mark();
  let looks = 0;
  const look = (): void => {
    const now = mark();
    const was = looks;
    looks = Object.is(now, last) ? looks + 1 : 0;
    last = now;
    if (looks === LOOKS) tell(true);
    if (was >= LOOKS && looks === 0) tell(false);
  };
  const timer = setInterval(look, LOOK_MS);
  return () => clearInterval(timer);
}
