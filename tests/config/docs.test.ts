import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const read = (file: string) => readFileSync(`${ROOT}/${file}`, 'utf8');
const { scripts, dependencies, devDependencies, optionalDependencies } = JSON.parse(read('package.json'));

/** npm's own commands that need no script of that name. */
const OWN_COMMANDS = ['ci', 'install', 'run'];
/** Made by a build, so not there in a fresh copy. */
const MADE = /^(dist|node_modules|\.cache|test-results)\b/;
const TOP = /^(content|components|src|tests|public|\.ci)\//;
const FILE = /^[\w.-]+\.(md|json|mjs|ts)$|^LICENSE$/;

const unique = (texts: string[]) => [...new Set(texts)].sort();

/** What stands as code in a text: between backticks, in fences and in indented blocks. */
function codeIn(text: string): string[] {
  const spans = [...text.matchAll(/`([^`\n]+)`/g)].map(([, code]) => code);
  const lines = text.split('\n').filter((line) => /^ {4,}\S/.test(line));
  const fences = [...text.matchAll(/^```\w*\n([\s\S]*?)^```/gm)].flatMap(([, code]) => code.split('\n'));
  return [...spans, ...lines, ...fences];
}

/** Every path of the repository that a text names. A part in angle brackets or with a star stands for many. */
function pathsIn(text: string): string[] {
  const words = codeIn(text).flatMap((code) => code.split(/[\s,()"'=]+/));
  const paths = words.filter((word) => TOP.test(word) || FILE.test(word)).map((word) => word.replace(/[:;.]+$/, ''));
  return unique(paths.filter((path) => !MADE.test(path) && !/[<>*…]/.test(path)));
}

/** Every npm script that a text names. */
function scriptsIn(text: string): string[] {
  const calls = codeIn(text).flatMap((code) => [...code.matchAll(/\bnpm (?:run )?([a-z][\w:-]*)/g)]);
  return unique(calls.map(([, name]) => name).filter((name) => !OWN_COMMANDS.includes(name)));
}

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (file) => {
  test.each(pathsIn(read(file)))('names %s, which exists', (path) => {
    expect(existsSync(`${ROOT}/${path}`)).toBe(true);
  });

  test.each(scriptsIn(read(file)))('names the command %s, which exists', (name) => {
    expect(scripts).toHaveProperty([name]);
  });
});

test('both texts name paths and commands', () => {
  expect(pathsIn(read('README.md')).length).toBeGreaterThan(15);
  expect(pathsIn(read('DEVELOPERS.md')).length).toBeGreaterThan(15);
  expect(scriptsIn(read('README.md'))).toEqual(
    expect.arrayContaining(['start', 'test', 'build', 'dev', 'check', 'fix']),
  );
});

test('every command is named in one of them', () => {
  const named = [...scriptsIn(read('README.md')), ...scriptsIn(read('DEVELOPERS.md'))];
  const commands = Object.keys(scripts).filter((name) => !name.startsWith('pre'));
  expect(commands.filter((name) => !named.includes(name))).toEqual([]);
});

test('every package has a line in DEVELOPERS.md', () => {
  const packages = Object.keys({ ...dependencies, ...devDependencies, ...optionalDependencies });
  const text = read('DEVELOPERS.md');
  expect(packages.filter((name) => !text.includes(`\`${name}\``))).toEqual([]);
});

test('DEVELOPERS.md names no package that is not used', () => {
  const section = read('DEVELOPERS.md')
    .split(/^## /m)
    .find((part) => part.startsWith('Packages'))!;
  const rows = [...section.matchAll(/^- (.+?): /gm)].flatMap(([, names]) => [...names.matchAll(/`([^`]+)`/g)]);
  const packages = Object.keys({ ...dependencies, ...devDependencies, ...optionalDependencies });
  expect(rows.map(([, name]) => name).filter((name) => !packages.includes(name))).toEqual([]);
});
