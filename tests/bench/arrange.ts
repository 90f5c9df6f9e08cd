import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import {
  arrangements,
  loopArrangements,
  parseSticking,
  rankArrangements,
  type ArrangeCell,
  type ArrangeRequest,
} from '../../src/core/index.ts';
import { exactCovers } from '../helpers/exact-cover.ts';
import { printTable } from '../helpers/table.ts';

/** Six cells of one to six slots. */
const SIX = ['K', 'lR R', '>lR LL R', '>R L R R', '>R L R L L', '>R L R R L L'].map((text, i) => cellOf(`c${i}`, text));
const FREE = SIX.map(({ id, slots }) => ({ id, slots }));

function cellOf(id: string, text: string, times?: ArrangeCell['times']): ArrangeCell {
  const read = parseSticking(text);
  if (!read.ok) throw new Error(read.fault.message);
  return { id, slots: text.split(' ').length, sticking: read.sticking, ...(times === undefined ? {} : { times }) };
}

/** Every rule at once: few orders keep to them, and each rule has to be looked at. */
const ALL_RULES: ArrangeRequest = {
  cells: SIX,
  slots: 256,
  barSlots: 16,
  rules: {
    first: 'c2',
    last: 'c1',
    accentOn: [0, 64, 128],
    noAccentOn: [17, 33],
    lastStrokeOn: 255,
    withinBars: true,
    noJoins: [['c3', 'c3']],
    maxRun: 3,
    graces: true,
    loop: true,
    lead: 'alternating',
  },
};

/** A kick, three flam drags and two R L L a bar, over 16 bars, at most three in a row by one hand. */
const SIXTEEN_BARS: ArrangeRequest = {
  cells: [cellOf('kick', 'K', 16), cellOf('flam drag', '>lR LL R', 48), cellOf('R L L', 'R L L', 32)],
  slots: 256,
  rules: { maxRun: 3 },
};

/** The same cells in one bar, and the six cells in four: orders to be ranked. */
const SIXTY: ArrangeRequest = {
  cells: [cellOf('kick', 'K', 1), cellOf('flam drag', '>lR LL R', 3), cellOf('R L L', 'R L L', 2)],
  slots: 16,
};
const RANKED: ArrangeRequest = { cells: SIX, slots: 64 };

const BOUNDED: ArrangeRequest = { cells: FREE.map((cell) => ({ ...cell, times: { min: 1, max: 10 } })), slots: 128 };

const TOO_LARGE: ArrangeRequest = {
  cells: Array.from({ length: 7 }, (_, i) => ({ id: `c${i}`, slots: 1 + i, times: { max: 15 - i } })),
  slots: 256,
  rules: { first: 'c0' },
};

const any = (slots: number): ArrangeRequest => ({ cells: FREE, slots });

/**
 * Milliseconds of the best of five rounds, each of as many runs as take 0.3 ms so that a round is seldom interrupted, after
 * a warm-up of a quarter second of processor time.
 */
function best(run: () => unknown): number {
  const cpu = process.cpuUsage();
  while (process.cpuUsage(cpu).user < 250_000) run();
  const round = (): number => {
    const from = performance.now();
    let runs = 0;
    for (; runs === 0 || performance.now() - from < 0.3; runs += 1) run();
    return (performance.now() - from) / runs;
  };
  return Math.min(...Array.from({ length: 5 }, round));
}

/** The garbage collector, which is there only when asked for. */
function collector(): () => void {
  setFlagsFromString('--expose-gc');
  return runInNewContext('gc') as () => void;
}

/** MB that what is made keeps, in objects and in flat arrays: the mean of four, garbage collected before and after. */
function kept(make: () => unknown): number {
  // What is made only once, such as compiled code, is made before.
  make();
  const collect = collector();
  const now = (): number => {
    collect();
    collect();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return heapUsed + arrayBuffers;
  };
  const before = now();
  const made = Array.from({ length: 4 }, make);
  return (now() - before) / made.length / 1e6;
}

/** Bytes that are allocated meanwhile, kept or not: the process may grow by as much before anything is collected. */
function allocated(run: () => unknown): number {
  collector()();
  const before = process.memoryUsage().rss;
  run();
  return Math.max(0, (process.memoryUsage().rss - before) / 1e6);
}

interface Case {
  what: string;
  run: () => unknown;
  aim?: number;
  memory?: number;
  memoryAim?: number;
}

function counting(what: string, asked: ArrangeRequest, aim?: number, memoryAim?: number): Case {
  return { what, run: () => arrangements(asked), aim, memory: kept(() => arrangements(asked)), memoryAim };
}

function finding(what: string, asked: ArrangeRequest, aim?: number): Case[] {
  const found = arrangements(asked);
  const k = found.count / 3n;
  const ids = found.at(k);
  return [
    { what: `${what}: at`, run: () => found.at(k), aim },
    { what: `${what}: indexOf`, run: () => found.indexOf(ids), aim },
  ];
}

const cases = (): Case[] => [
  counting('six cells, any uses, 16 slots', any(16)),
  counting('six cells, any uses, 64 slots', any(64)),
  counting('six cells, any uses, 256 slots', any(256), 0.5),
  counting('six cells, any uses, 1,024 slots', any(1024), 2, 2),
  ...finding('256 slots', any(256), 0.05),
  ...finding('1,024 slots', any(1024), 0.15),
  counting('all rules at once, 256 slots', ALL_RULES, 2),
  ...finding('all rules, 256 slots', ALL_RULES),
  counting('kick, flam drag, R L L in exact uses, 16 bars', SIXTEEN_BARS, 100, 20),
  ...finding('16 bars', SIXTEEN_BARS),
  counting('six cells, 1 to 10 uses each, 128 slots', BOUNDED, 25),
  { what: 'round a loop of 16 slots, up to rotation', run: () => loopArrangements(any(16)) },
  { what: 'the ten easiest of sixty orders', run: () => rankArrangements(SIXTY, { order: 'easiest', take: 10 }) },
  { what: 'the ten hardest of 64 slots', run: () => rankArrangements(RANKED, { order: 'hardest', take: 10 }) },
];

const ms = (n: number | undefined): string => (n === undefined ? '–' : n >= 100 ? n.toFixed(0) : n.toPrecision(2));

const rowOf = ({ what, run, aim, memory, memoryAim }: Case): Record<string, string> => ({
  what,
  ms: ms(best(run)),
  aim: ms(aim),
  'MB kept': memory === undefined ? '–' : memory.toFixed(2),
  'aim MB': memoryAim === undefined ? '–' : String(memoryAim),
});

/** The same problem listed by exact cover, as far as that ends. */
function compared(slots: number): Record<string, string> {
  const listed = exactCovers(FREE, slots);
  const found = arrangements(any(slots));
  if (BigInt(listed.length) !== found.count) throw new Error(`${slots} slots: ${listed.length} and ${found.count}`);
  const times = { cover: best(() => exactCovers(FREE, slots)), count: best(() => arrangements(any(slots))) };
  const list = best(() => [...arrangements(any(slots))]);
  return {
    slots: String(slots),
    orders: String(found.count),
    'exact cover lists, ms': ms(times.cover),
    'we list, ms': ms(list),
    'we count, ms': ms(times.count),
    'listing, times faster': (times.cover / list).toFixed(1),
    'counting, times faster': (times.cover / times.count).toFixed(0),
  };
}

function refusal(): string {
  const from = performance.now();
  const cpu = process.cpuUsage();
  const memory = allocated(() => {
    try {
      arrangements(TOO_LARGE);
    } catch {
      return;
    }
    throw new Error('what is too large was not refused');
  });
  const { user, system } = process.cpuUsage(cpu);
  return `${((performance.now() - from) / 1000).toFixed(1)} s (${((user + system) / 1e6).toFixed(1)} s of processor time), ${memory.toFixed(0)} MB more`;
}

/** How long counting takes and how much it keeps; best of five rounds after a warm-up. */
export function bench(): void {
  printTable(cases().map(rowOf));
  console.log('\nMB kept: objects and flat arrays after a garbage collection, less what there was before.\n');
  printTable([8, 12, 16, 20].map(compared));
  console.log('\nThe exact covers are listed by the dancing-links package, in this run, of the same six cells.');
  console.log(`A problem of too many states is refused after ${refusal()}.`);
}
