/** The list of exercises as it stands in the page: what its rows hold, and which of them are shown. */
import type { FilterRow } from '../../src/curriculum/exercise-filter.ts';

/** The rows of a page and the headings over them. */
export interface ExerciseList {
  rows: FilterRow[];
  /** Shows these rows and no others; a heading with none left goes with them. */
  show(shown: readonly boolean[]): void;
}

/** Reads the list once; showing moves nothing, it only hides. */
export function readList(page: ParentNode): ExerciseList {
  const items = [...page.querySelectorAll<HTMLElement>('[data-exercise]')];
  const groups = [...page.querySelectorAll<HTMLElement>('[data-group]')].map((group) => ({
    group,
    places: items.flatMap((item, place) => (group.contains(item) ? place : [])),
  }));
  return {
    rows: items.map(rowOf),
    show: (shown) => {
      items.forEach((item, place) => (item.hidden = !shown[place]));
      groups.forEach(({ group, places }) => (group.hidden = !places.some((place) => shown[place])));
    },
  };
}

function rowOf({ dataset }: HTMLElement): FilterRow {
  const [from, to] = (dataset.tempo ?? '').split(' ').map(Number);
  return { facts: new Set((dataset.has ?? '').split(' ')), from, to };
}
