import boundaries from 'eslint-plugin-boundaries';
import { FOLDERS } from './folders.js';

const isFile = ({ path }) => /\.\w+$/.test(path);
const entries = Object.entries(FOLDERS);

const elements = entries
  .filter(([, folder]) => !isFile(folder))
  .map(([type, { path }]) => ({ type, pattern: `${path}/**`, partialMatch: false }));

const files = entries
  .filter(([, folder]) => isFile(folder))
  .map(([category, { path }]) => ({ category, pattern: path, partialMatch: false }));

/** What one folder may import: its own files, its neighbors in the table, its packages. */
function policiesOf([type, folder]) {
  const from = isFile(folder) ? { file: { categories: type } } : { element: { type } };
  const packages = folder.packages ?? [];
  return [
    { from, allow: { to: { element: { types: { anyOf: [type, ...folder.may] } } } } },
    ...packages.map((source) => ({ from, allow: { dependency: { source } } })),
    ...(folder.node ? [{ from, allow: { to: { module: { origin: 'core' } } } }] : []),
  ];
}

/** A worker, a worklet and any other file named by `new URL('./x.ts', import.meta.url)` counts as an import. */
const URL_OF_MODULE =
  "NewExpression[callee.name='URL'][arguments.1.type='MemberExpression'] > Literal.arguments:first-child[value=/\\.\\w+$/]";

/** Import directions between the folders, over every kind of file that can import. */
export const folderRules = {
  files: ['**/*.{ts,js,mjs,svelte,astro,mdx}'],
  plugins: { boundaries },
  settings: {
    'boundaries/elements': elements,
    'boundaries/files': files,
    'boundaries/legacy-templates': false,
    'boundaries/root-path': new URL('../..', import.meta.url).pathname,
    'boundaries/dependency-nodes': ['import', 'dynamic-import', 'export'],
    'boundaries/additional-dependency-nodes': [{ selector: URL_OF_MODULE, kind: 'value', name: 'url' }],
    'import/resolver': { [new URL('resolver.js', import.meta.url).pathname]: {} },
  },
  rules: {
    'boundaries/no-unknown-files': 'error',
    'boundaries/dependencies': [
      'error',
      {
        default: 'disallow',
        checkAllOrigins: true,
        checkUnknownLocals: true,
        message:
          '{{from.element.types}} {{from.file.categories}} may not import {{dependency.source}}; tests/config/folders.js says what it may import',
        policies: entries.flatMap(policiesOf),
      },
    ],
  },
};
