import type { YAMLError } from 'yaml';
import type { Position } from './content-fault.ts';

/** What is wrong with YAML, and where. */
export interface YamlFault extends Position {
  message: string;
  hint?: string;
}

type Told = Omit<YamlFault, 'column'> & { column?: number };

/**
 * What a reader of YAML refuses, told to a teacher: the first error alone, for one slip makes several, also on lines that
 * are right. `lineOffset` is the number of lines before the text in its file.
 */
export function firstYamlFault(text: string, errors: readonly YAMLError[], lineOffset = 0): YamlFault {
  const lines = text.split(/\r?\n/);
  const [error] = [...errors].sort((a, b) => a.pos[0] - b.pos[0]);
  const fault = yamlFault(lines, error, positionIn(text, error.pos[0]));
  return { ...fault, line: fault.line + lineOffset };
}

function positionIn(text: string, offset: number): Position {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: before[before.length - 1].length + 1 };
}

function yamlFault(lines: readonly string[], { code, message }: YAMLError, at: Position): YamlFault {
  const told = TELLERS[code]?.(lines, at) ?? unread(lines, at, message);
  return { column: 1, ...told };
}

/** How the errors that teachers meet are told; the others go through in the reader's words. */
const TELLERS: Partial<Record<YAMLError['code'], (lines: readonly string[], at: Position) => Told | undefined>> = {
  BLOCK_AS_IMPLICIT_KEY: (lines, at) => tooFarIn(lines, at) ?? colonInText(lines, at),
  MULTILINE_IMPLICIT_KEY: (lines, at) => tooFarIn(lines, at) ?? noField(lines, at),
  BAD_INDENT: (lines, at) => unclosed(lines, at) ?? unevenly(lines, at),
  MISSING_CHAR: (lines, at) => openQuote(lines) ?? (lines[at.line - 1].includes(':') ? undefined : noField(lines, at)),
  TAB_AS_INDENT: (_, at) => ({ ...at, message: 'this line begins with a tab', hint: 'begin it with spaces' }),
  DUPLICATE_KEY: (lines, at) => ({
    ...at,
    message: `"${keyOf(lines[at.line - 1])}" stands here a second time`,
    hint: 'keep one of the two lines',
  }),
};

const unread = (lines: readonly string[], at: Position, message: string): Told => ({
  ...at,
  message: `this is not YAML: ${message}`,
  hint: quoteHint(lines[at.line - 1]),
});

const indentOf = (line: string) => line.length - line.trimStart().length;
const keyOf = (line: string) => line.trim().split(':')[0];

/** The next line is further in, though the line before it is complete. */
function tooFarIn(lines: readonly string[], { line }: Position): Told | undefined {
  const next = lines.findIndex((text, index) => index >= line && text.trim() !== '');
  if (next < 0 || indentOf(lines[next]) <= indentOf(lines[line - 1])) return undefined;
  return {
    line: next + 1,
    message: `this line begins further in than "${keyOf(lines[line - 1])}" above it, which is complete`,
    hint: `begin it where "${keyOf(lines[line - 1])}" begins`,
  };
}

const colonInText = (lines: readonly string[], at: Position): Told => ({
  ...at,
  message: 'a text with a colon and a space in it stands between quotes',
  hint: quoteHint(lines[at.line - 1]),
});

const noField = (lines: readonly string[], { line }: Position): Told => ({
  line,
  message: `"${lines[line - 1].trim()}" is no line of the form name: value`,
  hint: 'there is a colon and a space behind the name; a long text goes on one line, or further in than its name',
});

const unevenly = (_: readonly string[], { line }: Position): Told => ({
  line,
  message: 'this line begins at a place where none before it does',
  hint: 'lines that belong together begin at the same place',
});

/** A list or a group in brackets that has no end on its line. */
function unclosed(lines: readonly string[], { line }: Position): Told | undefined {
  const open = [line - 1, line].find((at) => /:\s*[[{][^\]}]*$/.test(lines[at - 1] ?? ''));
  if (!open) return undefined;
  const sign = lines[open - 1].includes('[') ? ['[', ']'] : ['{', '}'];
  return { line: open, message: `a ${sign[0]} is opened here and not closed`, hint: `end it with ${sign[1]}` };
}

/** A text that begins with a quote which its line does not close. */
function openQuote(lines: readonly string[]): Told | undefined {
  const found = lines.findIndex((line) => /:\s+(['"])(?!.*\1)/.test(line));
  if (found < 0) return undefined;
  const quote = /:\s+(['"])/.exec(lines[found])?.[1];
  return { line: found + 1, message: 'a quote is opened here and not closed', hint: `end the text with ${quote}` };
}

/** Sticking text begins with signs that mean something else to YAML. */
function quoteHint(line: string): string | undefined {
  // A list or a group of fields in quotes would be a text.
  const unquoted = /^\s*(-\s+)?([\w-]+:)\s+([^\s'"[{].*)$/.exec(line);
  return unquoted ? `put the text in quotes: ${unquoted[2]} "${unquoted[3].replaceAll('"', "'")}"` : undefined;
}
