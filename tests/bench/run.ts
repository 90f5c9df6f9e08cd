/** Runs a bench by name: `npm run bench -- size`. */
import { readdirSync } from 'node:fs';
import { basename } from 'node:path';

// Whatever a bench builds.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

const names = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith('.ts') && file !== basename(import.meta.filename))
  .map((file) => basename(file, '.ts'));
const [name = ''] = process.argv.slice(2);

if (!names.includes(name)) {
  console.error(`Which bench? ${names.map((each) => `npm run bench -- ${each}`).join(', or ')}`);
  process.exit(1);
}

// The one import whose path is not written out: which file it is, is the question.
// eslint-disable-next-line no-restricted-syntax
const { bench } = await import(`./${name}.ts`);
await bench();
