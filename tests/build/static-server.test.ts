import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { listen, normalBase, siteServer } from '../../src/build/static-server.ts';

const root = join(mkdtempSync(join(tmpdir(), 'served-')), 'site');
mkdirSync(join(root, 'course'), { recursive: true });
writeFileSync(join(root, 'index.html'), 'home');
writeFileSync(join(root, 'course/index.html'), 'course');
writeFileSync(join(root, 'course/a b.css'), 'css');
writeFileSync(join(root, '404.html'), 'missing');
writeFileSync(join(root, 'course/hands.webm'), 'film');
writeFileSync(join(root, '../secret.txt'), 'secret');

const server = siteServer({ root, base: '/school' });
let port = 0;

beforeAll(async () => {
  port = await listen(server, '127.0.0.1', 0);
});

afterAll(() => {
  server.close();
  rmSync(join(root, '..'), { recursive: true, force: true });
});

/** Asks for a path exactly as it is written; fetch would tidy it first. */
function ask(path: string): Promise<{ status?: number; body: string; type?: string; location?: string }> {
  return new Promise((resolve, reject) => {
    get({ port, host: '127.0.0.1', path, agent: false }, (response) => {
      let body = '';
      response.on('data', (chunk) => (body += chunk));
      response.on('end', () => {
        const { 'content-type': type, location } = response.headers;
        resolve({ status: response.statusCode, body, type, location });
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

  test.each(['/', '/school/nothing/', '/other/', '/school/%00', '/school/%E0%A4%A'])(
    'has nothing at %s',
    async (path) => {
      expect(await ask(path)).toMatchObject({ status: 404, body: 'missing' });
    },
  );

  test.each(['/school/../secret.txt', '/school/..%2Fsecret.txt', '/school/course/%2e%2e/%2e%2e/secret.txt'])(
    'keeps to its folder for %s',
    async (path) => expect(await ask(path)).toMatchObject({ status: 404, body: 'missing' }),
  );
});

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
