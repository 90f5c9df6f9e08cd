/** Something wrong in a content file, in words for whoever wrote it. */
export interface ContentFault {
  /** Relative to the root of the project, with forward slashes. */
  file: string;
  /** From 1. */
  line: number;
  /** From 1. */
  column: number;
  /** What is wrong; may hold the text and a caret line. */
  message: string;
  /** What could stand there, or what to do. */
  hint?: string;
}

/** A place in a file. */
export type Position = Pick<ContentFault, 'line' | 'column'>;

/** Sorts faults by file, then by line and column. */
export function sortFaults(faults: readonly ContentFault[]): ContentFault[] {
  return [...faults].sort(
    (a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0) || a.line - b.line || a.column - b.column,
  );
}

const indented = (text: string) =>
  text
    .split('\n')
    .map((line) => `  ${line}`)
    .join('\n');

function printFault({ file, line, column, message, hint }: ContentFault): string {
  return [`${file}:${line}:${column}`, indented(message), ...(hint ? [indented(hint)] : [])].join('\n');
}

const count = (number: number, one: string) => `${number} ${number === 1 ? one : `${one}s`}`;

/** How many faults in how many files: `3 faults in 2 files`. */
export function countFaults(faults: readonly ContentFault[]): string {
  return `${count(faults.length, 'fault')} in ${count(new Set(faults.map(({ file }) => file)).size, 'file')}`;
}

/** What is worth a look, one under the other, under a line that says so. */
export function printWarnings(warnings: readonly ContentFault[]): string {
  return ['Worth a look; nothing is refused for it:', ...warnings.map(printFault)].join('\n\n');
}

/** All faults, one under the other, and their number in the last line. */
export function printFaults(faults: readonly ContentFault[]): string {
  return [...faults.map(printFault), `${countFaults(faults)} of the content.`].join('\n\n');
}
