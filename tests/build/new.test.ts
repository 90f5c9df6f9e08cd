import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { checkContent, lookAtContent } from '../../src/build/check-content.ts';
import { create } from '../../src/build/new.ts';
import { HELP } from '../../src/build/new/command.ts';
import { idOf } from '../../src/build/new/lesson-place.ts';
import { listFiles } from '../../src/build/content/files.ts';
import { printFaults } from '../../src/build/content/content-fault.ts';
import { GOOD, planted, type Tree } from '../content/plant.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const PROGRAM = join(ROOT, 'src/build/new.ts');

/** What several runs in one good tree say, and what the checker says afterward. */
const runs = (commands: string[][], changes: Tree = {}) =>
  planted({ ...GOOD, ...changes }, (root) => {
    const said = commands.map((args) => create(args, root));
    const read = (path: string) => readFileSync(join(root, path), 'utf8');
    return { said, faults: checkContent(root), files: said.map(({ text }) => fileIn(text)).map((f) => f && read(f)) };
  });

const fileIn = (text: string) => /^Made (\S+)$/m.exec(text)?.[1];
const frontOf = (text: string | undefined) => parse((text ?? '').split('---\n')[1]);

test('a new lesson stands behind the others of its part, and is sound as it is', () => {
  const { said, faults, files } = runs([['lesson', 'Our warm-up: "fast"', '--part', '1']]);
  expect(said[0]).toMatchObject({ ok: true });
  expect(said[0].text).toContain('Made content/lessons/01-one/02-our-warm-up-fast/index.mdx');
  expect(said[0].text).toContain('It stands at /lessons/our-warm-up-fast/, in part 1, One.');
  expect(frontOf(files[0])).toMatchObject({ id: 'our-warm-up-fast', part: 1, order: 2, title: 'Our warm-up: "fast"' });
  expect(faults, printFaults(faults)).toEqual([]);
});

test('the next one stands behind it, and one may be put between ours', () => {
  const { said, faults, files } = runs([
    ['lesson', 'Third', '--part', '1'],
    ['lesson', 'Fourth', '--part', '1'],
    ['lesson', 'Between', '--part', '1', '--order', '1', '--id', 'ours-between'],
  ]);
  expect(said.map(({ ok }) => ok)).toEqual([true, true, true]);
  expect(files.map((text) => frontOf(text).order)).toEqual([2, 3, 1]);
  expect(faults).toEqual([]);
});

test('a part of the school’s own gets a folder of its own', () => {
  const site = `${GOOD['content/site.yaml'] as string}\nparts: [{ number: 20, title: Our Ensemble, idea: Ours. }]\n`;
  const { said, faults } = runs([['lesson', 'Together', '--part', '20']], { 'content/site.yaml': site });
  expect(said[0].text).toContain('Made content/lessons/20-our-ensemble/01-together/index.mdx');
  expect(faults).toEqual([]);
});

test('exercises, cells and terms are sound as they are, however many', () => {
  const ids = Array.from({ length: 20 }, (_, index) => `ours-${index + 1}`);
  const { said, faults, files } = runs([
    ...ids.map((id) => ['exercise', id]),
    ['exercise', 'named', '--title', 'Named: so'],
    ['cell', 'our-cell', '--name', 'gallop'],
    ['term', 'our-term'],
  ]);
  expect(said.filter(({ ok }) => !ok)).toEqual([]);
  expect(parse(files[20]!)).toMatchObject({ title: 'Named: so' });
  expect(parse(files[21]!)).toEqual({ name: 'gallop', sticking: 'R L L' });
  expect(parse(files[22]!)).toMatchObject({ term: 'our term' });
  expect(faults, printFaults(faults)).toEqual([]);
});

const TITLES = ['Ours', 'Ours: fast', 'It\'s: "so"', "Don't: stop", '"So" it goes', '# 1', '7', 'Fast, slow & both'];

test('what is made is written as Prettier writes it, and the checker only asks for texts in place of the template’s', async () => {
  const commands = TITLES.flatMap((title, index) => [
    ['lesson', title, '--part', '1', '--id', `ours-${index}`],
    ['exercise', `our-${index}`, '--title', title],
    ['cell', `our-${index}`, '--name', title],
    ['term', `our-${index}`],
  ]);
  const config = await resolveConfig(PROGRAM, { config: join(ROOT, 'tests/config/prettier.config.js') });
  await planted(GOOD, async (root) => {
    for (const args of commands) {
      const { ok, text } = create(args, root);
      expect(ok, text).toBe(true);
      const path = join(root, fileIn(text)!);
      const made = readFileSync(path, 'utf8');
      expect(await format(made, { ...config, filepath: path }), args.join(' ')).toBe(made);
    }
    const { faults, warnings } = lookAtContent(root);
    expect(faults, printFaults(faults)).toEqual([]);
    expect(new Set(warnings.map(({ message }) => message))).toEqual(
      new Set(['this is still the text of the template']),
    );
  });
});

const REFUSED: [what: string, args: string[], says: RegExp][] = [
  ['nothing to make', [], /npm run new -- lesson/],
  ['a kind that there is not', ['exrcise', 'x'], /"exrcise" cannot be made. Did you mean "exercise"\?/],
  ['a lesson without a title', ['lesson', '--part', '1'], /needs its title, in quotes/],
  ['a title without quotes', ['lesson', 'Our', 'warm-up', '--part', '1'], /needs its title, in quotes/],
  ['a lesson without a part', ['lesson', 'Ours'], /Which part\?.*\n {2}1 {2}One/],
  ['a part that there is not', ['lesson', 'Ours', '--part', '7'], /no part "7": there are: 1/],
  ['a part of its own that is not set', ['lesson', 'Ours', '--part', '20'], /parts: \[\{ number: 20,/],
  ['a part that is no number', ['lesson', 'Ours', '--part', 'one'], /no part "one"/],
  ['an option that there is not', ['lesson', 'Ours', '--prat', '1'], /takes no --prat. Did you mean "part"\?/],
  ['an option without its value', ['lesson', 'Ours', '--part'], /--part needs a value/],
  ['a lesson that is there', ['lesson', 'First', '--part', '1'], /a lesson "first" already: content\/lessons\/01-one/],
  ['a title that makes no address', ['lesson', '!!', '--part', '1'], /--id our-lesson/],
  ['a title that is too long', ['lesson', 'x '.repeat(60), '--part', '1'], /title takes .*at most 80/],
  ['an id that is no address', ['lesson', 'Ours', '--part', '1', '--id', 'Our One'], /Perhaps our-one\?/],
  ['an order that is no number', ['lesson', 'Ours', '--part', '1', '--order', 'last'], /whole number from 1 to 99/],
  ['an exercise that is there', ['exercise', 'slow'], /an exercise "slow" already/],
  ['an exercise with a bad id', ['exercise', 'Our Four'], /cannot be an address.*Perhaps our-four\?/],
  ['a way out of the folder', ['exercise', '../../x'], /cannot be an address/],
  ['a term that is there under another id', ['term', 'Cell'], /cannot be an address/],
];

test.each(REFUSED)('refused: %s', (_, args, says) => {
  const { said, files, faults } = runs([args]);
  expect(said[0].ok).toBe(false);
  expect(said[0].text).toMatch(says);
  expect(files).toEqual([undefined]);
  expect(faults).toEqual([]);
});

test('two lessons at one place, and a part that is full, are refused', () => {
  const twice = runs([
    ['lesson', 'Third', '--part', '1', '--order', '5'],
    ['lesson', 'Fourth', '--part', '1', '--order', '5'],
  ]);
  expect(twice.said[1].text).toMatch(/05-third\/index.mdx is number 5 of part 1 already/);
  const full = runs([
    ['lesson', 'Third', '--part', '1', '--order', '99'],
    ['lesson', 'Fourth', '--part', '1'],
  ]);
  expect(full.said[1].text).toMatch(/from 1 to 99/);
});

test('ids are made of words', () => {
  expect(idOf('Our warm-up, no. 2!')).toBe('our-warm-up-no-2');
  expect(idOf('Übung à deux')).toBe('ubung-a-deux');
  expect(idOf('Don’t rush')).toBe('dont-rush');
});

test('the program works in the folder it is called in', () => {
  planted(GOOD, (root) => {
    const run = (cwd: string, ...args: string[]) =>
      spawnSync(process.execPath, [PROGRAM, ...args], { cwd, encoding: 'utf8' });
    expect(run(root, '--help')).toMatchObject({ status: 0, stdout: `${HELP}\n` });
    expect(run(root, 'exercise', 'ours')).toMatchObject({ status: 0, stderr: '' });
    expect(run(root, 'exercise', 'ours')).toMatchObject({ status: 1, stdout: '' });
    const elsewhere = run(join(root, 'content'), 'exercise', 'ours');
    expect(elsewhere).toMatchObject({ status: 1, stderr: 'There is no folder content here.\n' });
  });
});

test('among all the content there is, what is made is sound, and no file of ours is touched', () => {
  const root = mkdtempSync(join(tmpdir(), 'barwright-new-'));
  try {
    cpSync(join(ROOT, 'content'), join(root, 'content'), { recursive: true });
    const before = new Map(listFiles(root).map(({ file, path }) => [file, readFileSync(path)]));
    expect(create(['lesson', 'Ours', '--part', '6'], root).ok).toBe(true);
    expect(create(['exercise', 'ours'], root).ok).toBe(true);
    const changed = [...before].filter(([file, bytes]) => !bytes.equals(readFileSync(join(root, file))));
    expect(changed.map(([file]) => file)).toEqual([]);
    const faults = checkContent(root).filter(({ file }) => file.includes('ours'));
    expect(faults, printFaults(faults)).toEqual([]);
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
});
