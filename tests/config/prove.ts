/**
 * Proves everything, or the stages named as arguments: `npm test`, `npm test -- unit browser`. Stops after the
 * first round with a failure (with `--all` it goes on), then says what ran, how it ended and how long it took.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { delimiter, resolve } from 'node:path';
import { type Report, slowest } from './reports.ts';
import { ROUNDS, type Stage } from './stages.ts';

interface Outcome extends Report {
  name: string;
  seconds: number;
}

/** The site under test is the plain one, whatever the caller builds for. */
function environment(stage: Stage): NodeJS.ProcessEnv {
  const { SITE_BASE: _base, SITE_URL: _url, ...rest } = process.env;
  const bins = resolve('node_modules/.bin');
  return {
    ...rest,
    PATH: `${bins}${delimiter}${rest.PATH ?? ''}`,
    ASTRO_TELEMETRY_DISABLED: '1',
    PLAYWRIGHT_JSON_OUTPUT_FILE: resolve(`test-results/${stage.name}.json`),
  };
}

/** Runs one command to its end; what it says is shown at once, or kept for later where others run beside it. */
function run(command: string, env: NodeJS.ProcessEnv, beside: boolean): Promise<{ succeeded: boolean; said: string }> {
  const child = spawn(command, { shell: true, stdio: beside ? 'pipe' : 'inherit', env });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (text: Buffer) => (said += text.toString()));
  return new Promise((done) => child.on('close', (code) => done({ succeeded: code === 0, said })));
}

function reportOf(stage: Stage, succeeded: boolean): Report {
  if (!stage.report) return { passed: succeeded ? 1 : 0, failed: succeeded ? 0 : 1, tests: [] };
  try {
    const report = stage.report();
    return succeeded ? report : { ...report, failed: Math.max(1, report.failed) };
  } catch {
    // It broke before it could write its report.
    return { passed: 0, failed: 1, tests: [] };
  }
}

async function prove(stage: Stage, beside: boolean): Promise<Outcome> {
  if (!beside) console.log(`\n▶ ${stage.name}`);
  const started = performance.now();
  const env = environment(stage);
  let succeeded = true;
  let all = '';
  for (const command of stage.commands) {
    const { succeeded: held, said } = await run(command, env, beside);
    all += said;
    succeeded &&= held;
    if (!held) break;
  }
  if (beside) console.log(`\n▶ ${stage.name}\n${all.trimEnd()}`);
  return { name: stage.name, ...reportOf(stage, succeeded), seconds: (performance.now() - started) / 1000 };
}

async function proveInTurn(rounds: Stage[][], goOn: boolean): Promise<Outcome[]> {
  const outcomes: Outcome[] = [];
  for (const round of rounds) {
    outcomes.push(...(await Promise.all(round.map((stage) => prove(stage, round.length > 1)))));
    if (outcomes.some(({ failed }) => failed > 0) && !goOn) break;
  }
  return outcomes;
}

function line({ name, passed, failed, seconds }: Outcome): string {
  const columns = [
    `${passed} passed`.padStart(13),
    `${failed} failed`.padStart(11),
    `${seconds.toFixed(1)} s`.padStart(9),
  ];
  return `${failed ? '✗' : '✓'} ${name.padEnd(14)}${columns.join('')}`;
}

/** How many of the slowest tests are named. */
const NAMED = 10;

function slowestTests(outcomes: Outcome[]): string[] {
  const named = slowest(
    outcomes.flatMap(({ tests }) => tests),
    NAMED,
  );
  const lines = named.map(({ name, seconds }) => `${seconds.toFixed(1).padStart(7)} s  ${name}`);
  return lines.length > 0 ? ['', 'The slowest tests:', ...lines] : [];
}

function summary(outcomes: Outcome[], rounds: Stage[][]): string {
  const skipped = rounds.flat().slice(outcomes.length);
  const sum = (key: 'passed' | 'failed') => outcomes.reduce((total, outcome) => total + outcome[key], 0);
  return [
    '',
    ...outcomes.map(line),
    ...skipped.map(({ name }) => `· ${name.padEnd(14)}      not run`),
    ...slowestTests(outcomes),
    '',
    `${sum('passed')} passed, ${sum('failed')} failed`,
  ].join('\n');
}

/** The rounds with only the stages asked for, or all of them. */
function chosen(names: string[]): Stage[][] {
  const known = ROUNDS.flat().map(({ name }) => name);
  const unknown = names.find((name) => !known.includes(name));
  if (unknown) throw new Error(`"${unknown}" is no stage; ${known.join(', ')} are`);
  if (!names.length) return ROUNDS;
  return ROUNDS.map((round) => round.filter(({ name }) => names.includes(name))).filter((round) => round.length);
}

const goOn = process.argv.includes('--all');
const rounds = chosen(process.argv.slice(2).filter((argument) => argument !== '--all'));
rmSync('test-results', { recursive: true, force: true });
mkdirSync('test-results', { recursive: true });
const outcomes = await proveInTurn(rounds, goOn);
console.log(summary(outcomes, rounds));
process.exitCode = outcomes.some(({ failed }) => failed > 0) ? 1 : 0;
