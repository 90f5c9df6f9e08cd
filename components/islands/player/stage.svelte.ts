/** What one player shows: light and playhead, the letters of the lead, bars that are drawn on request. */
import { untrack } from 'svelte';
import type { Position } from '../../../src/audio/index.ts';
import { playerLabels } from '../../../src/words/player.ts';
import { draw, reread } from './drawings.ts';
import { joinFigure, type FigureView } from './figure.ts';
import { everyFrame, showPosition, ticksOf } from './follow.ts';
import type { Session } from './session.svelte.ts';

/** What stands on a player's stage. */
export type Stage = ReturnType<typeof createStage>;

/** Prepares the stage of a session; `join` finds the figure once the player is in its place. */
export function createStage(session: Session) {
  const labels = playerLabels(session.props.barWord);
  let figure = $state.raw<FigureView | undefined>();
  /** Counts the drawings, so that light, letters and heights know of a new one. */
  let drawn = $state.raw(0);
  let note = $state.raw('');
  let at = $state.raw<{ count: string; phase?: Position['phase'] }>({ count: '' });

  const isNew = () => (drawn = untrack(() => drawn) + 1);

  /** Waits for a drawing; where another one is wanted meanwhile, it is dropped. */
  function whenDrawn<T>(drawing: Promise<T>, put: (drawing: T) => void): () => void {
    let wanted = true;
    const place = (drawing: T) => {
      if (!wanted) return;
      put(drawing);
      note = '';
      isNew();
    };
    drawing.then(place, () => wanted && (note = labels.notEngraved));
    return () => (wanted = false);
  }

  const ready = $derived(figure && session.touched && session.engine ? figure : undefined);
  const written = $derived(session.site.flams !== 'grace');
  const checked = $derived(session.site.check > 0);
  const flams = $derived(session.site.flams);

  // Written-out flams are another score; the page's own is kept for when it is wanted again. A lead is only letters.
  $effect(() => {
    const [here, timeline] = [ready, flams && untrack(() => session.timeline)];
    if (!here || !timeline) return;
    if (written) return whenDrawn(draw(timeline, session.props), here.setScore);
    here.setScore(undefined);
    isNew();
  });

  $effect(() => {
    const [here, check] = [ready, untrack(() => session.check)];
    if (!here || !check) return;
    if (!checked) return here.setCheck(undefined, '');
    const bare = { ...session.props, names: undefined };
    return whenDrawn(draw(check, bare), (drawing) => here.setCheck(drawing, labels.checkBar));
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
    const [here, lead, timeline] = [figure, session.lead, session.timeline];
    if (!here || !timeline || lead === described) return;
    described = lead;
    return whenDrawn(reread(timeline, session.props), here.describe);
  });

  $effect(() => {
    const { sounding, timeline, check } = session;
    const here = figure;
    if (!here || !sounding || !timeline || !check || drawn < 0) return;
    const ticks = { pattern: ticksOf(timeline), check: ticksOf(check) };
    const stop = everyFrame(session.position, (position) => {
      showPosition(here, position, ticks);
      at = counted(position, session.site.counts);
    });
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
    join: (root: Element) => (figure = joinFigure(root)),
  };
}

/** The count-in is always counted; the rest where it is wanted. */
function counted(position: Position | undefined, always: boolean) {
  if (!position) return { count: '' };
  const { count, phase } = position;
  return { count: always || phase === 'count-in' ? count : '', phase };
}
