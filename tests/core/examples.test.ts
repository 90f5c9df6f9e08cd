import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as core from '../../src/core/index.ts';

/** What the examples may name: a flam drag, four of them in a bar of triplets, and how that is performed. */
function fixtures(): Record<string, unknown> {
  const read = core.readPhrase({ cells: [{ id: 'flam-drag', text: '{>lR LL R}4' }], meter: '4/4', grid: 3 });
  const parsed = core.parseSticking('>lR LL R');
  if (!read.ok || !parsed.ok) throw new Error('the fixtures do not add up');
  return { sticking: parsed.sticking, phrase: read.phrase, timeline: core.perform(read.phrase) };
}

const ROOT = new URL('../../', import.meta.url).pathname;
const files = globSync('src/**/*.ts', { cwd: ROOT });

interface Example {
  file: string;
  code: string;
  value: string;
}

/** Lines `expression // value` or `expression // → value` in a comment, after `@example` or below it. */
const LINE = /^[ \t]*(?:\/\*)?\*+ (?:@example )?(?!@|\/\/)(\S.*?);? \/\/ (?:→ )?(.*?)(?: \*\/)?$/gm;

function examplesIn(file: string): Example[] {
  const comments = readFileSync(join(ROOT, file), 'utf8').match(/\/\*\*[^]*?\*\//g) ?? [];
  return comments
    .filter((comment) => comment.includes('@example'))
    .flatMap((comment) => [...comment.slice(comment.indexOf('@example') - 3).matchAll(LINE)])
    .map(([, code, value]) => ({ file, code, value }));
}

const examples = files.flatMap(examplesIn);

/** What a file exports, what core does, and the fixtures. */
async function evaluate(file: string, code: string): Promise<unknown> {
  // Which file it is, is the question.
  // eslint-disable-next-line no-restricted-syntax
  const own = await import(/* @vite-ignore */ join(ROOT, file));
  const scope: Record<string, unknown> = { ...core, ...own, ...fixtures() };
  return new Function(...Object.keys(scope), `return (${code});`)(...Object.values(scope));
}

describe('examples in the documentation', () => {
  it('are there, in core and outside', () => {
    const [inside, outside] = [true, false].map((is) => examples.filter((e) => e.file.startsWith('src/core') === is));
    expect(inside.length).toBeGreaterThan(80);
    expect(outside.length).toBeGreaterThan(80);
  });

  it.each(examples)('$file: $code', async ({ file, code, value }) => {
    const found = await evaluate(file, code);
    const wanted = await evaluate(file, value);
    if (typeof wanted === 'object' && wanted !== null) expect(found).toMatchObject(wanted as object);
    else expect(found).toBe(wanted);
  });
});
