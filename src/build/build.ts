/**
 * Builds the site into dist, and says in a few lines what came of it: `node src/build/build.ts`. With `--if-changed` it
 * builds only where something that the site is made from has changed since the last time.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { AstroIntegration } from 'astro';
import { stampOf } from './stamp.ts';

const ROOT = resolve('.');
const DIST = join(ROOT, 'dist');
const FIRST_PAGE = join(DIST, 'index.html');
/** The stamp of what dist was made from; it lies outside, so that it is not published. */
const STAMP = join(ROOT, '.cache/dist-stamp');

const say = (text: string) => void process.stdout.write(text);

/** Tells on one line which step the build has reached; it never goes back on that line, so that it reads well in a log. */
function progress(): AstroIntegration {
  return {
    name: 'progress',
    hooks: {
      'astro:config:done': () => say('Building the site: content'),
      'astro:build:setup': () => say(', pages'),
      'astro:build:generated': () => say(', search'),
    },
  };
}

const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;

/** What was built: how many pages, how large they and the rest are. */
function sizes(): string {
  const files = readdirSync(DIST, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => ({ name: entry.name, bytes: statSync(join(entry.parentPath, entry.name)).size }));
  const of = (ends: string) => files.filter(({ name }) => name.endsWith(ends));
  const sum = (some: typeof files) => megabytes(some.reduce((total, { bytes }) => total + bytes, 0));
  return `${of('.html').length} pages, ${sum(of('.html'))}; scripts ${sum(of('.js'))}; all files ${sum(files)}, in dist`;
}

/** Why the build failed: for people, with the place where it is known. */
function reasonOf(error: Error & { loc?: { file?: string; line?: number }; hint?: string }): string {
  const place = error.loc?.file ? `${error.loc.file}:${error.loc.line ?? 1}\n` : '';
  return `${place}${error.stack ?? error.message}${error.hint ? `\n${error.hint}` : ''}`;
}

/** With the time at which the first page was written, because others may have built into the folder since. */
const stampOfDist = (stamp: string) => `${stamp} ${statSync(FIRST_PAGE).mtimeMs}`;

/** Builds, and says how long it took, what is worth a look in the content, and how large the site is. */
async function buildSite(stamp: string): Promise<void> {
  rmSync(STAMP, { force: true });
  const started = performance.now();
  // Loaded here, since it takes a second that nobody waits for where nothing has changed.
  const [{ build }, { lookAtContent }, { printWarnings }] = await Promise.all([
    import('astro'),
    import('./check-content.ts'),
    import('./content/content-fault.ts'),
  ]);
  await build({ root: ROOT, logLevel: 'warn', integrations: [progress()] });
  console.log(`: ${Math.round((performance.now() - started) / 1000)} s`);
  mkdirSync(dirname(STAMP), { recursive: true });
  writeFileSync(STAMP, stampOfDist(stamp));
  const { warnings } = lookAtContent(ROOT);
  if (warnings.length) console.log(`\n${printWarnings(warnings)}\n`);
  console.log(sizes());
}

process.env.ASTRO_TELEMETRY_DISABLED = '1';
const stamp = stampOf(ROOT, process.env);
const standing = existsSync(STAMP) && existsSync(FIRST_PAGE) && readFileSync(STAMP, 'utf8') === stampOfDist(stamp);

if (process.argv.includes('--if-changed') && standing) {
  console.log('Nothing has changed since the site was built.');
} else {
  await buildSite(stamp).catch((error: Error) => {
    console.error(`\n${reasonOf(error)}`);
    process.exit(1);
  });
}
