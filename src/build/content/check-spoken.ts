import { partNumbers } from './check-course.ts';
import type { Library } from './library.ts';

const PART = /\bPart (\d+)\b/g;

/** Parts that the text of a lesson speaks of and nobody finds: the school hides them, or they are nowhere. */
export function checkSpokenParts(library: Library): void {
  const { site, course } = library;
  if (!site?.data || !course?.data) return;
  const hidden = site.data.hide.parts;
  const shown = partNumbers(library).filter((number) => !hidden.includes(number));
  for (const { file, lesson, data } of library.lessons) {
    // Who reads a hidden lesson has come by a link of their own.
    if (!lesson || !data || hidden.includes(data.part)) continue;
    lesson.text.split('\n').forEach((line, index) => {
      for (const { 1: number, index: at } of line.matchAll(PART))
        if (!shown.includes(Number(number)))
          library.warnings.push({
            file,
            line: index + 1,
            column: at + 1,
            message: `the text speaks of Part ${number}, which is not shown`,
          });
    });
  }
}
