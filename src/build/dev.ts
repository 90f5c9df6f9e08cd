/** Starts Astro's dev server with the options it is given, such as `--port 8080`, and without its telemetry. */
import { spawn } from 'node:child_process';
import { resolve } from 'node:path';

const astro = resolve('node_modules/astro/bin/astro.mjs');
const server = spawn(process.execPath, [astro, 'dev', ...process.argv.slice(2)], {
  stdio: 'inherit',
  env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
});
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => server.kill(signal));
server.on('exit', (code) => process.exit(code ?? 0));
