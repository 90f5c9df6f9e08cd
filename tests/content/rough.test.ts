import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkContent } from '../../src/build/check-content.ts';
import { GOOD, lesson, LESSON, planted, type Tree } from './plant.ts';

/** Files that bring down a careless reader. */
const ROUGH: [name: string, tree: Tree][] = [
  ['a lesson nested deeper than calls can be', { [LESSON]: lesson('>'.repeat(5000)) }],
  [
    'a page nested deeper than calls can be',
    { 'content/pages/hearing.md': `---\ntitle: x\nidea: x\n---\n${'>'.repeat(5000)}` },
  ],
  [
    'lists nested deeper than calls can be',
    { 'content/cells/x.yaml': `name: ${'['.repeat(5000)}${']'.repeat(5000)}\n` },
  ],
  ['a list that holds itself', { 'content/cells/x.yaml': 'name: &a [*a]\nsticking: R\n' }],
  [
    'names that a plain object has already',
    { 'content/cells/x.yaml': '__proto__: 1\nconstructor: 2\nname: x\nsticking: R\n' },
  ],
  [
    'lists that grow out of each other',
    {
      'content/cells/x.yaml': ['a', 'b', 'c', 'd', 'e']
        .map((name, index, all) => `${name}: &${name} [${`${index ? `*${all[index - 1]}` : 'x'},`.repeat(9)}]`)
        .join('\n'),
    },
  ],
];

test.each(ROUGH)('%s: no exception', (_, tree) => {
  planted({ ...GOOD, ...tree }, (root) => {
    for (const { message } of checkContent(root)) expect(message).not.toBe('');
  });
});

test('a link to nowhere is a fault', () => {
  planted(GOOD, (root) => {
    symlinkSync(join(root, 'nowhere'), join(root, 'content/cells/x.yaml'));
    expect(checkContent(root)).toMatchObject([{ file: 'content/cells/x.yaml', message: 'the file cannot be opened' }]);
  });
});
