export default {
  singleQuote: true,
  printWidth: 120,
  trailingComma: 'all',
  plugins: ['prettier-plugin-astro', 'prettier-plugin-svelte'],
  overrides: [
    { files: '*.astro', options: { parser: 'astro' } },
    { files: '*.svelte', options: { parser: 'svelte' } },
  ],
};
