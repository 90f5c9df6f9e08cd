import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/**
 * Keeps the styles that a script asks for when it is loaded on demand. Astro takes a style sheet out of the browser's
 * files when some page has its rules already; another page that opens the same component later would ask for it in vain,
 * and the component would not open.
 */
export function keptStyles(): Plugin {
  const styles = new Map<string, string | Uint8Array>();
  return {
    name: 'kept-styles',
    applyToEnvironment: ({ name }) => name === 'client',
    generateBundle: {
      order: 'pre',
      handler(_options, bundle) {
        for (const file of Object.values(bundle))
          if (file.type === 'asset' && file.fileName.endsWith('.css')) styles.set(file.fileName, file.source);
      },
    },
    async writeBundle({ dir }, bundle) {
      const asked = Object.values(bundle).flatMap((file) => (file.type === 'chunk' ? [file.code] : []));
      for (const [name, source] of styles)
        if (dir && !bundle[name] && asked.some((code) => code.includes(name))) await writeFile(join(dir, name), source);
    },
  };
}
