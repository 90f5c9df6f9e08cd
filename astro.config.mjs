import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';

/** One such warning for every lesson, about a directive that the lesson's module is meant to have. */
function withoutDirectiveWarnings(level, log, handler) {
  if (log.code !== 'MODULE_LEVEL_DIRECTIVE') handler(level, log);
}

export default defineConfig({
  site: process.env.SITE_URL || 'https://example.org',
  base: process.env.SITE_BASE || '/',
  trailingSlash: 'always',
  outDir: 'dist',
  devToolbar: { enabled: false },
  // The default processor aborts without naming the file on some misnested HTML.
  markdown: { processor: unified() },
  security: { csp: true },
  vite: { build: { rolldownOptions: { onLog: withoutDirectiveWarnings } } },
  integrations: [mdx(), svelte(), sitemap()],
});
