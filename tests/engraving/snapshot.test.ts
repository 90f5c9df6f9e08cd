import { expect, it } from 'vitest';
import { CASES } from './cases.ts';
import { drawn } from './read-svg.ts';

/** One element a line, so that a change can be read. */
const readable = (html: string): string => html.replaceAll('><', '>\n<') + '\n';

it.each(['course61', 'grooveSixteenths', 'crashWithKick', 'pickup', 'sevenEightSixteenths'])('%s', async (name) => {
  await expect(readable(drawn(CASES[name]()).html)).toMatchFileSnapshot(`snapshots/${name}.txt`);
});
