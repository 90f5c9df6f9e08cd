import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { withOwnHashes } from '../../src/build/page-policy.ts';

const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const page = (policy: string, rest: string) =>
  `<head><meta http-equiv="content-security-policy" content="${policy}"></head><body>${rest}</body>`;

test('a page keeps the hashes of what stands in it, and loses the others', () => {
  const rest = '<style>p{color:red}</style><script type="module">go()</script><script src="/a.js"></script>';
  const all = (scripts: string, styles: string) => `script-src 'self'${scripts}; style-src 'self'${styles};`;
  const listed = all(` ${hash('other()')} ${hash('go()')}`, ` ${hash('p{color:red}')} ${hash('b{}')} ${hash('')}`);
  const own = all(` ${hash('go()')}`, ` ${hash('p{color:red}')}`);
  expect(withOwnHashes(page(listed, rest))).toBe(page(own, rest));
});

test('what Astro did not list is not allowed either', () => {
  const html = page("script-src 'self';", '<script>go()</script>');
  expect(withOwnHashes(html)).toBe(html);
});

test('a page without a policy stays as it is', () => {
  expect(withOwnHashes('<script>go()</script>')).toBe('<script>go()</script>');
});
