/** Boxes to tick in the list of exercises, and the bar that makes a sheet of what is ticked. */
import { openVisit } from '../../src/storage/index.ts';
import { tickedSays, tickName, TICKS } from '../../src/words/sheet.ts';
import { MOST, printSheet } from '../../src/formats/sheet.ts';

/** Puts a box before every exercise of a page; ticks live for the visit, whatever the list shows of them. */
export function offerTicks(page: Document, sheetAddress: string): void {
  const rows = [...page.querySelectorAll<HTMLElement>('li[data-exercise]')];
  const visit = openVisit();
  const bar = barOf(page);
  const boxes = new Map(rows.map((row) => [row.dataset.exercise!, boxIn(page, row)]));

  const show = () => {
    const ids = visit.ticked().filter((id) => boxes.has(id));
    boxes.forEach((box, id) => (box.checked = ids.includes(id)));
    bar.show(ids.length, sheetAddress + printSheet({ ids: ids.slice(0, MOST), title: '', counts: true, paper: 'a4' }));
  };
  boxes.forEach((box, id) =>
    box.addEventListener('change', () => {
      visit.tick(id, box.checked);
      show();
    }),
  );
  bar.onNone(() => {
    visit.untickAll();
    show();
    boxes.values().next().value?.focus();
  });
  show();
}

function boxIn(page: Document, row: HTMLElement): HTMLInputElement {
  const [label, box] = [page.createElement('label'), page.createElement('input')];
  label.className = 'tick screen-only';
  box.type = 'checkbox';
  box.setAttribute('aria-label', tickName(row.querySelector('.to')?.textContent.trim() ?? ''));
  // Where one left off is kept for the visit, not in the form of the page.
  box.autocomplete = 'off';
  label.append(box);
  row.prepend(label);
  return box;
}

function barOf(page: Document) {
  const bar = page.createElement('section');
  bar.className = 'ticked screen-only';
  bar.setAttribute('aria-label', TICKS.group);
  const [says, make, none] = [page.createElement('p'), page.createElement('a'), page.createElement('button')];
  says.setAttribute('role', 'status');
  make.className = 'button';
  make.textContent = TICKS.make;
  none.type = 'button';
  none.className = 'quiet';
  none.textContent = TICKS.none;
  bar.append(says, make, none);
  page.querySelector('main')?.append(bar);
  return {
    show(count: number, address: string) {
      bar.classList.toggle('empty', count === 0);
      says.textContent = count ? tickedSays(count, MOST) : '';
      make.href = address;
    },
    onNone: (untick: () => void) => none.addEventListener('click', untick),
  };
}
