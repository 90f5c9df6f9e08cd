import { spawnSync } from 'node:child_process';
import { EventEmitter } from 'node:events';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { checkContent } from '../../src/build/check-content.ts';
import { contentCheck, lessonForm } from '../../src/build/content-check.ts';
import { printFaults } from '../../src/build/content/content-fault.ts';
import { BAR, EXERCISE, GOOD, lesson, LESSON, planted, QUESTION, TEXT_LINE, type Tree } from './plant.ts';

const PROGRAM = fileURLToPath(new URL('../../src/build/check-content.ts', import.meta.url));
const BAD: Tree = { ...GOOD, [EXERCISE]: 'title: Slow\n', 'content/cells/extra.yaml': '' };

/** Runs the program on a tree. */
const run = (tree: Tree) => planted(tree, (root) => spawnSync(process.execPath, [PROGRAM, root], { encoding: 'utf8' }));

describe('the program', () => {
  test('lists all faults and ends with 1', () => {
    const { status, stderr } = run(BAD);
    expect(status).toBe(1);
    expect(stderr).toContain(`${EXERCISE}:1:1\n  "purpose" is missing`);
    expect(stderr.trim().split('\n').at(-1)).toMatch(/^\d+ faults in 2 files of the content\.$/);
    expect(stderr).not.toMatch(/\n\s+at /);
  });

  test('ends with 0 where there are none, and tells what is worth a look', () => {
    const { status, stdout } = run({ ...GOOD, [LESSON]: lesson(`${BAR}\n\n${QUESTION}`) });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Worth a look; nothing is refused for it:\n\ncontent\/exercises:1:1\n/);
    expect(stdout).toMatch(/\n\nThe content is sound\.\n$/);
  });
});

type Hooks = Record<string, (given: unknown) => void>;

/** The integration under a command of Astro's, with the project at `root`. */
function under(command: string, root: string): void {
  const hooks = contentCheck().hooks as Hooks;
  hooks['astro:config:setup']({ command });
  hooks['astro:config:done']({ config: { root: pathToFileURL(`${root}/`) } });
}

describe('a build', () => {
  const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  afterEach(() => said.mockClear());

  test('does not begin where there are faults', () => {
    planted(BAD, (root) =>
      expect(() => under('build', root)).toThrow(/faults in 2 files of the content.*Nothing was built/),
    );
    expect(said.mock.calls.join()).toContain('content/cells/extra.yaml:1:1');
  });

  test('begins where there are none', () => {
    planted(GOOD, (root) => under('build', root));
    expect(said).not.toHaveBeenCalled();
  });

  test('a preview reads no content', () => {
    planted(BAD, (root) => under('preview', root));
    expect(said).not.toHaveBeenCalled();
  });
});

/** As much of a dev server as the check talks to. */
function devServer(root: string) {
  const sent: { type: string; err?: { message: string } }[] = [];
  const ws = Object.assign(new EventEmitter(), { send: (message: { type: string }) => sent.push(message) });
  const logger = { error: vi.fn(), info: vi.fn() };
  const server = { config: { root, logger }, watcher: new EventEmitter(), ws };
  (contentCheck().hooks as Hooks)['astro:server:setup']({ server });
  return { sent, logger, server };
}

/** What becomes of a module on its way to the compiler; Vite asks for those alone whose name fits. */
function transform(root: string, id: string): unknown {
  const { filter, handler } = lessonForm(root).transform as { filter: { id: RegExp }; handler: TransformHandler };
  expect(id).toMatch(filter.id);
  return handler('export default 1;', id);
}

type TransformHandler = (code: string, id: string) => unknown;

/** A thread of its own starts first; on a machine that is busy otherwise that takes a while. */
const SOON = { timeout: 20_000 };

describe('the dev server', { timeout: 60_000 }, () => {
  test('lays the faults over the page, and looks again when a file changes', async () => {
    await planted(BAD, async (root) => {
      const { sent, logger, server } = devServer(root);
      await expect.poll(() => sent.map(({ type }) => type), SOON).toEqual(['error']);
      server.ws.emit('connection');
      expect(sent[1].err?.message).toContain('content/cells/extra.yaml:1:1');

      for (const path of [EXERCISE, 'content/cells/extra.yaml']) {
        writeFileSync(join(root, path), (GOOD[path] ?? 'name: x\nsticking: R\n') as string);
        server.watcher.emit('all', 'change', join(root, path));
      }
      await expect.poll(() => sent.at(-1)?.type, SOON).toBe('full-reload');
      expect(logger.info).toHaveBeenCalledWith('The content is sound again.');
    });
  });

  test('lays the faults over what Astro says of a page that fails', async () => {
    await planted(BAD, async (root) => {
      const { sent, server } = devServer(root);
      await expect.poll(() => sent.length, SOON).toBe(1);
      server.ws.emit('connection');
      await expect.poll(() => sent.length, SOON).toBe(3);
      expect(sent[2]).toEqual(sent[0]);
    });
  });

  test('refuses a lesson whose form has faults before it is compiled, in the words of the checker', () => {
    const open = lesson(`${BAR}\n\n<Caution about="wrists">\n\nRest.`);
    planted({ ...GOOD, [LESSON]: open }, (root) => {
      const refused = () => transform(root, `${join(root, LESSON)}?astroPropagatedAssets`);
      expect(refused).toThrow(printFaults(checkContent(root)));
      expect(refused).toThrow(
        expect.objectContaining({ stack: '', loc: { file: join(root, LESSON), line: TEXT_LINE + 2, column: 1 } }),
      );
    });
    planted(GOOD, (root) => expect(transform(root, join(root, LESSON))).toBeUndefined());
  });

  test('is where lessons are refused one by one; a build has refused them all before', () => {
    const updateConfig = vi.fn();
    const setup = (contentCheck().hooks as Hooks)['astro:config:setup'];
    for (const command of ['build', 'dev']) setup({ command, updateConfig, config: { root: pathToFileURL('/site/') } });
    const [[{ vite }]] = updateConfig.mock.calls as [[{ vite: { plugins: { name: string }[] } }]];
    expect(vite.plugins.map(({ name }) => name)).toEqual(['lesson-form']);
    expect(updateConfig).toHaveBeenCalledOnce();
  });

  test('goes on answering while it looks', async () => {
    await planted(BAD, async (root) => {
      const { sent } = devServer(root);
      // A check of its own thread says nothing before this one comes to rest.
      expect(sent).toEqual([]);
      await expect.poll(() => sent.length, SOON).toBe(1);
    });
  });

  test('leaves other files alone', () => {
    planted(GOOD, (root) => {
      const { server } = devServer(root);
      vi.useFakeTimers();
      server.watcher.emit('all', 'change', join(root, 'src/x.ts'));
      expect(vi.getTimerCount()).toBe(0);
      server.watcher.emit('all', 'change', join(root, EXERCISE));
      expect(vi.getTimerCount()).toBe(1);
      vi.useRealTimers();
    });
  });
});
