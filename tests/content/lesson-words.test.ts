import { expect, test } from 'vitest';
import { lessonText } from '../../src/build/new/templates.ts';
import { lessonWords } from '../../src/catalogue/lesson-words.ts';

test('an attribute is found behind an accent, over several lines and in any kind of quotes', () => {
  const body = `<Bar\n  sticking="{>lR LL R}4" meter='4/4'\n  grid={3}\n  name={"flam drag"} />\n\n<Counts meter="6/8" grid={3} />`;
  const { bars, counts } = lessonWords({ body });
  expect(bars).toEqual([{ sticking: '{>lR LL R}4', meter: '4/4', grid: 3, name: 'flam drag' }]);
  expect(counts).toEqual([{ meter: '6/8', grid: 3 }]);
});

test('exercises stand in the order of the text; what stands in a comment is no part of a lesson', () => {
  const body = 'Text <Exercise id="slow" /> and <Exercise\n id="fast" />. {/* Try <Exercise id="a" />. */}';
  expect(lessonWords({ body }).exercises).toEqual(['slow', 'fast']);
  expect(lessonWords({ body: lessonText({ id: 'new', part: 1, order: 1, title: 'New' }) }).exercises).toEqual([]);
});
