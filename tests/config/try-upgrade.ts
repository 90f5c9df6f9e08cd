/**
 * Tries what the README tells a school: to take a newer version into a copy with lessons and settings of its own, whether
 * the school has committed its changes or not. `node tests/config/try-upgrade.ts`
 */
import { execFileSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const ROOT = resolve('.');
const work = mkdtempSync(join(tmpdir(), 'upgrade-'));
const NOBODY = ['-c', 'user.name=Nobody', '-c', 'user.email=nobody@localhost', '-c', 'init.defaultBranch=main'];

const git = (folder: string, ...words: string[]) =>
  execFileSync('git', [...NOBODY, ...words], { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
const node = (folder: string, ...words: string[]) =>
  execFileSync(process.execPath, words, { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

/** Changes a text in a file; refuses where it is not there, so that the trial cannot come to try nothing. */
function change(folder: string, file: string, from: string | RegExp, to: string): void {
  const before = readFileSync(join(folder, file), 'utf8');
  const after = before.replace(from, to);
  if (after === before) throw new Error(`${file} has no ${from}`);
  writeFileSync(join(folder, file), after);
}

function commit(folder: string, message: string): void {
  git(folder, 'add', '--all');
  git(folder, 'commit', '--quiet', '--message', message);
}

/** Packages are not copied; a link to them is no part of the repository. */
function lendPackages(folder: string): void {
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  appendFileSync(join(folder, '.git/info/exclude'), 'node_modules\n');
}

/** The line with which the README takes a newer version, as its words after `git`. */
function pullOfReadme(): string[] {
  const line = /^ {4}git (pull .*)$/m.exec(readFileSync(join(ROOT, 'README.md'), 'utf8'))?.[1];
  if (!line) throw new Error('README.md names no git pull');
  return line.split(' ');
}

/** What a school does to its copy: settings, a part, a page, two lessons and an exercise of its own. */
function becomeSchool(folder: string): void {
  const lesson = ['src/build/new.ts', 'lesson'];
  change(folder, 'content/site.yaml', /^name: .*$/m, 'name: Our drums');
  change(folder, 'content/site.yaml', /^school: .*$/m, 'school: Our school');
  change(folder, 'content/site.yaml', /^barWord: .*$/m, 'barWord: measure');
  change(folder, 'content/site.yaml', 'lessons: []', 'lessons: [fives-and-sevens]');
  change(folder, 'content/site.yaml', 'parts: []', 'parts: [10]');
  change(folder, 'content/site.yaml', /^parts: \[\]$/m, 'parts: [{ number: 20, title: Our room, idea: Ours. }]');
  node(folder, ...lesson, 'Our warm-up', '--part', '6');
  node(folder, ...lesson, 'Our evening', '--part', '20');
  node(folder, 'src/build/new.ts', 'exercise', 'our-exercise');
  writeFileSync(join(folder, 'content/pages/our-fees.md'), '---\ntitle: Fees\nidea: None.\n---\n\nNone.\n');
}

/** What a newer version brings: a changed list, a changed lesson, a new lesson in a part where the school has one, an exercise. */
function becomeNewer(folder: string): void {
  const lesson = 'content/lessons/06-the-flam-drag/01-the-flam-drag/index.mdx';
  node(folder, 'src/build/new.ts', 'lesson', 'The flam drag at rest', '--part', '6');
  change(folder, 'content/course.yaml', /^ {2}- the-flam-drag$/m, '  - the-flam-drag\n  - the-flam-drag-at-rest');
  node(folder, 'src/build/new.ts', 'exercise', 'flam-drag-at-rest');
  change(
    folder,
    'content/exercises/flam-drag-at-rest.yaml',
    /^sticking: .*$/m,
    "sticking: '>R L R L >R L R L >R L R L >R R L L'",
  );
  change(folder, 'content/course.yaml', 'title: The flam drag\n', 'title: The flam drag and its like\n');
  change(folder, lesson, /^idea: /m, 'idea: Once more, ');
  appendFileSync(join(folder, 'README.md'), '\nA newer version.\n');
}

/** A copy of a school that takes the newer version and says whether everything still fits; commits first, or not. */
function take(school: string, committed: boolean): void {
  if (committed) commit(school, 'Our lessons');
  git(school, ...pullOfReadme());
  const fits = node(school, 'src/build/check-content.ts');
  if (!fits.includes('The content is sound.')) throw new Error(fits);
  const kept = readFileSync(join(school, 'content/site.yaml'), 'utf8').includes('school: Our school');
  const newer = readFileSync(join(school, 'README.md'), 'utf8').endsWith('A newer version.\n');
  if (!kept || !newer) throw new Error('the copy has not both: the changes of the school and the newer version');
  console.log(
    `A copy with ${committed ? 'committed' : 'uncommitted'} changes took the newer version, and its content is sound.`,
  );
}

try {
  const ours = join(work, 'ours');
  git(ROOT, 'clone', '--quiet', '--no-hardlinks', ROOT, ours);
  git(ours, 'checkout', '--quiet', '-B', 'main');
  lendPackages(ours);
  const schools = ['committed', 'uncommitted'].map((name) => join(work, name));
  for (const school of schools) {
    git(work, 'clone', '--quiet', '--branch', 'main', ours, school);
    lendPackages(school);
    becomeSchool(school);
  }
  // Our tests of the content hold for what a school adds to it.
  const vitest = join(ROOT, 'node_modules/vitest/vitest.mjs');
  const config = ['--config', 'tests/config/vitest.config.ts', '--project', 'unit'];
  node(schools[0], vitest, 'run', ...config, 'tests/content', 'tests/build');
  console.log('The tests of the content pass with the lessons of a school.');
  becomeNewer(ours);
  commit(ours, 'A newer version');
  take(schools[0], true);
  take(schools[1], false);
} catch (error) {
  const { message, stdout = '', stderr = '' } = error as Error & { stdout?: string; stderr?: string };
  console.error([message, stdout, stderr].join('\n'));
  process.exitCode = 1;
} finally {
  rmSync(work, { recursive: true, force: true });
}
