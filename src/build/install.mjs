import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, readlinkSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { delimiter, resolve } from 'node:path';

/** The oldest Node that runs the TypeScript of this project as it is. */
const RUNS_TYPESCRIPT = [22, 18];
const BUNDLED = `node-${process.platform}-${process.arch}/bin/node`;
const LINK = 'node_modules/.bin/node';

/**
 * Installs the locked packages where node_modules differs from the lock file, and sees to it that the scripts that
 * follow run on a Node that can strip types: the caller's own if it can, else the bundled one.
 */
export function ensureInstall() {
  if (isStale()) install();
  chooseNode();
}

/** True where a locked package is missing or has another version than the lock file says. */
function isStale() {
  const wanted = packagesIn('package-lock.json');
  const present = packagesIn('node_modules/.package-lock.json');
  if (!wanted) throw new Error('package-lock.json is missing: run this from a complete copy of the repository.');
  if (!present) return true;
  return Object.entries(wanted).some(([path, entry]) => path !== '' && !isSettled(entry, present[path]));
}

function isSettled(wanted, present) {
  return present ? present.version === wanted.version : Boolean(wanted.optional || wanted.peer);
}

function packagesIn(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : undefined;
}

function install() {
  console.log('Installing packages (npm ci) …');
  const started = Date.now();
  const result = spawnSync(outerNode(), [npmScript(), 'ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    stdio: 'inherit',
    env: { ...process.env, PATH: pathWithoutLocalBins() },
  });
  if (result.status !== 0) {
    rmSync('node_modules/.package-lock.json', { force: true });
    throw new Error('The packages could not be installed; what npm said stands above.');
  }
  console.log(`Installed in ${Math.round((Date.now() - started) / 1000)} s.`);
}

/** npm ci deletes node_modules, so the Node that lives there must not be the one that runs it. */
function outerNode() {
  const node = process.env.npm_node_execpath ?? process.execPath;
  return isBundled(node) ? 'node' : node;
}

function npmScript() {
  if (!process.env.npm_execpath) throw new Error('Run this through npm, for example: npm start');
  return process.env.npm_execpath;
}

function pathWithoutLocalBins() {
  return (process.env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => !/node_modules[\\/]\.bin[\\/]?$/.test(folder))
    .join(delimiter);
}

/**
 * npm puts node_modules/.bin first on the path of its scripts, so a link there decides which Node runs them. npm leaves
 * the link out where several optional packages offer the same command, hence it is made here.
 */
function chooseNode() {
  const node = process.env.npm_node_execpath ?? process.execPath;
  if (isBundled(node)) return;
  if (runsTypeScript(versionOf(node))) return unlink();
  if (!existsSync(`node_modules/${BUNDLED}`)) {
    throw new Error(
      `Barwright needs Node ${RUNS_TYPESCRIPT.join('.')} or later on this machine: no Node for ${process.platform} ${process.arch} is bundled.`,
    );
  }
  if (!existsSync(LINK)) symlinkSync(`../${BUNDLED}`, LINK);
}

/** Removes the link to the bundled Node, if that is what stands there. */
function unlink() {
  if (existsSync(LINK) && isBundled(resolve('node_modules/.bin', readlinkSync(LINK)))) rmSync(LINK);
}

/** True for the Node that came with this project's packages, and for a link to it. */
function isBundled(path) {
  return real(path) === real(`node_modules/${BUNDLED}`);
}

/** Where a file lies in the end: node_modules may itself be a link, shared by several copies. */
function real(path) {
  return existsSync(path) ? realpathSync(path) : resolve(path);
}

function versionOf(node) {
  if (node === process.execPath) return process.versions.node;
  return spawnSync(node, ['-p', 'process.versions.node'], { encoding: 'utf8' }).stdout.trim();
}

function runsTypeScript(version) {
  const [major, minor] = version.split('.').map(Number);
  return major > RUNS_TYPESCRIPT[0] || (major === RUNS_TYPESCRIPT[0] && minor >= RUNS_TYPESCRIPT[1]);
}
