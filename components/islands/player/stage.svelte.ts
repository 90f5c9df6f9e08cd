/** What one player shows: light and playhead, the letters of the lead, bars that are drawn on request. */
import { untrack } from 'svelte';
import type { Position } from '../../../src/audio/index.ts';
import { PLAYER_LABELS as labels } from '../../../src/words/player.ts';
import type { Session } from './session.svelte.ts';

/** A drawing that takes no longer than this needs no words. */
const PATIENCE_MS = 300;

/** What stands on a player's stage. */
export type Stage = ReturnType<typeof createStage>;

/** Prepares the stage of a session; `join` finds the figure once the player is in its place. */
export function createStage(session: Session) {
  let root = $state.raw<Element | undefined>();
  /** Counts the drawings, so that light, letters and heights know of a new one. */
  let drawn = $state.raw(0);
  let note = $state.raw('');
  let at = $state.raw<{ count: string; phase?: Position['phase'] }>({ count: '' });

  /** What there is to draw; an effect that asks does not run again when it changes. */
  const asItIs = () => untrack(() => ({ engine: session.engine, timeline: session.timeline, check: session.check }));
  const isNew = () => (drawn = untrack(() => drawn) + 1);

  /** Waits for a drawing; where another one is wanted meanwhile, it is dropped. */
  function whenDrawn<T>(drawing: Promise<T>, put: (drawing: T) => void): () => void {
    let wanted = true;
    const patience = setTimeout(() => (note = labels.engraving), PATIENCE_MS);
    const place = (drawing: T) => {
      if (!wanted) return;
      end();
      put(drawing);
      isNew();
    };
    const end = () => {
      wanted = false;
      clearTimeout(patience);
      note = '';
    };
    drawing.then(place, () => {
      if (!wanted) return;
      end();
      note = labels.notEngraved;
    });
    return end;
  }

  const figure = $derived(root && session.engine?.joinFigure(root));
  const touched = $derived(session.touched ? figure : undefined);
  const flams = $derived(session.site.flams);
  const checked = $derived(session.site.check > 0);

  // Written-out flams are another score; the page's own is kept for when it is wanted again. A lead is only letters.
  $effect(() => {
    const [here, written] = [touched, flams !== 'grace' && flams];
    const { engine, timeline } = asItIs();
    if (!here || !engine || !timeline) return;
    if (written) return whenDrawn(engine.draw(timeline, session.props), here.setScore);
    here.setScore(undefined);
    isNew();
  });

  $effect(() => {
    const [here, wanted] = [touched, checked];
    const { engine, check } = asItIs();
    if (!here || !engine || !check) return;
    if (!wanted) return here.setCheck(undefined, '');
    const bare = { ...session.props, names: undefined };
    return whenDrawn(engine.draw(check, bare), (drawing) => here.setCheck(drawing, labels.checkBar));
  });

  $effect(() => {
    const { engine, timeline, check } = session;
    if (!engine || !timeline || !check || drawn < 0) return;
    figure?.score?.write(engine.lettersOf(timeline));
    figure?.check?.write(engine.lettersOf(check));
    engine.drawHeights(figure?.score, session.site.heights && session.touched ? timeline : undefined);
  });

  // The words stay as the page has them until someone turns the lead.
  let described = session.leads[0];
  $effect(() => {
    const { engine, timeline, lead } = session;
    const here = figure;
    if (!here || !engine || !timeline || lead === described) return;
    return whenDrawn(engine.reread(timeline, session.props), (words) => {
      described = lead;
      here.describe(words);
    });
  });

  $effect(() => {
    const { engine, playback, timeline, check } = session;
    const here = figure;
    if (!here || !engine || !playback.active || !timeline || !check || drawn < 0) return;
    const ticks = { pattern: engine.ticksOf(timeline), check: engine.ticksOf(check) };
    const stop = engine.everyFrame(
      () => playback.position(),
      (position) => {
        engine.showPosition(here, position, ticks);
        at = counted(position, session.site.counts);
      },
    );
    return () => {
      stop();
      here.clear();
      at = { count: '' };
    };
  });

  return {
    get note() {
      return note;
    },
    /** What is counted now, and in what. */
    get at() {
      return at;
    },
    join: (element: Element) => (root = element),
  };
}

/** The count-in is always counted; the rest where it is wanted. */
function counted(position: Position | undefined, always: boolean) {
  if (!position) return { count: '' };
  const { count, phase } = position;
  return { count: always || phase === 'count-in' ? count : '', phase };
}
