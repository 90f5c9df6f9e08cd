import type { YamlFault } from './yaml-fault.ts';
import { readYaml, type YamlText } from './yaml-text.ts';

const FENCED = /^---[ \t]*\r?\n([\s\S]*?)(?:\r?\n)?---[ \t]*(?:\r?\n|$)/;

/** The front matter of a text, with places counted from the top of the file; or what is wrong with it. */
export function readFrontmatter(text: string): { ok: true; yaml: YamlText } | { ok: false; fault: YamlFault } {
  const block = FENCED.exec(text);
  if (block) return readYaml(block[1], 1);
  const hint = 'the file begins with ---, then fields like title: …, one on each line, then ---';
  return { ok: false, fault: { line: 1, column: 1, message: 'the front matter is missing', hint } };
}
