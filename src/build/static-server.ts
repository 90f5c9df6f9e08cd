import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { pipeline } from 'node:stream/promises';

/** What is served and where: a folder of files, below a base path such as `/school/`. */
export interface ServeOptions {
  root: string;
  base: string;
}

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.ico': 'image/x-icon',
  '.mp4': 'video/mp4',
  '.webm': 'video/webm',
  '.vtt': 'text/vtt; charset=utf-8',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
};

/** Puts a slash at both ends: `school` and `/school` are `/school/`. */
export function normalBase(base: string): string {
  return `/${base}/`.replace(/\/+/g, '/');
}

/** What a request gets: a file, another address, or nothing. */
type Answer = { file: string } | { redirect: string } | undefined;

/** Decodes the path of a request below the base; undefined where it lies outside or cannot be decoded. */
function pathBelow(base: string, url: string): string | undefined {
  const path = url.replace(/[?#].*/s, '');
  if (!path.startsWith(base)) return undefined;
  try {
    return normalize(`/${decodeURIComponent(path.slice(base.length))}`);
  } catch {
    return undefined;
  }
}

async function answer({ root, base }: ServeOptions, url: string): Promise<Answer> {
  if (`${url}/` === base) return { redirect: base };
  const path = pathBelow(base, url);
  if (path === undefined || path.includes('\0')) return undefined;
  const file = join(root, path.endsWith('/') ? `${path}index.html` : path);
  const found = await stat(file).catch(() => undefined);
  if (found?.isFile()) return { file };
  return found?.isDirectory() ? { redirect: `${base}${path.slice(1)}/` } : undefined;
}

async function send(response: ServerResponse, status: number, file: string, head: boolean): Promise<void> {
  response.writeHead(status, {
    'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
    'cache-control': 'no-cache',
    'x-content-type-options': 'nosniff',
  });
  if (head) response.end();
  else await pipeline(createReadStream(file), response);
}

async function respond(options: ServeOptions, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const head = request.method === 'HEAD';
  if (!head && request.method !== 'GET') return void response.writeHead(405, { allow: 'GET, HEAD' }).end();
  const found = await answer(options, request.url ?? '/');
  if (found && 'redirect' in found) return void response.writeHead(301, { location: found.redirect }).end();
  if (found) return send(response, 200, found.file, head);
  const missing = join(options.root, '404.html');
  if (await stat(missing).catch(() => undefined)) return send(response, 404, missing, head);
  response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found\n');
}

/** A server of static files as any host would be: no rewriting, addresses of folders end in a slash. */
export function siteServer(options: ServeOptions): Server {
  const settled = { ...options, base: normalBase(options.base) };
  return createServer((request, response) => {
    // A file may go while the site is built anew, and a reader at any time.
    respond(settled, request, response).catch(() => (response.headersSent ? response : response.writeHead(500)).end());
  });
}

/**
 * Starts to listen at the port, or at the next free one (up to twenty further), and gives the port it got; 0 asks the
 * system for any.
 * Throws where none of them is free.
 */
export async function listen(server: Server, host: string, port: number, tries = 20): Promise<number> {
  try {
    await new Promise<void>((resolve, reject) => {
      server.once('error', reject);
      server.listen(port, host, () => {
        server.off('error', reject);
        resolve();
      });
    });
    return (server.address() as AddressInfo).port;
  } catch (error) {
    const taken = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
    if (!taken || tries === 0) throw error;
    return listen(server, host, port + 1, tries - 1);
  }
}
