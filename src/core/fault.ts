/**
 * The one contract for bad text: what an author or a player writes gives a result, never an exception.
 */

/** What is wrong with a text or a phrase, where, and what could stand there. */
export interface Fault {
  /** Index into the text in UTF-16 units, never past its end; for a phrase the slot, from 0. */
  at: number;
  /** What stands there. */
  found: string;
  /** What could stand there. */
  expected: string;
  /** One sentence for the person who wrote it. */
  message: string;
}

/** Either the thing asked for under the name `K`, or the fault. */
export type Result<K extends string, T> = ({ ok: true } & Record<K, T>) | { ok: false; fault: Fault };

/** A refusal. */
export function refuse(at: number, found: string, expected: string, message: string): { ok: false; fault: Fault } {
  return { ok: false, fault: { at, found, expected, message } };
}
