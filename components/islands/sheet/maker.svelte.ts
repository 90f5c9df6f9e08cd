/** What a sheet knows and does: what is on it, how it stands in the address, the notation it has fetched. */
import { SvelteMap } from 'svelte/reactivity';
import { onSite } from '../../../src/words/site.ts';
import {
  LONGEST_ADDRESS,
  LONGEST_TITLE,
  moved,
  printSheet,
  readSheet,
  type Sheet,
} from '../../../src/formats/sheet.ts';
import { readExercise, type SheetExercise } from './facts.ts';

/** An exercise of the sheet: fetched, on its way, or not to be had. */
export type Fetched = SheetExercise | 'coming' | 'missing';

/** A sheet that is being made. */
export type Maker = ReturnType<typeof createMaker>;

/** Opens the sheet that the address describes; `known` are the ids of all exercises. */
export function createMaker(known: ReadonlySet<string>) {
  const asked = readSheet(location.search, (id) => known.has(id));
  let sheet = $state.raw(asked.sheet);
  const fetched = new SvelteMap<string, Fetched>();
  const whole = $derived(new URL(printSheet(sheet), location.origin + location.pathname).href);

  function change(part: Partial<Sheet>): void {
    sheet = { ...sheet, ...part };
    history.replaceState(history.state, '', location.pathname + printSheet(sheet));
    fetchAll();
  }

  function fetchAll(): void {
    for (const id of sheet.ids) if (!fetched.has(id)) void fetchOne(id);
  }

  async function fetchOne(id: string): Promise<void> {
    fetched.set(id, 'coming');
    fetched.set(id, (await exerciseOf(id)) ?? 'missing');
  }

  fetchAll();
  return {
    get sheet() {
      return sheet;
    },
    /** The whole address of the sheet as it is now. */
    get address() {
      return whole;
    },
    get tooLong() {
      return whole.length > LONGEST_ADDRESS;
    },
    unknown: asked.unknown,
    beyond: asked.beyond,
    /** Ids of the exercises in a state. */
    having: (state: 'coming' | 'missing') => sheet.ids.filter((id) => fetched.get(id) === state),
    exercise: (id: string): SheetExercise | undefined => {
      const one = fetched.get(id);
      return typeof one === 'object' ? one : undefined;
    },
    change,
    setTitle: (title: string) => change({ title: title.slice(0, LONGEST_TITLE) }),
    move: (id: string, by: -1 | 1) => change({ ids: moved(sheet.ids, id, by) }),
    remove: (id: string) => change({ ids: sheet.ids.filter((other) => other !== id) }),
    again(): void {
      for (const id of sheet.ids) if (fetched.get(id) === 'missing') void fetchOne(id);
    },
  };
}

/** Fetches an exercise from its page for frames; undefined where it does not arrive. */
async function exerciseOf(id: string): Promise<SheetExercise | undefined> {
  try {
    const answer = await fetch(onSite(`/embed/${id}/`));
    return answer.ok ? readExercise(await answer.text()) : undefined;
  } catch {
    return undefined;
  }
}
