import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import { describe, expect, test } from 'vitest';
import { FOLDERS } from './folders.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const eslint = new ESLint({ cwd: ROOT, overrideConfigFile: `${ROOT}/tests/config/eslint.config.js` });

/** Lints a text as if it stood at that path, and gives `line rule` of each complaint. */
async function complaints(path: string, text: string): Promise<string[]> {
  const results = await eslint.lintText(text, { filePath: `${ROOT}/${path}` });
  return results.flatMap(({ messages }) => messages.map(({ line, ruleId }) => `${line} ${ruleId}`));
}

const FOLDER = 'boundaries/dependencies';
const SYNTAX = 'no-restricted-syntax';

/** Breaches planted one by one: where, what, and the complaint that proves that the linter looks there. */
const PLANTED: [name: string, path: string, text: string, complaint: string][] = [
  [
    'an import that goes against the direction, in .ts',
    'src/core/time/planted.ts',
    "import { listen } from '../../build/static-server.ts';\nexport const planted = listen;\n",
    `1 ${FOLDER}`,
  ],
  [
    'an export from a folder that may not be used',
    'src/core/planted.ts',
    "export { listen } from '../build/static-server.ts';\n",
    `1 ${FOLDER}`,
  ],
  [
    'a type taken from a folder that may not be used',
    'src/core/planted.ts',
    "import type { ServeOptions } from '../build/static-server.ts';\nexport type Planted = ServeOptions;\n",
    `1 ${FOLDER}`,
  ],
  [
    'an import in .svelte',
    'components/islands/Planted.svelte',
    '<script lang="ts">\n  import { listen } from \'../../src/build/static-server.ts\';\n</script>\n\n<p>{listen.name}</p>\n',
    `2 ${FOLDER}`,
  ],
  [
    'an import in the frontmatter of .astro',
    'components/page/Planted.astro',
    "---\nimport { listen } from '../../src/build/static-server.ts';\n---\n\n<p>{listen.name}</p>\n",
    `2 ${FOLDER}`,
  ],
  [
    'an import in a script element of .astro',
    'components/page/Planted.astro',
    "<p>Planted</p>\n<script>\n  import { listen } from '../../src/build/static-server.ts';\n  listen;\n</script>\n",
    `3 ${FOLDER}`,
  ],
  [
    'an import in .mdx',
    'content/lessons/01-planted/01-planted/index.mdx',
    "import { listen } from '../../../../src/build/static-server.ts'\n\n# Planted\n",
    `1 ${FOLDER}`,
  ],
  [
    'a dynamic import',
    'src/audio/planted.ts',
    "export const planted = () => import('../build/static-server.ts');\n",
    `1 ${FOLDER}`,
  ],
  [
    'a dynamic import whose path cannot be read',
    'src/audio/planted.ts',
    'export const planted = (name: string) => import(`../${name}.ts`);\n',
    `1 ${SYNTAX}`,
  ],
  [
    'a worker',
    'src/audio/planted.ts',
    "export const planted = new Worker(new URL('../build/static-server.ts', import.meta.url), { type: 'module' });\n",
    `1 ${FOLDER}`,
  ],
  [
    'a worklet',
    'src/audio/planted.ts',
    "export const planted = (context: AudioContext) =>\n  context.audioWorklet.addModule(new URL('../build/static-server.ts', import.meta.url));\n",
    `2 ${FOLDER}`,
  ],
  ['the sound used by the engraver', 'src/engraving/planted.ts', "import '../audio/index.ts';\n", `1 ${FOLDER}`],
  ['the engraver used by the sound', 'src/audio/planted.ts', "import '../engraving/index.ts';\n", `1 ${FOLDER}`],
  ['a library outside its folder', 'src/audio/planted.ts', "import 'vexflow/core';\n", `1 ${FOLDER}`],
  ['tone outside src/audio', 'components/islands/planted.ts', "import 'tone';\n", `1 ${FOLDER}`],
  ['pagefind outside src/search', 'src/words/planted.ts', "import 'pagefind';\n", `1 ${FOLDER}`],
  ['astro:content outside the catalogue', 'src/curriculum/planted.ts', "import 'astro:content';\n", `1 ${FOLDER}`],
  ['Node in code for the browser', 'src/storage/planted.ts', "import 'node:fs';\n", `1 ${FOLDER}`],
  ['a package in core', 'src/core/planted.ts', "import 'yaml';\n", `1 ${FOLDER}`],
  ['tests used by the site', 'src/core/planted.ts', "import '../../tests/helpers/built-site.ts';\n", `1 ${FOLDER}`],
  ['a file that belongs to no folder', 'planted/planted.ts', 'export {};\n', '1 boundaries/no-unknown-files'],
  ['what the browser keeps', 'components/islands/planted.ts', "localStorage.setItem('a', 'b');\n", `1 ${SYNTAX}`],
  ['chance in core', 'src/core/planted.ts', 'export const planted = Math.random();\n', '1 no-restricted-properties'],
  ['the clock in core', 'src/core/planted.ts', 'export const planted = Date.now();\n', '1 no-restricted-globals'],
  ['the page in core', 'src/core/planted.ts', 'export const planted = document.title;\n', '1 no-restricted-globals'],
  ['a default export', 'src/core/planted.ts', 'export default 1;\n', `1 ${SYNTAX}`],
  ['a style attribute in .astro', 'src/pages/planted.astro', '<p style="color: red">Planted</p>\n', `1 ${SYNTAX}`],
  [
    'a style attribute in .svelte',
    'components/controls/Planted.svelte',
    '<p style="color: red">P</p>\n',
    `1 ${SYNTAX}`,
  ],
  ['a style directive in .svelte', 'components/controls/Planted.svelte', '<p style:color="red">P</p>\n', `1 ${SYNTAX}`],
];

describe('the linter finds', () => {
  test.each(PLANTED)('%s', async (_name, path, text, complaint) => {
    expect(await complaints(path, text)).toContain(complaint);
  });
});

/** The same kinds of file, importing what they may. */
const SOUND: [name: string, path: string, text: string][] = [
  ['.ts', 'src/audio/planted.ts', "import type { Fault } from '../core/fault.ts';\nexport type Planted = Fault;\n"],
  ['a library in its folder', 'src/audio/planted.ts', "export const planted = () => import('tone');\n"],
  [
    '.svelte',
    'components/islands/Planted.svelte',
    '<script lang="ts">\n  import type { Fault } from \'../../src/core/fault.ts\';\n  const { fault }: { fault: Fault } = $props();\n</script>\n\n<p>{fault.message}</p>\n',
  ],
  [
    '.mdx',
    'content/lessons/01-planted/01-planted/index.mdx',
    '---\ntempo: { from: 45, to: 90 }\n---\n\n# Planted\n\n<Bar sticking="R L R L" />\n',
  ],
  [
    '.svelte.ts',
    'components/islands/planted.svelte.ts',
    "import type { Fault } from '../../src/core/fault.ts';\nexport type Planted = Fault;\n",
  ],
  [
    'a script element of .astro',
    'components/page/Planted.astro',
    "<p>Planted</p>\n<script>\n  import { LABELS } from '../../src/words/pages.ts';\n  document.title = String(LABELS);\n</script>\n",
  ],
];

describe('the linter lets pass', () => {
  test.each(SOUND)('%s', async (_name, path, text) => {
    expect(await complaints(path, text)).toEqual([]);
  });
});

test('every folder named as allowed exists in the table', () => {
  const named = Object.values(FOLDERS).flatMap(({ may }) => may);
  expect(named.filter((name) => name !== '*' && !(name in FOLDERS))).toEqual([]);
});
