import { isObject, must, text as checkText, whole } from '../check.ts';
import type { Fault } from '../fault.ts';

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
