/**
 * Proves everything, or the stages named as arguments: `npm test`, `npm test -- unit browser`. Stops at the first stage
 * that fails (with `--all` it goes on), then says what ran, how it ended and how long it took.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { delimiter, resolve } from 'node:path';
import { type Count, type Stage, STAGES } from './stages.ts';

interface Outcome extends Count {
  name: string;
  seconds: number;
}

/** The site under test is the plain one, whatever the caller builds for; the stages that want a base say so. */
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

function runs(command: string, env: NodeJS.ProcessEnv): boolean {
  const base = command.includes('.cache/school') ? { SITE_BASE: '/school/' } : {};
  return spawnSync(command, { shell: true, stdio: 'inherit', env: { ...env, ...base } }).status === 0;
}

function countOf(stage: Stage, succeeded: boolean): Count {
  if (!stage.count) return succeeded ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
  try {
    const { passed, failed } = stage.count();
    return succeeded ? { passed, failed } : { passed, failed: Math.max(1, failed) };
  } catch {
    // It broke before it could write its report.
    return { passed: 0, failed: 1 };
  }
}

function prove(stage: Stage): Outcome {
  console.log(`\n▶ ${stage.name}`);
  const started = performance.now();
  const env = environment(stage);
  const succeeded = stage.commands.every((command) => runs(command, env));
  return { name: stage.name, ...countOf(stage, succeeded), seconds: (performance.now() - started) / 1000 };
}

function proveInTurn(stages: Stage[], goOn: boolean): Outcome[] {
  const outcomes: Outcome[] = [];
  for (const stage of stages) {
    outcomes.push(prove(stage));
    if (outcomes.at(-1)!.failed > 0 && !goOn) break;
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

function summary(outcomes: Outcome[], stages: Stage[]): string {
  const skipped = stages.slice(outcomes.length).map(({ name }) => `· ${name.padEnd(14)}      not run`);
  const sum = (key: 'passed' | 'failed') => outcomes.reduce((total, outcome) => total + outcome[key], 0);
  return ['', ...outcomes.map(line), ...skipped, '', `${sum('passed')} passed, ${sum('failed')} failed`].join('\n');
}

function chosen(names: string[]): Stage[] {
  const unknown = names.find((name) => !STAGES.some((stage) => stage.name === name));
  if (unknown) throw new Error(`"${unknown}" is no stage; ${STAGES.map(({ name }) => name).join(', ')} are`);
  return names.length ? STAGES.filter(({ name }) => names.includes(name)) : STAGES;
}

const goOn = process.argv.includes('--all');
const stages = chosen(process.argv.slice(2).filter((argument) => argument !== '--all'));
rmSync('test-results', { recursive: true, force: true });
mkdirSync('test-results', { recursive: true });
const outcomes = proveInTurn(stages, goOn);
console.log(summary(outcomes, stages));
process.exitCode = outcomes.some(({ failed }) => failed > 0) ? 1 : 0;
