import {
  type Document,
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  type YAMLMap,
} from 'yaml';
import type { Position } from './content-fault.ts';
import { firstYamlFault, type YamlFault } from './yaml-fault.ts';

/** YAML as a value, with the places of its parts. */
export interface YamlText {
  value: unknown;
  /** Where the value at a path stands; where it is missing, where its parent does. */
  positionOf: (path: readonly PropertyKey[], atKey?: boolean) => Position;
  /** Where in the text the content of a string begins, if it stands there as it is, on one line. */
  textStart: (path: readonly PropertyKey[]) => Position | undefined;
  /** A line of the file, by its number in the file. */
  lineAt: (line: number) => string;
}

/** Reads YAML; `lineOffset` is the number of lines before it in its file. */
export function readYaml(text: string, lineOffset = 0): { ok: true; yaml: YamlText } | { ok: false; fault: YamlFault } {
  const lines = new LineCounter();
  const place = (offset: number): Position => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line) + lineOffset, column: Math.max(1, col) };
  };
  try {
    const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
    if (document.errors.length) {
      return { ok: false, fault: firstYamlFault(text, document.errors, lineOffset) };
    }
    return {
      ok: true,
      yaml: { ...yamlText(document, text, place), lineAt: (line) => text.split('\n')[line - 1 - lineOffset] ?? '' },
    };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return { ok: false, fault: { ...place(0), message: `this is not YAML: ${message}` } };
  }
}

function yamlText(
  document: Document.Parsed,
  text: string,
  place: (offset: number) => Position,
): Omit<YamlText, 'lineAt'> {
  const nodeAt = (path: readonly PropertyKey[]) => path.reduce<unknown>(childOf, document.contents);
  const startOf = (node: unknown) => (isNode(node) && node.range ? node.range[0] : undefined);
  const positionOf = (path: readonly PropertyKey[], atKey = false): Position => {
    const offset = atKey ? keyStart(nodeAt(path.slice(0, -1)), path.at(-1)) : startOf(nodeAt(path));
    if (offset !== undefined) return place(offset);
    return path.length ? positionOf(path.slice(0, -1)) : place(0);
  };
  const textStart = (path: readonly PropertyKey[]) => {
    const offset = stringStart(nodeAt(path), text);
    return offset === undefined ? undefined : place(offset);
  };
  return { value: document.toJS(), positionOf, textStart };
}

/** The part of a value under a key. A number that is a key has become a text by the time anybody asks for it. */
function childOf(node: unknown, key: PropertyKey): unknown {
  if (isMap(node)) return pairAt(node, key)?.value;
  return isSeq(node) ? node.items[Number(key)] : undefined;
}

const pairAt = (map: YAMLMap, key: PropertyKey) =>
  map.items.find((item) => isScalar(item.key) && String(item.key.value) === String(key));

function keyStart(map: unknown, key: PropertyKey | undefined): number | undefined {
  if (!isMap(map) || key === undefined) return undefined;
  return (pairAt(map, key)?.key as Node | undefined)?.range?.[0];
}

function stringStart(node: unknown, text: string): number | undefined {
  if (!isScalar(node) || typeof node.value !== 'string' || !node.range) return undefined;
  const [from] = node.range;
  return [from, from + 1].find((start) => text.startsWith(node.value as string, start));
}

const FENCED = /^---[ \t]*\r?\n([\s\S]*?)(?:\r?\n)?---[ \t]*(?:\r?\n|$)/;

/** The front matter of a text, with places counted from the top of the file; or what is wrong with it. */
export function readFrontmatter(text: string): { ok: true; yaml: YamlText } | { ok: false; fault: YamlFault } {
  const block = FENCED.exec(text);
  if (block) return readYaml(block[1], 1);
  const hint = 'the file begins with ---, then fields like title: …, one on each line, then ---';
  return { ok: false, fault: { line: 1, column: 1, message: 'the front matter is missing', hint } };
}
