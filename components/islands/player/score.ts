import type { Ticks } from '../../../src/core/index.ts';

/** What a score is told to show. */
export interface Moment {
  tick: Ticks;
  /** Ids of the strokes that sound now. */
  lit: readonly string[];
}

/** One drawn score of a figure, joined to the sound by the ids of its strokes. */
export interface ScoreView {
  readonly element: HTMLElement;
  /** Lights what sounds and moves the playhead. */
  show(moment: Moment): void;
  /** No light, no playhead. */
  clear(): void;
  /** Writes other letters under the same strokes. */
  write(letters: ReadonlyMap<string, string>): void;
  /** The beat fragments in order of time. */
  readonly beats: readonly Beat[];
}

/** One beat of a score; time runs evenly from left to right within it. */
export interface Beat {
  element: SVGSVGElement;
  tick: Ticks;
  ticks: Ticks;
  /** Where its first tick stands, as a part of the fragment's width; its ticks take as much as the whole width. */
  from: number;
}

/** How a score comes into view when the light reaches a line that is out of it. */
export type Reveal = (beat: Beat) => void;

/** Joins a drawn score; `reveal` is called whenever the beat that follows stands on another line. */
export function scoreView(element: HTMLElement, reveal: Reveal): ScoreView {
  const strokes = groupById(element);
  const counts = countMarks(element);
  const beats = readBeats(element);
  const light = lamp();
  const head = playhead(element.querySelector<HTMLElement>('.lines') ?? element);
  let current: Beat | undefined;

  const enter = (beat: Beat) => {
    current = beat;
    const next = beats[(beats.indexOf(beat) + 1) % beats.length];
    if (next && lineOf(next) !== lineOf(beat)) reveal(next);
  };

  return {
    element,
    beats,
    show({ tick, lit }) {
      const beat = beatAt(beats, tick);
      if (beat && beat !== current) enter(beat);
      light([
        ...lit.flatMap((id) => strokes.get(id) ?? []),
        ...counts.filter((mark) => mark.holds(tick)).map((mark) => mark.element),
      ]);
      if (beat) head.move(beat, tick);
    },
    clear() {
      current = undefined;
      light([]);
      head.hide();
    },
    write: (letters) => writeLetters(element, letters),
  };
}

function groupById(score: HTMLElement): Map<string, Element[]> {
  const groups = new Map<string, Element[]>();
  score.querySelectorAll<SVGElement>('[data-stroke], [data-letter]').forEach((element) => {
    const id = element.dataset.stroke ?? element.dataset.letter ?? '';
    groups.set(id, [...(groups.get(id) ?? []), element]);
  });
  return groups;
}

interface CountMark {
  element: Element;
  holds(tick: Ticks): boolean;
}

/** A count holds until the next one. */
function countMarks(score: HTMLElement): CountMark[] {
  const all = [...score.querySelectorAll<SVGElement>('[data-count]')];
  const from = all.map((element) => Number(element.dataset.count));
  return all.map((element, index) => ({
    element,
    holds: (tick) => tick >= from[index] && tick < (from[index + 1] ?? Infinity),
  }));
}

function readBeats(score: HTMLElement): Beat[] {
  return [...score.querySelectorAll<SVGSVGElement>('[data-ticks]')].map((element) => {
    const { tick, ticks, pad } = element.dataset;
    return { element, tick: Number(tick), ticks: Number(ticks), from: Number(pad) };
  });
}

function beatAt(beats: readonly Beat[], tick: Ticks): Beat | undefined {
  return beats.findLast((beat) => beat.tick <= tick) ?? beats[0];
}

/** Where a tick stands in a fragment, as a part of its width; it may be a little beyond. */
export const placeIn = (beat: Beat, tick: Ticks): number => beat.from + (tick - beat.tick) / beat.ticks;

const lineOf = (beat: Beat) => Math.round(beat.element.getBoundingClientRect().top);

/** Keeps a set of elements lit; touches only those that change. */
function lamp(): (elements: readonly Element[]) => void {
  let lit = new Set<Element>();
  return (elements) => {
    const next = new Set(elements);
    lit.forEach((element) => next.has(element) || element.classList.remove('on'));
    next.forEach((element) => lit.has(element) || element.classList.add('on'));
    lit = next;
  };
}

/** The straight line that runs with the sound. It stands behind the ink, so that no letter is hidden. */
function playhead(lines: HTMLElement) {
  let line: HTMLElement | undefined;
  const make = () => {
    const made = lines.ownerDocument.createElement('span');
    made.className = 'playhead';
    made.ariaHidden = 'true';
    return lines.appendChild(made);
  };
  return {
    move(beat: Beat, tick: Ticks) {
      line ??= make();
      const box = beat.element.getBoundingClientRect();
      const home = lines.getBoundingClientRect();
      const part = placeIn(beat, tick);
      line.style.height = `${box.height}px`;
      line.style.transform = `translate(${box.left - home.left + part * box.width}px, ${box.top - home.top}px)`;
    },
    hide() {
      line?.remove();
      line = undefined;
    },
  };
}

/** The letter alone is exchanged; what is drawn around it (a ghost's parentheses) stays. */
function writeLetters(score: HTMLElement, letters: ReadonlyMap<string, string>): void {
  score.querySelectorAll<SVGElement>('[data-letter]').forEach((element) => {
    const letter = letters.get(element.dataset.letter ?? '');
    if (letter !== undefined && element.textContent !== letter) element.textContent = letter;
  });
}
