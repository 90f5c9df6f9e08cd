import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import svelte from '@astrojs/svelte';
import { defineConfig, fontProviders } from 'astro/config';
import { contentCheck } from './src/build/content-check.ts';
import { countedRules } from './src/build/counted-rules.ts';
import { early } from './src/build/early.ts';
import { icons } from './src/build/icons.ts';
import { keptStyles } from './src/build/kept-styles.ts';
import { licenses } from './src/build/licenses.ts';
import { lessonTree } from './src/build/lesson-tree.ts';
import { listedPages } from './src/build/listed.ts';
import { pagePolicy } from './src/build/page-policy.ts';
import { readSchool, schoolConstants } from './src/build/school.ts';
import { searchIndex } from './src/build/search-index.ts';
import { wanted } from './src/build/wanted.ts';

/**
 * Warnings that say nothing here: every lesson's module is meant to have its directive, and the pages, written once at
 * build, need at once what a player in the browser asks for later.
 */
const BESIDE_THE_POINT = ['MODULE_LEVEL_DIRECTIVE', 'INEFFECTIVE_DYNAMIC_IMPORT'];

function withoutEmptyWarnings(level, log, handler) {
  if (!BESIDE_THE_POINT.includes(log.code)) handler(level, log);
}

/** Folders whose files do nothing when they are loaded: a page that needs one function of theirs loads no more. */
const PURE = { test: /\/src\/(bar-math|core|curriculum|storage|words)\//, sideEffects: false };
/** Svelte's own modules do nothing either; unless told so, the bundler loads every piece of it for the sake of order. */
const PURE_TOO = { test: /svelte.src.(internal.client|index-client|legacy)/, sideEffects: false };

/**
 * What of Svelte only some islands use: lists, fields bound to a value, elements of one's own. A player, which most pages
 * have, goes without.
 */
const SELDOM =
  /svelte.src.internal.client.(dom.(blocks.(each|html|key|await|svelte)|elements.(bindings.(?!this)|custom|style|trans|act|att\w+ments))|reactivity.store)/;
/** Its door leads everywhere: grouped, it would bring all the rest. */
const DOOR = /svelte.src.internal.client.index/;
/** What every island needs of Svelte. */
const BASE = /svelte.src.(internal|index-client)|@astrojs.svelte.dist.client/;

/**
 * Svelte in two pieces, so that what one island needs is not loaded for every other; and the controls in one, which in
 * many small files would weigh half a kilobyte more.
 */
const PIECES = [
  { name: 'svelte', priority: 2, test: (id) => BASE.test(id) && !SELDOM.test(id) && !DOOR.test(id) },
  { name: 'svelte-lists', priority: 1, test: SELDOM },
  { name: 'controls', test: /components.controls.(?!BarRuler)\w+\.svelte/ },
  { name: 'labels', priority: 1, test: /src.words.(grammar|site)\.ts/ },
  { name: 'storage', priority: 1, test: /src.storage.(shelf|lessons)\.ts/ },
  {
    name: 'settings',
    priority: 1,
    test: /src.storage.(fitting|players)\.ts|valibot|islands.(player.(settings\.svelte|props)|links.query)\.ts/,
  },
  {
    name: 'playing',
    test: /islands.player.playback\.svelte\.ts|words.player\.ts|src.audio.(player|output|stall|load-again)\.ts/,
  },
];

/** One face of a font, from its package: the Latin letters, every weight. */
function face(family, style) {
  return {
    src: [`@fontsource-variable/${family}/files/${family}-latin-wght-${style}.woff2`],
    weight: '200 900',
    style,
  };
}

/** A page keeps the face it was first drawn with, so that no line moves when the font arrives late. */
function font(name, cssVariable, family, styles, fallbacks) {
  const options = { variants: styles.map((style) => face(family, style)) };
  return { provider: fontProviders.local(), name, cssVariable, display: 'optional', fallbacks, options };
}

const fonts = [
  font('Literata', '--font-text', 'literata', ['normal', 'italic'], ['Georgia', 'serif']),
  font(
    'Atkinson Hyperlegible Next',
    '--font-label',
    'atkinson-hyperlegible-next',
    ['normal'],
    ['Verdana', 'sans-serif'],
  ),
];

/** What a page may load, and from where: this site, nothing else. Scripts and styles in the page are listed by hash. */
const csp = {
  directives: [
    "default-src 'self'",
    "base-uri 'none'",
    "object-src 'none'",
    "form-action 'self'",
    "img-src 'self' data:",
    // Tone starts a worker from a blob.
    "worker-src 'self' blob:",
  ],
  // Pagefind searches in WebAssembly.
  scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
};

const base = process.env.SITE_BASE || '/';
/** The host of the site. Without it no page calls itself by a whole address, and there is no map of the site. */
const address = process.env.SITE_URL || undefined;
const { barWord } = readSchool(new URL('./', import.meta.url));
const listed = listedPages();

export default defineConfig({
  site: address,
  base,
  trailingSlash: 'always',
  outDir: 'dist',
  devToolbar: { enabled: false },
  // The default processor aborts without naming the file on some misnested HTML.
  // Highlighted code would bring style attributes, and no lesson has code.
  markdown: {
    processor: unified({
      remarkPlugins: [[lessonTree, { base, barWord }]],
      remarkRehype: { footnoteLabel: 'Sources', footnoteLabelProperties: {}, footnoteBackLabel: 'Back to the text' },
    }),
    syntaxHighlight: false,
  },
  security: { csp },
  fonts,
  vite: {
    plugins: [keptStyles()],
    css: { postcss: { plugins: [countedRules()] } },
    build: {
      rolldownOptions: {
        onLog: withoutEmptyWarnings,
        treeshake: { moduleSideEffects: [PURE, PURE_TOO] },
        output: { codeSplitting: { groups: PIECES } },
      },
    },
  },
  integrations: [
    contentCheck(),
    schoolConstants(),
    mdx(),
    svelte(),
    early(),
    wanted(),
    pagePolicy(),
    licenses(),
    icons(),
    listed,
    ...(address ? [sitemap({ filter: listed.filter })] : []),
    searchIndex(),
  ],
});
