import { lehmer } from '../../helpers/lehmer.ts';

/** What came of an attack. */
export interface Outcome {
  tries: number;
  /** One line for each input that broke a rule: the input and what went wrong. */
  failures: string[];
}

/** Made-up input thrown at one door of the site, with the rules that must hold whatever it is. */
export interface Attack {
  name: string;
  /** How many inputs: in `npm test`, and with LONG=1. */
  tries: { short: number; long: number };
  run(random: () => number, tries: number): Outcome | Promise<Outcome>;
}

const SHOWN = 200;

/**
 * An attack that tries one input at a time. `one` makes an input, says through `about` what it is, and returns what is
 * wrong with the answer, or nothing; what it throws is wrong too.
 */
export function attackOf(
  name: string,
  tries: Attack['tries'],
  one: (random: () => number, about: (input: string) => void) => string | undefined,
): Attack {
  return {
    name,
    tries,
    run(random, count) {
      const failures: string[] = [];
      for (let n = 0; n < count; n += 1) {
        let input = '';
        const wrong = caught(() => one(random, (what) => (input = what)));
        if (wrong) failures.push(`${JSON.stringify(input.slice(0, SHOWN))}: ${wrong}`);
      }
      return { tries: count, failures };
    },
  };
}

function caught(run: () => string | undefined): string | undefined {
  try {
    return run();
  } catch (thrown) {
    return `threw ${thrown}`;
  }
}

/** Runs an attack; its draws depend on its name alone, so that one more attack changes no other. */
export async function launch(attack: Attack, long: boolean): Promise<Outcome> {
  return attack.run(lehmer(seedOf(attack.name)), long ? attack.tries.long : attack.tries.short);
}

/** A seed from 1 to 2147483646 for a name: FNV-1a (Fowler, Noll and Vo), folded into what the generator takes. */
function seedOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i += 1) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193) >>> 0;
  return 1 + (hash % 2147483646);
}

/** One of a list. */
export const pick = <T>(random: () => number, list: readonly T[]): T => list[Math.floor(random() * list.length)];

/** A whole number from one to the other, both included. */
export const between = (random: () => number, low: number, high: number): number =>
  low + Math.floor(random() * (high - low + 1));
