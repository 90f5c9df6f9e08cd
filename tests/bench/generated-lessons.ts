import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const CONTENT = fileURLToPath(new URL('../../content', import.meta.url));

/** The first number that a school's own parts may have. */
const FIRST_PART = 20;
/** A folder begins with two digits, so a part has no more lessons than these can count. */
const A_PART = 99;

/** Where a lesson stands: the lessons of one part follow each other. */
const placeOf = (number: number) => ({
  part: FIRST_PART + Math.floor((number - 1) / A_PART),
  order: ((number - 1) % A_PART) + 1,
});
const WORDS =
  'hand stick stroke beat count slow even quiet loud early late accent bar slot grid cell lead left right foot rest tap fill groove turn wait listen repeat begin land'.split(
    ' ',
  );

/** A whole number below `of` that depends on a seed alone: Knuth's multiplicative hash. */
const pick = (seed: number, of: number): number => (Math.imul(seed + 1, 2654435761) >>> 9) % of;

/** A full bar of sixteenths that no other number gives: its first twelve hands are the number in binary. */
export function generatedBar(number: number): string {
  const hand = (slot: number) => ((slot < 12 ? (number >> slot) & 1 : pick(number * 16 + slot, 2)) ? 'R' : 'L');
  const accent = (slot: number) => (slot === 15 || pick(number * 31 + slot, 5) === 0 ? '>' : '');
  return Array.from({ length: 16 }, (_, slot) => accent(slot) + hand(slot)).join(' ');
}

function sentence(seed: number): string {
  const words = Array.from({ length: 8 + pick(seed, 8) }, (_, place) => WORDS[pick(seed * 17 + place, WORDS.length)]);
  return `${words[0][0].toUpperCase()}${words.join(' ').slice(1)}.`;
}

const paragraph = (seed: number): string =>
  Array.from({ length: 5 }, (_, place) => sentence(seed * 5 + place)).join(' ');

/** A lesson as a teacher's would be in size: two bars, some two hundred words, a question. */
export function generatedLesson(number: number): string {
  const { part, order } = placeOf(number);
  const [first, second] = [generatedBar(number * 2), generatedBar(number * 2 + 1)];
  return `---
id: generated-${number}
part: ${part}
order: ${order}
title: Lesson ${number} ${WORDS[pick(number, WORDS.length)]}
idea: ${sentence(number * 97)}
meter: 4/4
grid: 4
level: 1
tempo: { from: 60, to: 90 }
---

${paragraph(number * 3)}

<Bar id="first" sticking="${first}" meter="4/4" grid={4} />

${paragraph(number * 3 + 1)}

<Bar id="second" sticking="${second}" meter="4/4" grid={4} />

${paragraph(number * 3 + 2)}

<Question ask="How many strokes does the left hand play in the bar above?" from="strokes" of="left">
  Count them with the bar.
</Question>
`;
}

/** The course with so many more lessons, in parts of their own, as the `content` of a folder. */
export function layContent(root: string, lessons: number): void {
  const content = join(root, 'content');
  cpSync(CONTENT, content, { recursive: true });
  const site = join(content, 'site.yaml');
  const parts = Array.from({ length: placeOf(lessons).part - FIRST_PART + 1 }, (_, index) => FIRST_PART + index);
  const said = parts.map(
    (part) => `  - { number: ${part}, title: Generated ${part}, idea: Lessons made by the bench. }`,
  );
  writeFileSync(site, readFileSync(site, 'utf8').replace(/^parts: \[\]$/m, ['parts:', ...said].join('\n')));
  for (let number = 1; number <= lessons; number += 1) {
    const { part, order } = placeOf(number);
    const folder = join(content, `lessons/${part}-generated/${`${order}`.padStart(2, '0')}-generated-${number}`);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'index.mdx'), generatedLesson(number));
  }
}
