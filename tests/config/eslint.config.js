import js from '@eslint/js';
import { defineConfig, globalIgnores } from 'eslint/config';
import astro from 'eslint-plugin-astro';
import * as mdx from 'eslint-plugin-mdx';
import svelte from 'eslint-plugin-svelte';
import ts from 'typescript-eslint';
import { folderRules } from './boundaries.js';
import { EVERYWHERE, HANDED_IN, IMPURE_MEMBERS, STORAGE, STYLE_ATTRIBUTES } from './refused.js';

const refuse = (...syntax) => ({ 'no-restricted-syntax': ['error', ...syntax] });
/** The script elements of an .astro file reach the linter as files of their own below its name. */
const PAGES = ['**/*.{svelte,astro}', '**/*.astro/*'];

export default defineConfig(
  globalIgnores(['dist', '.astro', '.cache', 'node_modules', 'test-results']),
  js.configs.recommended,
  ts.configs.recommended,
  astro.configs.recommended,
  svelte.configs.recommended,
  mdx.flat,
  {
    files: ['**/*.mdx'],
    languageOptions: { parserOptions: { remarkConfigPath: new URL('remark.json', import.meta.url).pathname } },
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  { files: ['**/*.svelte', '**/*.svelte.ts'], languageOptions: { parserOptions: { parser: ts.parser } } },
  {
    // The TypeScript compiler knows which globals there are; the linter would have to be told.
    files: ['**/*.{ts,js,mjs,svelte,astro,mdx}', '**/*.astro/*'],
    rules: {
      'no-undef': 'off',
      '@typescript-eslint/no-unused-vars': 'off',
      'no-unused-vars': 'off',
      eqeqeq: 'error',
      'no-console': ['error', { allow: ['warn', 'error'] }],
      // Astro's and Svelte's own types are widened by declaring into their namespaces.
      '@typescript-eslint/no-namespace': ['error', { allowDeclarations: true }],
    },
  },
  // What a lesson writes are words that the checker reads; to JavaScript they are unused expressions.
  { files: ['**/*.mdx'], rules: { 'no-unused-expressions': 'off', '@typescript-eslint/no-unused-expressions': 'off' } },
  folderRules,
  {
    files: ['src/**', 'components/**', 'content/**'],
    rules: refuse(...EVERYWHERE, ...STORAGE),
  },
  { files: PAGES, rules: refuse(...EVERYWHERE, ...STORAGE, ...STYLE_ATTRIBUTES) },
  { files: ['src/storage/**'], rules: refuse(...EVERYWHERE) },
  {
    files: ['src/core/**'],
    rules: {
      'no-restricted-globals': ['error', ...HANDED_IN],
      'no-restricted-properties': ['error', ...IMPURE_MEMBERS],
    },
  },
  {
    // Programs that talk to a terminal. Astro wants its configuration and the collections as it wants them.
    files: ['src/build/**', 'tests/**', 'astro.config.mjs'],
    rules: { 'no-console': 'off', ...refuse(EVERYWHERE[0]) },
  },
);
