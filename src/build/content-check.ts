import { sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { AstroIntegration } from 'astro';
import type { ViteDevServer } from 'vite';
import { checkContent } from './check-content.ts';
import { countFaults, printFaults, type ContentFault } from './content/content-fault.ts';

/**
 * An integration that reads all content before anything is built. A build with a fault in its content ends here, with
 * every fault listed; the dev server lists them, lays them over the page, and looks again whenever a file changes.
 */
export function contentCheck(): AstroIntegration {
  let command = '';
  return {
    name: 'content-check',
    hooks: {
      'astro:config:setup': (setup) => {
        command = setup.command;
      },
      'astro:config:done': ({ config }) => {
        if (command === 'build' || command === 'sync') refuseFaults(checkContent(fileURLToPath(config.root)));
      },
      'astro:server:setup': ({ server }) => watchContent(server),
    },
  };
}

/** Ends the build where there are faults; the list is for people, so no stack goes with it. */
function refuseFaults(faults: readonly ContentFault[]): void {
  if (faults.length === 0) return;
  console.error(`\n${printFaults(faults)}\n`);
  const error = new Error(`${countFaults(faults)} of the content; they are listed above. Nothing was built.`);
  error.stack = error.message;
  throw error;
}

/** How long the dev server waits after a change for more of them. */
const SETTLE_MS = 150;

function watchContent(server: ViteDevServer): void {
  const root = server.config.root;
  const folder = `${root.replace(/[\\/]$/, '')}${sep}content${sep}`;
  const worker = new Worker(new URL('./check-worker.ts', import.meta.url), { workerData: root });
  worker.unref();
  let faults: ContentFault[] = [];
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const look = () => worker.postMessage('look');
  worker.on('message', (now: ContentFault[]) => {
    tell(server, faults, now);
    faults = now;
  });
  worker.on('error', (error) => server.config.logger.error(`The content could not be checked: ${error.message}`));
  server.watcher.on('all', (_event, path) => {
    if (!path.startsWith(folder)) return;
    clearTimeout(waiting);
    waiting = setTimeout(look, SETTLE_MS);
  });
  // A page that is opened while there are faults shows them too.
  server.ws.on('connection', () => {
    if (faults.length) overlay(server, faults);
  });
  look();
}

function tell(server: ViteDevServer, before: readonly ContentFault[], now: readonly ContentFault[]): void {
  if (now.length === 0 && before.length === 0) return;
  if (now.length === 0) {
    server.config.logger.info('The content is sound again.');
    server.ws.send({ type: 'full-reload' });
    return;
  }
  server.config.logger.error(`\n${printFaults(now)}\n`);
  overlay(server, now);
}

function overlay(server: ViteDevServer, faults: readonly ContentFault[]): void {
  server.ws.send({ type: 'error', err: { message: printFaults(faults), stack: '' } });
}
