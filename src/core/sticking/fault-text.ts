import type { Fault } from '../fault.ts';

/**
 * A fault as it is shown to the person who wrote the text: the message, the line it stands in and a caret under the place.
 * @example
 * faultText('R rR', parseSticking('R rR').fault).split('\n').slice(1) // → ['  R rR', '    ^']
 */
export function faultText(text: string, fault: Fault): string {
  const before = text.slice(0, fault.at);
  const from = Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1;
  const line = text.slice(from).split(/\r\n|\r|\n/)[0];
  const width = [...text.slice(from, fault.at)].length;
  return `${fault.message}\n  ${line.replaceAll('\t', ' ')}\n  ${' '.repeat(width)}^`;
}
