import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { listen, normalBase, siteServer } from '../../src/build/static-server.ts';

const root = join(mkdtempSync(join(tmpdir(), 'served-')), 'site');
mkdirSync(join(root, 'course'), { recursive: true });
writeFileSync(join(root, 'index.html'), 'home');
writeFileSync(join(root, 'course/index.html'), 'course');
writeFileSync(join(root, 'course/a b.css'), 'css');
writeFileSync(join(root, '404.html'), 'missing');
writeFileSync(join(root, 'course/hands.webm'), 'film');
writeFileSync(join(root, 'large.webm'), Buffer.alloc(4_000_000));
writeFileSync(join(root, '../secret.txt'), 'secret');
mkdirSync(join(root, '../private'));
writeFileSync(join(root, '../private/index.html'), 'secret');
symlinkSync(join(root, '../secret.txt'), join(root, 'out.txt'));
symlinkSync(join(root, '../private'), join(root, 'out'));
symlinkSync(join(root, 'course'), join(root, 'in'));

const server = siteServer({ root, base: '/school' });
let port = 0;

beforeAll(async () => {
  port = await listen(server, '127.0.0.1', 0);
});

afterAll(() => {
  server.close();
  rmSync(join(root, '..'), { recursive: true, force: true });
});

interface Answer {
  status?: number;
  body: string;
  type?: string;
  location?: string;
  range?: string;
}

/** Asks for a path exactly as it is written; fetch would tidy it first. */
function ask(path: string, headers: Record<string, string> = {}, at = port): Promise<Answer> {
  return new Promise((resolve, reject) => {
    get({ port: at, host: '127.0.0.1', path, headers, agent: false }, (response) => {
      let body = '';
      response.on('data', (chunk) => (body += chunk));
      response.on('end', () => {
        const { 'content-type': type, 'content-range': range, location } = response.headers;
        resolve({ status: response.statusCode, body, type, location, range });
      });
    }).on('error', reject);
  });
}

describe('a served site', () => {
  test('has its pages below the base, with and without a query', async () => {
    expect(await ask('/school/')).toMatchObject({ status: 200, body: 'home', type: 'text/html; charset=utf-8' });
    expect(await ask('/school/course/?a=1')).toMatchObject({ status: 200, body: 'course' });
    expect(await ask('/school/course/a%20b.css')).toMatchObject({ status: 200, type: 'text/css; charset=utf-8' });
    expect(await ask('/school/course/hands.webm')).toMatchObject({ status: 200, type: 'video/webm' });
  });

  test('sends addresses of folders on to the slash', async () => {
    expect(await ask('/school')).toMatchObject({ status: 301, location: '/school/' });
    expect(await ask('/school/course')).toMatchObject({ status: 301, location: '/school/course/' });
  });

  test('keeps the query when it sends on', async () => {
    expect(await ask('/school?grid=4')).toMatchObject({ status: 301, location: '/school/?grid=4' });
    const location = '/school/course/?type=R%20L&grid=4';
    expect(await ask('/school/course?type=R%20L&grid=4')).toMatchObject({ status: 301, location });
  });

  // RFC 9110, section 14: a range has both its ends; what cannot be satisfied is 416 with the length.
  test('sends the part of a film that is asked for', async () => {
    const film = (range: string) => ask('/school/course/hands.webm', { range });
    expect(await film('bytes=1-2')).toMatchObject({ status: 206, body: 'il', range: 'bytes 1-2/4' });
    expect(await film('bytes=2-')).toMatchObject({ status: 206, body: 'lm', range: 'bytes 2-3/4' });
    expect(await film('bytes=-1')).toMatchObject({ status: 206, body: 'm', range: 'bytes 3-3/4' });
    expect(await film('bytes=9-')).toMatchObject({ status: 416, range: 'bytes */4' });
    expect(await ask('/school/nothing/', { range: 'bytes=0-1' })).toMatchObject({ status: 404, body: 'missing' });
  });

  const NOWHERE = ['/', '/school/nothing/', '/other/', '/schooling/', '/school/index.html/', '/school/course//nothing'];
  const MALFORMED = [
    '/school/%00',
    '/school/%E0%A4%A',
    '/school/%',
    '/school/%zz',
    '/school/course/%C0%AF',
    '/school/%u0041',
  ];
  test.each([...NOWHERE, ...MALFORMED])('has nothing at %s', async (path) => {
    expect(await ask(path)).toMatchObject({ status: 404, body: 'missing' });
  });

  test.each([
    '/school/../secret.txt',
    '/school/..%2Fsecret.txt',
    '/school/%2e%2e%2fsecret.txt',
    '/school/..%5Csecret.txt',
    '/school/%252e%252e%252fsecret.txt',
    '/school/course/%2e%2e/%2e%2e/secret.txt',
    '/school/course/..%2F..%2Fprivate/',
    '/school//../secret.txt',
  ])('keeps to its folder for %s', async (path) =>
    expect(await ask(path)).toMatchObject({ status: 404, body: 'missing' }),
  );

  test('follows links within its folder, and none that leads out', async () => {
    expect(await ask('/school/in/')).toMatchObject({ status: 200, body: 'course' });
    for (const path of ['out.txt', 'out', 'out/', 'out/index.html', 'in/../out.txt'])
      expect(await ask(`/school/${path}`), path).toMatchObject({ status: 404, body: 'missing' });
  });

  test('answers nothing but questions', async () => {
    const response = await fetch(`http://127.0.0.1:${port}/school/`, { method: 'POST' });
    expect([response.status, response.headers.get('allow')]).toEqual([405, 'GET, HEAD']);
  });
});

/** Asks for a large file and hangs up: as soon as it has asked, or at the first bytes of the answer. */
async function hangUp(at: number, early: boolean): Promise<void> {
  const socket = connect(at, '127.0.0.1');
  socket.on('error', () => undefined);
  const asked = new Promise((resolve) => {
    socket.write('GET /large.webm HTTP/1.1\r\nHost: localhost\r\n\r\n', resolve);
  });
  await (early ? asked : once(socket, 'data'));
  socket.destroy();
}

test('a thousand readers who hang up leave no file open', async () => {
  const serve = fileURLToPath(new URL('../../src/build/serve.ts', import.meta.url));
  // At most 64 files at once: Node keeps about twenty, the readers at one time ten sockets and ten files.
  const child = spawn('sh', ['-c', 'ulimit -n 64; exec "$0" "$1" "$2"', process.execPath, serve, root], {
    env: { ...process.env, PORT: '0', SITE_BASE: '/' },
  });
  try {
    const [said] = (await once(child.stdout, 'data')) as [Buffer];
    const at = Number(/:(\d+)\//.exec(said.toString())?.[1]);
    for (let round = 0; round < 100; round++)
      await Promise.all(Array.from({ length: 10 }, (_, reader) => hangUp(at, reader % 2 === 0)));
    expect(await ask('/course/', {}, at)).toMatchObject({ status: 200, body: 'course' });
    expect(child.exitCode).toBe(null);
  } finally {
    child.kill();
  }
}, 60_000);

test('a taken port gives the next one, or a refusal where none may be tried', async () => {
  const second = siteServer({ root, base: '/' });
  const got = await listen(second, '127.0.0.1', port);
  second.close();
  expect(got).toBeGreaterThan(port);
  await expect(listen(siteServer({ root, base: '/' }), '127.0.0.1', port, 0)).rejects.toThrow('EADDRINUSE');
});

test.each([
  ['/', '/'],
  ['', '/'],
  ['school', '/school/'],
  ['/a/b/', '/a/b/'],
])('the base %j is %j', (base, normal) => {
  expect(normalBase(base)).toBe(normal);
});
