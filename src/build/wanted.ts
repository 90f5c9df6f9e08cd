import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

declare global {
  namespace Astro {
    interface ClientDirectives {
      /**
       * Loads the island's script when someone reaches for it, or `now`, and repeats the press that came before it was
       * there.
       */
      'client:wanted'?: boolean | 'now';
    }
  }
}

/**
 * Adds `client:wanted`: an island costs a page no script until a pointer, a finger or the focus reaches it.
 *
 * @example
 * // <Player client:wanted {...props} />
 */
export function wanted(): AstroIntegration {
  return {
    name: 'barwright-wanted',
    hooks: {
      'astro:config:setup': ({ addClientDirective }) =>
        addClientDirective({
          name: 'wanted',
          entrypoint: fileURLToPath(new URL('./wanted-directive.ts', import.meta.url)),
        }),
    },
  };
}
