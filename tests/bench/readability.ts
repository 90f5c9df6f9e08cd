import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { readingOf, type Reading } from '../helpers/prose.ts';

const LESSONS = new URL('../../content/lessons/', import.meta.url).pathname;

function lessons(): { name: string; reading: Reading }[] {
  return readdirSync(LESSONS, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('index.mdx'))
    .map((file) => ({ name: basename(dirname(file)), reading: readingOf(readFileSync(join(LESSONS, file), 'utf8')) }))
    .sort((a, b) => b.reading.grade - a.reading.grade);
}

const line = ({ name, reading: { grade, words, length } }: ReturnType<typeof lessons>[number]) =>
  `${name.padEnd(44)}${grade.toFixed(1).padStart(6)}${(grade + 5).toFixed(0).padStart(5)}${String(words).padStart(7)}${length.toFixed(1).padStart(7)}`;

/**
 * How hard the lessons are to read: the Flesch–Kincaid grade of their prose, without bars, stickings, counts, numbers and
 * headings. A reader's age is that grade and 5.
 */
export async function bench(): Promise<void> {
  const all = lessons();
  const median = all[Math.floor(all.length / 2)];
  console.log(`${'lesson, the hardest to read first'.padEnd(44)} grade  age  words  words a sentence`);
  for (const each of all) console.log(line(each));
  console.log(`\nMedian: grade ${median.reading.grade.toFixed(1)}, age ${(median.reading.grade + 5).toFixed(0)}.`);
  console.log(
    `The five hardest: ${all
      .slice(0, 5)
      .map(({ name }) => name)
      .join(', ')}.`,
  );
}
