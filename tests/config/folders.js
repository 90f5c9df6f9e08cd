/**
 * The folders of the project and what each may import: the one table from which the linter's rules are made.
 *
 * `may` names other folders of this table (a folder may always import from itself); `packages` the npm packages and
 * virtual modules it may import (patterns); `node` whether it may use Node's own modules. Order matters: the first
 * pattern that fits a file is its folder.
 *
 * @typedef {{ path: string, may: string[], packages?: string[], node?: boolean }} Folder
 * @type {Record<string, Folder>}
 */
export const FOLDERS = {
  tests: { path: 'tests', may: ['*'], packages: ['**'], node: true },
  content: { path: 'content', may: [] },

  lesson: {
    path: 'components/lesson',
    may: ['catalogue', 'engraving', 'core', 'islands', 'scripts', 'controls', 'words', 'curriculum', 'styles'],
    packages: ['astro', 'astro/types', 'astro:assets'],
  },
  islands: {
    path: 'components/islands',
    may: ['controls', 'engraving', 'audio', 'formats', 'storage', 'search', 'bar-math', 'core', 'words'],
    packages: ['svelte', 'svelte/*'],
  },
  scripts: {
    path: 'components/scripts',
    may: ['bar-math', 'curriculum', 'formats', 'storage', 'words'],
  },
  // bar-math: a bar drawn as a ruler is laid out there, without a page.
  controls: { path: 'components/controls', may: ['bar-math', 'words'], packages: ['svelte', 'svelte/*'] },
  page: {
    path: 'components/page',
    may: ['islands', 'scripts', 'controls', 'bar-math', 'curriculum', 'search', 'words', 'styles'],
    packages: ['astro', 'astro/types'],
  },

  core: { path: 'src/core', may: [] },
  engraving: { path: 'src/engraving', may: ['core'], packages: ['vexflow', 'vexflow/*'] },
  audio: { path: 'src/audio', may: ['core'], packages: ['tone', 'tone/**'] },
  formats: { path: 'src/formats', may: ['core'], packages: ['uqr'] },
  'bar-math': { path: 'src/bar-math', may: ['core', 'words'] },
  storage: { path: 'src/storage', may: ['core'], packages: ['valibot'] },
  curriculum: { path: 'src/curriculum', may: ['core'], packages: ['astro/zod'] },
  words: { path: 'src/words', may: ['core'] },
  search: { path: 'src/search', may: ['core'] },
  catalogue: {
    path: 'src/catalogue',
    // build: a lesson's text has one reader, the checker's.
    may: ['curriculum', 'core', 'words', 'build'],
    packages: ['astro', 'astro:content'],
  },
  build: {
    path: 'src/build',
    may: ['curriculum', 'core', 'words', 'search'],
    packages: ['astro', 'astro/zod', 'yaml', 'unified', 'remark-*', 'serve-static', 'sharp', 'vite'],
    node: true,
  },
  layouts: {
    path: 'src/layouts',
    may: ['page', 'words', 'styles'],
    packages: ['astro', 'astro/types', 'astro:assets'],
  },
  styles: { path: 'src/styles', may: [] },
  pages: {
    path: 'src/pages',
    // search: the index of stickings is a page of the site, and its format has one owner.
    may: ['layouts', 'page', 'lesson', 'catalogue', 'curriculum', 'words', 'search'],
    packages: ['astro', 'astro/types'],
  },

  // The collections are declared where Astro looks for them; the schemas come from the curriculum.
  collections: {
    path: 'src/content.config.ts',
    may: ['curriculum'],
    packages: ['astro:content', 'astro/loaders', 'astro/zod'],
  },
  // Programs that run by hand or when the site is built, kept beside what they write.
  glyphTable: {
    path: 'src/engraving/glyphs/build-table.mjs',
    may: [],
    packages: ['fontkit', '@vexflow-fonts/**'],
    node: true,
  },
  indexWriter: { path: 'src/search/write-index.ts', may: ['core', 'search'], packages: ['pagefind'], node: true },
  env: { path: 'src/env.d.ts', may: [], packages: ['astro/client'] },
  config: { path: 'astro.config.mjs', may: ['build'], packages: ['astro', 'astro/*', '@astrojs/*'] },
};
