import { realpath } from 'node:fs/promises';
import { createServer, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, sep } from 'node:path';
import serveStatic from 'serve-static';

/** What is served and where: a folder of files, below a base path such as `/school/`. */
export interface ServeOptions {
  root: string;
  base: string;
}

/** Puts a slash at both ends: `school` and `/school` are `/school/`. */
export function normalBase(base: string): string {
  return `/${base}/`.replace(/\/+/g, '/');
}

/** Whether a path below the base names something that lies, once links are followed, within the folder that is served. */
async function liesWithin(root: string, path: string): Promise<boolean> {
  try {
    const named = decodeURIComponent(path.replace(/[?#].*/s, ''));
    const file = await realpath(join(root, named.endsWith('/') ? `${named}index.html` : named));
    const folder = await realpath(root);
    return file === folder || file.startsWith(folder + sep);
  } catch {
    // Malformed, or not there.
    return false;
  }
}

/** A request's path below the base, or undefined where it lies elsewhere; the base itself may lack its slash. */
function pathBelow(base: string, url: string): string | undefined {
  if (url.startsWith(base)) return url.slice(base.length - 1);
  const bare = base.slice(0, -1);
  return url === bare || url.startsWith(`${bare}?`) ? `/${url.slice(bare.length)}` : undefined;
}

/** What the library hands on where it does not answer: the status it would have answered with, and its headers. */
type Refusal = Error & { statusCode?: number; headers?: Record<string, string> };

/** Answers with no more than a status; an answer that has begun is cut off, so that it does not pass for whole. */
function refuse(response: ServerResponse, { statusCode = 500, headers = {} }: Refusal): void {
  if (response.headersSent) response.destroy();
  else response.writeHead(statusCode, { ...headers, 'content-type': 'text/plain' }).end(`${statusCode}\n`);
}

/**
 * A server of static files as any host would be: no rewriting, addresses of folders end in a slash, 404.html stands where
 * nothing is. Links that lead out of the folder are not followed.
 */
export function siteServer({ root, base }: ServeOptions): Server {
  const settled = normalBase(base);
  const files = serveStatic(root, {
    fallthrough: false,
    setHeaders: (response) => response.setHeader('x-content-type-options', 'nosniff'),
  });
  const missing = serveStatic(root, {
    fallthrough: false,
    acceptRanges: false,
    setHeaders: (response) => (response.statusCode = 404),
  });

  return createServer(async (request, response) => {
    const path = pathBelow(settled, request.url ?? '/');
    const there = path !== undefined && (await liesWithin(root, path));
    const notFound = () =>
      missing(Object.assign(request, { url: '/404.html' }), response, (error) => refuse(response, error as Refusal));
    if (!there) return notFound();
    // A folder is sent on to its slash at the address that was asked for: below the base, with its query.
    const asked = Object.assign(request, { originalUrl: request.url, url: path });
    files(asked, response, (error) => (error?.statusCode === 404 ? notFound() : refuse(response, error as Refusal)));
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
