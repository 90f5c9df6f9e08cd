import { expect, test } from 'vitest';
import { readTree, walk, type TreeNode } from '../../src/build/content/mdx-tree.ts';
import { lessonTree } from '../../src/build/lesson-tree.ts';

/** The nodes of a lesson after the plugin has been at it. */
function nodesOf(text: string, base?: string, barWord?: 'measure'): TreeNode[] {
  const read = readTree(text);
  if (!read.ok) throw new Error(read.message);
  lessonTree({ base, barWord })(read.tree);
  const nodes: TreeNode[] = [];
  walk(read.tree, (node) => nodes.push(node));
  return nodes;
}

/** What each question of a lesson is about. */
const sources = (text: string): unknown[] =>
  nodesOf(text)
    .filter(({ name }) => name === 'Question')
    .map(({ attributes }) => attributes?.find(({ name }) => name === 'source')?.value)
    .map((value) => (typeof value === 'string' ? (JSON.parse(value) as unknown) : value));

const ONE = '<Bar id="one" sticking="R L R L" meter="4/4" grid={1} />';
const TWO = '<Bar sticking="L R L R" meter="4/4" grid={1} />';
const asks = (more: string) => `<Question ask="?" ${more}>why</Question>`;

test('a question is about the bar before it', () => {
  expect(sources(`${ONE}\n\n${TWO}\n\n${asks('from="slots"')}`)).toEqual([
    { bar: { sticking: 'L R L R', meter: '4/4', grid: 1 } },
  ]);
});

test('or about the bar it names, or an exercise', () => {
  const text = `${ONE}\n\n${TWO}\n\n${asks('from="slots" bar="one"')}\n\n${asks('from="slots" bar="slow"')}`;
  expect(sources(text)).toEqual([
    { bar: { id: 'one', sticking: 'R L R L', meter: '4/4', grid: 1 } },
    { exercise: 'slow' },
  ]);
});

test('a question whose answer is given needs no bar', () => {
  expect(sources(`${ONE}\n\n${asks('answer="5"')}`)).toEqual([undefined]);
});

test('addresses of this site get the base path, others stay', () => {
  const urls = (base?: string) =>
    nodesOf('[a](/course/) [b](https://w3.org/) [c](#d)', base)
      .filter(({ type }) => type === 'link')
      .map(({ url }) => url);
  expect(urls('/drums/')).toEqual(['/drums/course/', 'https://w3.org/', '#d']);
  expect(urls()).toEqual(['/course/', 'https://w3.org/', '#d']);
});

test('a school that says measure reads it in the text, where it stands for a bar', () => {
  const text = [
    '## The other bar',
    'Two bars up to the bar\nline, and `bar`: ![a bar](x.png)',
    '<Question ask="Which bar?" answer="bar 2" bar="bar" choices="bar 1 | bar 2">A bar.</Question>',
  ].join('\n\n');
  const nodes = nodesOf(text, '/', 'measure');
  const texts = nodes.filter(({ type }) => type === 'text').map(({ value }) => value);
  expect(texts).toEqual(['The other measure', 'Two measures up to the bar\nline, and ', ': ', 'A measure.']);
  expect(nodes.find(({ type }) => type === 'inlineCode')?.value).toBe('bar');
  expect(nodes.find(({ type }) => type === 'image')?.alt).toBe('a measure');
  const question = nodes.find(({ name }) => name === 'Question')!;
  expect(Object.fromEntries(question.attributes!.map(({ name, value }) => [name, value]))).toEqual({
    ask: 'Which measure?',
    answer: 'measure 2',
    bar: 'bar',
    choices: 'measure 1 | measure 2',
  });
  // A link to the heading is the same at every school.
  expect(nodes.find(({ type }) => type === 'heading')?.data?.hProperties).toEqual({ id: 'the-other-bar', as: 'h2' });
});

test('a school that says bar finds the text as it was', () => {
  expect(nodesOf('## The bar').find(({ type }) => type === 'heading')?.data?.hProperties).toEqual({ as: 'h2' });
});
