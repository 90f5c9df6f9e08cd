import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { checkContent } from '../../src/build/check-content.ts';
import type { ContentFault } from '../../src/build/content/content-fault.ts';

/** Files of a content folder by path; null takes a file away. */
export type Tree = Record<string, string | Uint8Array | null>;

export const LESSON = 'content/lessons/01-one/01-first/index.mdx';
export const EXERCISE = 'content/exercises/slow.yaml';

/** A lesson with its front matter; the text begins on line 15. */
export const lesson = (text: string, fields: Record<string, string> = {}): string => {
  const all = { ...FIELDS, ...fields };
  const lines = Object.entries(all).map(([name, value]) => `${name}: ${value}`);
  return ['---', ...lines, '---', '', text, ''].join('\n');
};

const FIELDS = {
  id: 'first',
  part: '1',
  order: '1',
  title: 'First',
  idea: 'One idea.',
  meter: '4/4',
  grid: '4',
  level: '1',
  tempo: '{ from: 50, to: 80 }',
  rudiments: '[flam-drag]',
  terms: '[cell]',
};

/** The line on which the text of `lesson` begins. */
export const TEXT_LINE = 15;

export const BAR = '<Bar sticking="R L R L R L R L R L R L R L R L" meter="4/4" grid={4} />';
export const QUESTION = '<Question ask="Which hand plays the a of 2?" from="hand-at" at="2 a">Count along.</Question>';

/** A content folder without a fault. */
export const GOOD: Tree = {
  'content/site.yaml': [
    'name: A course',
    'school: A school',
    'language: en',
    'contact: Ask us.',
    'counting: 1 e & a',
    'barWord: bar',
  ].join('\n'),
  'content/course.yaml': [
    'parts:',
    '  - number: 1',
    '    title: One',
    '    idea: The first part.',
    'lessons: [first]',
  ].join('\n'),
  'content/cells/flam-drag.yaml': 'name: flam drag\nsticking: ">lR LL R"\n',
  'content/cells/single.yaml': 'name: single\nsticking: R\n',
  [EXERCISE]: [
    'title: Slow',
    'purpose: To hear every stroke.',
    'cells: [flam-drag, flam-drag, flam-drag, flam-drag]',
    'meter: 4/4',
    'grid: 3',
    'leads: [right, left, alternating]',
    'tempo: { from: 40, to: 80 }',
    'enough: when it is even',
    'tags: [flams]',
    'rudiments: [flam-drag]',
  ].join('\n'),
  'content/rudiments/flam-drag.yaml': [
    'number: 30',
    'name: Flam Drag',
    'family: flam',
    'hands: lR L L R rL R R L',
    'sticking: ">lR LL R >rL RR L"',
    'meter: 4/4',
    'grid: 3',
    'repeat: 2',
    'rhythm: 8t 16t 16t 8t 8t 16t 16t 8t',
    'accents: [1, 5]',
    'beats: 2',
    'basis: recalled',
  ].join('\n'),
  'content/glossary/cell.yaml':
    'term: cell\nsays: A short sticking.\nsee: []\nbar: { sticking: "R L R L", meter: 4/4, grid: 1 }\n',
  'content/glossary/flam.yaml': 'term: flam\nsays: One thick note.\nsee: [cell]\n',
  'content/pages/hearing.md': '---\ntitle: Hearing\nidea: Two things wear out.\n---\n\nSee [the course](/course/).\n',
  [LESSON]: lesson(`Some text.\n\n${BAR}\n\n<Exercise id="slow" />\n\n${QUESTION}`),
};

/** Writes a tree into a folder of its own, hands it over, and takes it away again, at once or when a promise is done. */
export function planted<T>(tree: Tree, use: (root: string) => T): T {
  const root = mkdtempSync(join(tmpdir(), 'barwright-content-'));
  const away = () => rmSync(root, { recursive: true, force: true });
  let used: T | undefined;
  try {
    for (const [path, content] of Object.entries(tree)) if (content !== null) write(join(root, path), content);
    used = use(root);
    return used instanceof Promise ? (used.finally(away) as T) : used;
  } finally {
    if (!(used instanceof Promise)) away();
  }
}

function write(path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
}

/** The faults of the good tree with some files changed. */
export const faultsOf = (changes: Tree = {}): ContentFault[] => planted({ ...GOOD, ...changes }, checkContent);
