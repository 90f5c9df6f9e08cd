/** What a sheet shows of an exercise, and how it is read from the exercise's page for frames. */

/** What is said beside the notation; plain JSON, written into the page when the site is built. */
export interface SheetFacts {
  title: string;
  purpose: string;
  /** Beats a minute: where to begin, where to arrive. */
  tempo: { from: number; to: number };
  enough: string;
  meter?: string | undefined;
  /** The sticking, or the cells with theirs. */
  sticking: string;
}

/** An exercise as it stands on a sheet. */
export interface SheetExercise {
  facts: SheetFacts;
  score: HTMLElement;
  /** Outlines of the music font that the score uses. */
  glyphs: SVGElement[];
}

/** Names that lead to elements of the page the score comes from. */
const LEFT_BEHIND = ['aria-describedby', 'tabindex'];

/** Reads an exercise from its page for frames; undefined where that is not one. */
export function readExercise(html: string): SheetExercise | undefined {
  // Styles of that page are nothing to this one, whose content policy would complain of them. A style may hold a `<`, as
  // in (width<40em).
  const page = new DOMParser().parseFromString(html.replace(/<style[^>]*>.*?<\/style>/gs, ''), 'text/html');
  const place = page.querySelector<HTMLElement>('[data-exercise]');
  const score = place?.querySelector<HTMLElement>('.bar-figure .score');
  if (!place || !score) return undefined;
  LEFT_BEHIND.forEach((name) => score.removeAttribute(name));
  const facts = JSON.parse(place.dataset.exercise ?? '{}') as SheetFacts;
  return { facts, score, glyphs: [...place.querySelectorAll<SVGElement>('.glyphs [id]')] };
}

/** Puts into a sprite the outlines that it does not have yet. */
export function addGlyphs(sprite: Element, glyphs: readonly SVGElement[]): void {
  for (const glyph of glyphs) if (!sprite.querySelector(`#${CSS.escape(glyph.id)}`)) sprite.append(glyph);
}
