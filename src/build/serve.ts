/**
 * Serves the built site and prints its address: `node src/build/serve.ts [folder]`. PORT chooses the port (0: any;
 * else 4321 or the next free one), SITE_BASE the base path the site was built for.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { listen, normalBase, siteServer } from './static-server.ts';

const HOST = '127.0.0.1';
const root = process.argv[2] ?? 'dist';
const base = normalBase(process.env.SITE_BASE ?? '/');

if (!existsSync(join(root, 'index.html'))) {
  console.error(`There is no site in ${root} yet; npm run build makes one.`);
  process.exit(1);
}

const asked = process.env.PORT ? Number(process.env.PORT) : undefined;
const port = await listen(siteServer({ root, base }), HOST, asked ?? 4321, asked ? 0 : 20).catch((error: Error) => {
  console.error(`Port ${asked ?? 4321} cannot be used: ${error.message}`);
  process.exit(1);
});
console.log(`\nThe site is at http://${HOST}:${port}${base}  (Ctrl+C ends it)\n`);
