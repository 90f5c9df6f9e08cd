import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { AstroIntegration } from 'astro';
import type { Plugin, ViteDevServer } from 'vite';
import { checkContent } from './check-content.ts';
import { countFaults, printFaults, type ContentFault } from './content/content-fault.ts';
import { readLesson } from './content/text-files.ts';
import { readText } from './content/files.ts';

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
        if (command === 'dev')
          setup.updateConfig({ vite: { plugins: [lessonForm(fileURLToPath(setup.config.root))] } });
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

const LESSON = /[\\/]content[\\/]lessons[\\/][^?]*\.mdx(\?|$)/;

/**
 * Refuses a lesson whose form has faults, in the checker's words and before the MDX compiler sees it: the compiler would
 * end at the first one, with a stack and without a hint.
 *
 * @example lessonForm('/site').name // 'lesson-form'
 */
export function lessonForm(root: string): Plugin {
  return {
    name: 'lesson-form',
    enforce: 'pre',
    transform: {
      filter: { id: LESSON },
      handler(_code, id) {
        const [path] = id.split('?');
        const file = relative(root, path).split(sep).join('/');
        // The file itself: under some addresses a module stands for the lesson.
        const read = readText(file, path);
        const faults = 'fault' in read ? [read.fault] : readLesson(file, read.text).faults;
        if (faults.length) throw formError(path, faults);
      },
    },
  };
}

/** An error as Vite and Astro show it: the place beside the message, and no stack, which leads into the compiler. */
function formError(file: string, faults: readonly ContentFault[]): Error {
  const [{ line, column }] = faults;
  const error = new Error(printFaults(faults));
  error.name = 'ContentFault';
  error.stack = '';
  return Object.assign(error, { id: file, loc: { file, line, column } });
}

/** How long the dev server waits after a change for more of them. */
const SETTLE_MS = 150;
/** Astro lays its own message over a page that fails 200 ms after it has answered. */
const AFTER_ASTRO_MS = 500;

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
  // A page that is opened while there are faults shows them too, and again over what Astro says of a page that fails.
  server.ws.on('connection', () => {
    overlay(server, faults);
    setTimeout(() => overlay(server, faults), AFTER_ASTRO_MS).unref();
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
  if (faults.length) server.ws.send({ type: 'error', err: { message: printFaults(faults), stack: '' } });
}
