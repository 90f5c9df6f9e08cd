/** What is typed into one sum, kept in the address. */
import { addressSays } from '../../../src/words/bar-math.ts';
import { printSumAddress, readSumAddress } from '../../../src/bar-math/address.ts';
import { tooLongFaults } from '../../../src/bar-math/read.ts';
import type { Inputs } from '../../../src/bar-math/types.ts';

/** The fields of one sum. */
export type Sum = ReturnType<typeof createSum>;

/** A pause in typing: browsers refuse an address that changes with every letter. */
const PAUSE_MS = 250;

/** Opens a sum with what stands in its fields before anyone types; `wake` reads the address, and gives the way to end. */
export function createSum(name: string, defaults: Inputs) {
  let inputs = $state.raw<Inputs>({ ...defaults });
  let unknown = $state.raw<readonly string[]>([]);
  let waiting: ReturnType<typeof setTimeout> | undefined;

  /** Takes what the address asks of this sum; an address that asks nothing of it leaves it as it is. */
  function recall(): void {
    const asked = readSumAddress(location.hash);
    const given = Object.keys(asked.inputs);
    if (asked.name !== name || given.length === 0) return;
    const taken = given.filter((field) => Object.hasOwn(defaults, field));
    unknown = given.filter((field) => !taken.includes(field));
    inputs = { ...defaults, ...Object.fromEntries(taken.map((field) => [field, asked.inputs[field]])) };
  }

  function change(next: Inputs): void {
    inputs = { ...inputs, ...next };
    unknown = [];
    clearTimeout(waiting);
    waiting = setTimeout(write, PAUSE_MS);
  }

  /** The place in the page and in the history stay. What is too long to be read is too long for an address. */
  function write(): void {
    if (tooLongFaults(inputs)) return;
    history.replaceState(history.state, '', printSumAddress({ name, inputs: toWrite(inputs, defaults) }));
  }

  return {
    name,
    get inputs() {
      return inputs;
    },
    /** What in the address could not be taken. */
    get note() {
      return addressSays(unknown);
    },
    change,
    wake(): () => void {
      recall();
      addEventListener('hashchange', recall);
      return () => {
        clearTimeout(waiting);
        removeEventListener('hashchange', recall);
      };
    },
  };
}

/** Empty fields are left out where they begin empty. */
const toWrite = (inputs: Inputs, defaults: Inputs): Inputs =>
  Object.fromEntries(Object.entries(inputs).filter(([field, value]) => value !== '' || defaults[field] !== ''));
