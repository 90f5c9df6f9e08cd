import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Where Chromium and its kin stand on the systems we know of. */
const INSTALLED = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/microsoft-edge',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** Flags for every launch: no sandbox (containers forbid it) and no talk with its maker's servers. */
export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/**
 * A Chromium to test with: BROWSER_PATH; else, on Linux x64, the one that comes as a package, so that everyone tests with
 * the same one (without windows, it also takes half the time of an installed one); else the one Playwright installed, or
 * the system's. Sets environment variables that the packaged one needs, so call it in the process that launches the browser.
 */
export async function findBrowser(): Promise<string> {
  const named = process.env.BROWSER_PATH;
  if (named) return existing(named);
  if (process.platform === 'linux' && process.arch === 'x64') return packagedBrowser();
  const present = [chromium.executablePath(), ...INSTALLED].find(isThere);
  if (present) return present;
  throw new Error('No Chromium found: set BROWSER_PATH, or run "npx playwright install chromium".');
}

const isThere = (path: string) => path !== '' && existsSync(path);

function existing(path: string): string {
  if (!existsSync(path)) throw new Error(`BROWSER_PATH=${path} does not exist`);
  return path;
}

async function packagedBrowser(): Promise<string> {
  const bin = join(dirname(fileURLToPath(import.meta.resolve('@sparticuz/chromium'))), '../bin');
  const { version } = JSON.parse(readFileSync(join(bin, '../package.json'), 'utf8'));
  const folder = join(ROOT, `.cache/chromium-${version}`);
  if (!existsSync(folder)) await unpack(bin, folder);
  prepareEnvironment(folder);
  return join(folder, 'chromium');
}

/**
 * The package unpacks into the system's temporary folder and takes whatever stands there for finished. Unpacked beside
 * its place and moved in one step, several runs at once do not find half a browser.
 */
async function unpack(bin: string, folder: string): Promise<void> {
  const { inflate } = await import('@sparticuz/chromium');
  const draft = `${folder}.${process.pid}`;
  mkdirSync(draft, { recursive: true, mode: 0o700 });
  const before = process.env.TMPDIR;
  process.env.TMPDIR = draft;
  try {
    for (const name of ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br'])
      await inflate(join(bin, name));
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
  writeFileSync(join(draft, 'fonts/fonts.conf'), fontSettings(folder));
  moveIntoPlace(draft, folder);
}

/** The package's own settings look for the font in a temporary folder that is not ours. */
function fontSettings(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>/usr/share/fonts</dir>
  <dir>${folder}/fonts</dir>
  <cachedir>${folder}/fonts-cache</cachedir>
</fontconfig>
`;
}

function moveIntoPlace(draft: string, folder: string): void {
  try {
    renameSync(draft, folder);
  } catch (error) {
    rmSync(draft, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
}

/** Shared libraries (NSS, expat) and a font that a bare machine lacks; harmless elsewhere. */
function prepareEnvironment(folder: string): void {
  const libraries = join(folder, 'al2023/lib');
  const present = (process.env.LD_LIBRARY_PATH ?? '').split(':').filter((path) => path && path !== libraries);
  process.env.LD_LIBRARY_PATH = [libraries, ...present].join(':');
  process.env.FONTCONFIG_PATH ??= join(folder, 'fonts');
}
