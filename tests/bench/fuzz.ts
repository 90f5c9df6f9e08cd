import { printTable } from '../helpers/table.ts';
import { launch } from './fuzz/attack.ts';
import { ATTACKS } from './fuzz/index.ts';

const MOST_SHOWN = 10;

/** Throws made-up input at every door, always the same; with LONG=1 the long counts. */
export async function bench(): Promise<void> {
  const rows: Record<string, string>[] = [];
  let [tries, failures] = [0, 0];
  for (const attack of ATTACKS) {
    const from = performance.now();
    const outcome = await launch(attack, process.env.LONG !== undefined);
    const seconds = ((performance.now() - from) / 1000).toFixed(1);
    tries += outcome.tries;
    failures += outcome.failures.length;
    rows.push({
      attack: attack.name,
      tries: outcome.tries.toLocaleString('en'),
      failures: outcome.failures.length.toLocaleString('en'),
      seconds,
    });
    outcome.failures.slice(0, MOST_SHOWN).forEach((line) => console.error(`${attack.name}: ${line}`));
  }
  printTable(rows);
  if (failures > 0) process.exitCode = 1;
  console.log(`${tries.toLocaleString('en')} tries, ${failures.toLocaleString('en')} failures`);
}
