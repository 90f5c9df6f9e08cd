/** What the linter refuses beside imports: each with the reason it gives. */

/** In all code of the site. The first one also holds in tests and build scripts. */
export const EVERYWHERE = [
  {
    selector: 'ImportExpression:not([source.type="Literal"])',
    message: 'Write the path of a dynamic import as a plain string, so that the rules for folders can read it.',
  },
  { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' },
  {
    selector: "CallExpression[callee.object.type='MetaProperty'][callee.property.name=/^glob/]",
    message: 'import.meta.glob hides imports from the rules for folders; write them out.',
  },
];

const OWNED = /^(localStorage|sessionStorage|indexedDB)$/.source;

/** Everywhere but in src/storage. */
export const STORAGE = [
  {
    selector: `Identifier[name=/${OWNED}/]`,
    message: 'Only src/storage touches what the browser keeps; ask it instead.',
  },
];

const NO_STYLE = 'The content policy refuses style attributes in HTML; use a class, or setProperty from script.';

/** In .astro and .svelte: whatever would become a style attribute of the page. */
export const STYLE_ATTRIBUTES = [
  { selector: "JSXAttribute[name.name='style']", message: NO_STYLE },
  { selector: "JSXAttribute[name.namespace.name='define']", message: NO_STYLE },
  { selector: "SvelteElement SvelteAttribute[key.name='style']", message: NO_STYLE },
  { selector: "SvelteElement SvelteShorthandAttribute[key.name='style']", message: NO_STYLE },
  { selector: 'SvelteStyleDirective', message: NO_STYLE },
];

const handedIn = (name) => ({ name, message: 'core is pure: chance, clock and the world are handed in.' });

/** Globals that core must not reach for. */
export const HANDED_IN = [
  ...['window', 'document', 'navigator', 'globalThis', 'self', 'location', 'history', 'fetch', 'process', 'console'],
  ...[
    'Date',
    'performance',
    'crypto',
    'setTimeout',
    'setInterval',
    'queueMicrotask',
    'requestAnimationFrame',
    'Buffer',
  ],
].map(handedIn);

/** Members of pure globals that are not pure. */
export const IMPURE_MEMBERS = [
  { object: 'Math', property: 'random', message: 'core is pure: take chance as an argument.' },
];
