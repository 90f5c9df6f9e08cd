import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { filesOf, pagesOf } from '../helpers/built-site.ts';
import { layProject } from '../helpers/small-site.ts';
import { layContent } from './generated-lessons.ts';

/** How many lessons are added to the course; `npm run bench -- build 50 500` takes others. */
const SIZES = [50, 500, 2000];

/** What one build took. */
interface Built {
  lessons: number;
  pages: number;
  seconds: number;
  /** The most memory the build itself held, in MB; the indexer of words is a program of its own and not in it. */
  megabytes: number;
  /** All files of the index of words, in kB as they lie on the disk, where they are compressed. */
  words: number;
  /** The index of stickings, in kB after gzip. */
  stickings: number;
}

/** Said by the build as it ends: resourceUsage counts in kB. */
const PEAK = `import { writeFileSync } from 'node:fs';
process.on('exit', () => writeFileSync(process.env.PEAK_FILE, String(process.resourceUsage().maxRSS)));`;

function build(lessons: number): Built {
  const root = realpathSync(mkdtempSync(join(tmpdir(), 'barwright-bench-')));
  try {
    layContent(root, lessons);
    layProject(root);
    const peak = join(root, 'peak');
    const started = performance.now();
    const words = [
      '--import',
      `data:text/javascript,${encodeURIComponent(PEAK)}`,
      'node_modules/astro/bin/astro.mjs',
      'build',
    ];
    const { status, stdout, stderr } = spawnSync(process.execPath, words, {
      cwd: root,
      encoding: 'utf8',
      maxBuffer: 1e9,
      env: { ...process.env, PEAK_FILE: peak, ASTRO_TELEMETRY_DISABLED: '1' },
    });
    const seconds = (performance.now() - started) / 1000;
    if (status !== 0) throw new Error(`The site with ${lessons} more lessons does not build:\n${stdout}${stderr}`);
    const site = { root: join(root, 'dist'), base: '/' };
    const read = (file: string) => readFileSync(join(site.root, file));
    const index = filesOf(site).filter((file) => /^pagefind\/.*\.(pf_|pagefind)/.test(file));
    return {
      lessons,
      pages: pagesOf(site).length,
      seconds,
      megabytes: Number(readFileSync(peak, 'utf8')) / 1000,
      words: index.reduce((sum, file) => sum + read(file).length, 0) / 1000,
      stickings: gzipSync(read('stickings.json')).length / 1000,
    };
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}

const row = (cells: (string | number)[]) => console.log(cells.map((cell) => String(cell).padStart(11)).join(''));

/** What a lesson more costs between two builds, and how much more than between the two before: 1 is a straight line. */
function growth(builts: readonly Built[]): void {
  const costs = builts.slice(1).map((built, at) => {
    const before = builts[at];
    return ((built.seconds - before.seconds) / (built.lessons - before.lessons)) * 1000;
  });
  costs.forEach((cost, at) => {
    const ratio = at > 0 ? `, ${(cost / costs[at - 1]).toFixed(2)} times the cost before` : '';
    console.log(
      `From ${builts[at].lessons} to ${builts[at + 1].lessons} lessons: ${cost.toFixed(0)} ms a lesson${ratio}.`,
    );
  });
}

/**
 * What a build takes with more and more lessons beside the course: time, memory, pages, the two indexes; and what each
 * lesson more costs. A machine that is busy is slow: look at the ratios.
 */
export async function bench(): Promise<void> {
  const asked = process.argv.slice(3).map(Number).filter(Number.isInteger);
  row(['lessons', 'pages', 's', 'MB', 'words kB', 'stickings kB']);
  const builts = (asked.length > 0 ? asked : SIZES).map((lessons) => {
    const built = build(lessons);
    const { pages, seconds, megabytes, words, stickings } = built;
    row([`+${lessons}`, pages, seconds.toFixed(1), megabytes.toFixed(0), words.toFixed(0), stickings.toFixed(1)]);
    return built;
  });
  growth(builts);
}
