import { isObject, must, text as checkText, whole } from './check.ts';

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

/**
 * A fault as it is shown to the person who wrote the text: the message, the line it stands in and a caret under the place.
 * @example
 * faultText('R rR', parseSticking('R rR').fault).split('\n').slice(1) // → ['  R rR', '    ^']
 */
export function faultText(text: string, fault: Fault): string {
  checkText('text', text);
  must(isObject(fault), 'fault', fault, 'a fault, as parseSticking gives it');
  whole('place of the fault', fault.at, 0);
  checkText('message', fault.message);
  const before = text.slice(0, fault.at);
  const from = Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1;
  const line = text.slice(from).split(/\r\n|\r|\n/)[0];
  const width = [...text.slice(from, fault.at)].length;
  return `${fault.message}\n  ${line.replaceAll('\t', ' ')}\n  ${' '.repeat(width)}^`;
}
