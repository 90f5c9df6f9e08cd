import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ContentFault } from './content-fault.ts';

/** A file under the content folder. */
export interface FoundFile {
  /** Relative to the root of the project: `content/cells/kick.yaml`. */
  file: string;
  /** Relative to the content folder, in steps. */
  steps: string[];
  path: string;
}

/** All files below a folder in order of their names; what begins with a dot is passed over. */
export function listFiles(root: string, steps: string[] = []): FoundFile[] {
  const entries = readdirSync(join(root, 'content', ...steps), { withFileTypes: true });
  return entries
    .filter(({ name }) => !name.startsWith('.'))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) =>
      entry.isDirectory() ? listFiles(root, [...steps, entry.name]) : [found(root, [...steps, entry.name])],
    );
}

const found = (root: string, steps: string[]): FoundFile => ({
  file: ['content', ...steps].join('/'),
  steps,
  path: join(root, 'content', ...steps),
});

/** The text of a file without its byte order mark, or why it is no text. */
export function readText(file: string, path: string): { text: string } | { fault: ContentFault } {
  const bytes = bytesOf(path);
  if (!bytes) return { fault: { file, line: 1, column: 1, message: 'the file cannot be opened' } };
  const bad = wrongBytes(bytes);
  if (bad) return { fault: { file, column: 1, ...bad } };
  const text = new TextDecoder('utf-8').decode(bytes);
  const wrong = wrongText(text);
  return wrong ? { fault: { file, column: 1, ...wrong } } : { text };
}

const SAVE = 'save it again as UTF-8 text';

/** Nothing where the file is a link that leads nowhere, or another's. */
function bytesOf(path: string): Buffer | undefined {
  try {
    return readFileSync(path);
  } catch {
    return undefined;
  }
}

interface Wrong {
  line: number;
  message: string;
  hint: string;
}

function wrongText(text: string): Wrong | undefined {
  if (text.trim() === '') return { line: 1, message: 'the file is empty', hint: 'write it or delete it' };
  const lone = text.search(/\r(?!\n)/);
  if (lone < 0) return undefined;
  return {
    line: text.slice(0, lone).split('\n').length,
    message: 'a line ends in an old way here (CR alone)',
    hint: SAVE,
  };
}

function wrongBytes(bytes: Buffer): Wrong | undefined {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return { line: 1, message: 'this is UTF-16 text', hint: SAVE };
  const zero = bytes.indexOf(0);
  if (zero >= 0)
    return { line: lineOf(bytes, zero), message: 'there is a zero byte here: this is no text', hint: SAVE };
  const at = firstBadByte(bytes);
  return at < 0
    ? undefined
    : { line: lineOf(bytes, at), message: 'there are bytes here that are not UTF-8 text', hint: SAVE };
}

const lineOf = (bytes: Buffer, at: number) => bytes.subarray(0, at).toString('latin1').split('\n').length;

/** Index of the first byte that is not UTF-8: where the text, written out again, differs from the file. */
function firstBadByte(bytes: Buffer): number {
  const again = Buffer.from(new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes));
  if (again.equals(bytes)) return -1;
  return bytes.findIndex((byte, index) => byte !== again[index]);
}
