import { expect, test } from 'vitest';
import { licenseNotices, licenseOf } from '../../src/build/licenses.ts';

const tone = { name: 'tone', version: '1.0.0', identifier: 'MIT', text: 'Permission is granted.' };
const bare = { name: 'a-package', version: '2.1.0', text: 'Do as you like.' };

test('notices stand by name, each with its version and its text', () => {
  expect(licenseNotices([tone, bare]).split(/\n-+\n/)).toEqual([
    'a-package 2.1.0\n\nDo as you like.\n',
    '\ntone 1.0.0 (MIT)\n\nPermission is granted.\n',
  ]);
});

test('a package without a text is refused by its name', () => {
  expect(() => licenseNotices([tone, { name: 'bare', version: '1.0.0' }])).toThrow('bare is in the browser');
});

test.each(['astro', 'pagefind'])('the license of %s is read from its folder', async (name) => {
  expect(await licenseOf(name)).toMatchObject({ name, identifier: 'MIT', text: expect.stringMatching(/permission/i) });
});
