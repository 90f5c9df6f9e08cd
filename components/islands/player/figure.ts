import type { Beat, ScoreView } from './score.ts';
import { scoreView } from './score.ts';

/** A drawing made in the browser: the score, and the outlines of glyphs that it uses. */
export interface Drawn {
  html: string;
  /** Symbols as SVG text; those the page has already are left out. */
  sprite: string;
}

/** The figure around a player: its score, the check bar and the words, which the page drew before the player came. */
export interface FigureView {
  /** The score as it stands now: the page's own, or one drawn since. */
  readonly score: ScoreView | undefined;
  /** The check bar's score, where it is drawn. */
  readonly check: ScoreView | undefined;
  /** Puts a drawn score in place of the page's own; undefined brings that back. */
  setScore(drawn: Drawn | undefined): void;
  /** Draws a check bar under the score, with its caption; undefined takes it away. */
  setCheck(drawn: Drawn | undefined, caption: string): void;
  /** Rewrites what a screen reader and the eye can read about the score. */
  describe(words: { label: string; reading: string }): void;
  clear(): void;
}

/** Joins the figure that `root` stands in; without one, nothing is shown and nothing fails. */
export function joinFigure(root: Element): FigureView {
  const figure = root.closest('figure');
  const own = figure?.querySelector<HTMLElement>('.score');
  let score = own ? scoreView(own, reveal) : undefined;
  let check: ScoreView | undefined;

  const replace = (next: HTMLElement) => {
    score?.clear();
    score?.element.replaceWith(next);
    score = scoreView(next, reveal);
  };

  return {
    get score() {
      return score;
    },
    get check() {
      return check;
    },
    setScore(drawn) {
      if (!own || !score) return;
      if (drawn) replace(named(build(drawn), score.element));
      else if (score.element !== own) replace(named(own, score.element));
    },
    setCheck(drawn, caption) {
      check?.element.parentElement?.remove();
      check = undefined;
      if (!drawn || !score) return;
      const frame = captioned(build(drawn), caption);
      score.element.before(frame);
      const element = frame.querySelector<HTMLElement>('.score');
      check = element ? scoreView(element, reveal) : undefined;
    },
    describe({ label, reading }) {
      score?.element.setAttribute('aria-label', label);
      const words = figure?.querySelector('[data-reading]');
      if (words) words.textContent = reading;
    },
    clear() {
      score?.clear();
      check?.clear();
    },
  };
}

/** The line that comes next is brought into view before the light is there. */
function reveal({ element }: Beat): void {
  const { top, bottom } = element.getBoundingClientRect();
  if (top >= 0 && bottom <= innerHeight) return;
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  element.scrollIntoView({ block: 'center', behavior: still ? 'instant' : 'smooth' });
}

function build({ html, sprite }: Drawn): HTMLElement {
  if (sprite) document.body.insertAdjacentHTML('beforeend', sprite);
  const holder = document.createElement('template');
  holder.innerHTML = html;
  const score = holder.content.querySelector<HTMLElement>('.score');
  if (!score) throw new RangeError(`no score in "${html.slice(0, 60)}"`);
  return score;
}

/** What names a score to a screen reader goes with its place in the page. */
function named(next: HTMLElement, before: HTMLElement): HTMLElement {
  for (const name of ['role', 'aria-label', 'aria-describedby']) {
    const value = before.getAttribute(name);
    if (value !== null) next.setAttribute(name, value);
  }
  return next;
}

function captioned(score: HTMLElement, caption: string): HTMLElement {
  const frame = document.createElement('div');
  frame.className = 'check-bar';
  const words = document.createElement('p');
  words.textContent = caption;
  score.setAttribute('role', 'img');
  score.setAttribute('aria-label', caption);
  frame.append(words, score);
  return frame;
}
