import type { Counter } from './walk.ts';
import { addTo, bigOf, registerOf, setOne, setSum, takeAway, valueOf, zeros, type Numbers } from './digits.ts';
import type { States } from './states.ts';

/** Counts by states: forward they were found, backward the ways from each are summed. */
export function countByStates(states: States): Counter {
  const ways = waysFrom(states);
  const { cells, next, slot } = states;
  const slots = states.layers.length - 1;
  // A sum is below the count, and the count is the widest number of all.
  const room = ways.width[0] + 1;
  return {
    start: 0,
    count: bigOf(ways, 0),
    next: (state, cell) => next[state * cells + cell] || -1,
    isOpen: (state) => ways.width[state] > 0,
    isFull: (state) => slot[state] === slots,
    remainder: (k) => {
      const left = registerOf(k, room);
      return (state) => takeAway(left, ways, state);
    },
    sum: () => {
      const sum = registerOf(0n, room);
      return { add: (state) => addTo(sum, ways, state), total: () => valueOf(sum) };
    },
  };
}

/** For each state, how many ways there are to complete the phrase. */
function waysFrom(states: States): Numbers {
  const { cells, next, layers } = states;
  const ways = zeros(states.size);
  const open = new Int32Array(cells);
  for (let slot = layers.length - 1; slot >= 0; slot -= 1)
    for (const state of layers[slot]) {
      if (slot === layers.length - 1) {
        if (states.ends(state)) setOne(ways, state);
        continue;
      }
      let count = 0;
      for (let at = state * cells; at < (state + 1) * cells; at += 1)
        if (next[at] > 0 && ways.width[next[at]] > 0) open[count++] = next[at];
      if (count > 0) setSum(ways, state, open, count);
    }
  return ways;
}
