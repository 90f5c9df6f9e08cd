import type { Seconds } from '../../core/index.ts';
import { sequenceOf, type Sequence, type Note } from '../sequence/sequence.ts';
import type { PlayRequest, Position } from '../types.ts';
import { spliceAtEnd, findSplice, slotsAhead, type Splice } from './splice.ts';
import { positionIn } from './position.ts';
import { firstMoment, eventMoment, holds, openingPass, SAME, passAfter, type ScheduledPass } from './passes.ts';

/** A note that was handed to an instrument and may still be taken back. */
export interface ScheduledNote {
  cancel(): void;
}

/** What makes the sounds: a clock, and a way to have a note sound at a time on it. */
export interface Instrument {
  now(): Seconds;
  /** `round` counts the passes from 0. */
  trigger(note: Note, when: Seconds, round: number): ScheduledNote;
}

/** From the press to the first note: enough for the audio thread to be told in time. */
const START_GAP: Seconds = 0.2;
/** What is nearer than this is left as it is when the request changes: it may be on its way to the loudspeaker. */
const KEPT: Seconds = 0.06;
/** How far back positions can be asked for: longer than a loudspeaker lags. */
const REMEMBERED: Seconds = 2;
/** Passes are known this far beyond the notes scheduled: longer than any figure of grace notes, or a beat at tempo 30. */
const PASSES_AHEAD: Seconds = 8;
/** What a stalled page could not schedule in time is left out rather than played late. */
const TOO_LATE: Seconds = 0.005;

interface Pending {
  note: ScheduledNote;
  when: Seconds;
  anchor: Seconds;
}

/** Schedules the notes of a sequence ahead of time and keeps the place when the sequence changes. Knows no audio interface. */
export class Scheduler {
  readonly #instrument: Instrument;
  #passes: ScheduledPass[] = [];
  #pending: Pending[] = [];

  constructor(instrument: Instrument) {
    this.#instrument = instrument;
  }

  /** Begins a request as soon as can be. */
  start(request: PlayRequest): void {
    const sequence = sequenceOf(request);
    this.#passes = [openingPass(sequence, this.#instrument.now() + START_GAP - firstMoment(sequence))];
  }

  /** Schedules everything that sounds within so many seconds from now. To be called again and again. */
  scheduleAhead(ahead: Seconds): void {
    const now = this.#instrument.now();
    this.#addPasses(now + ahead + PASSES_AHEAD);
    for (const pass of this.#passes) this.#scheduleFrom(pass, now, now + ahead);
    this.#forget(now);
  }

  /** Goes on from the same musical place as the new request has it; what was scheduled for later is taken back. */
  change(request: PlayRequest): void {
    this.#addPasses(this.#instrument.now() + PASSES_AHEAD);
    const splice = this.#spliceFor(request);
    if (!splice) return;
    this.#cancelFrom(splice.moment);
    splice.old.until = splice.moment;
    this.#passes = [...this.#passes.slice(0, this.#passes.indexOf(splice.old) + 1), splice.next];
  }

  /** What sounds at a moment of the instrument's time. */
  positionAt(moment: Seconds): Position | undefined {
    return positionIn(this.#passes, moment);
  }

  /** When everything is over; undefined where it goes round for ever. */
  get end(): Seconds | undefined {
    const last = this.#passes.at(-1);
    return last && !last.sequence.request.loop ? last.until : undefined;
  }

  #addPasses(moment: Seconds): void {
    for (let last = this.#passes.at(-1); last && last.until < moment; last = this.#passes.at(-1)) {
      const next = passAfter(last);
      if (!next) return;
      this.#passes.push(next);
    }
  }

  #scheduleFrom(pass: ScheduledPass, now: Seconds, horizon: Seconds): void {
    const { events } = pass.times;
    for (; pass.next < events.length && pass.start + events[pass.next].seconds < horizon; pass.next += 1) {
      const event = events[pass.next];
      const when = eventMoment(pass, event);
      if (!holds(pass, event) || when < now - TOO_LATE) continue;
      const note = this.#instrument.trigger(event.note, when, pass.number - 1);
      this.#pending.push({ note, when, anchor: pass.start + event.anchor });
    }
  }

  #cancelFrom(moment: Seconds): void {
    const isLater = ({ anchor }: Pending): boolean => anchor >= moment - SAME;
    for (const { note } of this.#pending.filter(isLater)) note.cancel();
    this.#pending = this.#pending.filter((one) => !isLater(one));
  }

  #forget(now: Seconds): void {
    this.#pending = this.#pending.filter(({ when }) => when > now - REMEMBERED);
    this.#passes = this.#passes.filter(({ until }, i, { length }) => i === length - 1 || until > now - REMEMBERED);
  }

  #spliceFor(request: PlayRequest): Splice | undefined {
    const now = this.#instrument.now();
    const [next] = slotsAhead(this.#passes, now);
    const sequence = sequenceOf(next?.slot.phase === 'count-in' ? { ...request, countIn: true } : request);
    const seam = now + KEPT + this.#longestFigure(sequence);
    return findSplice(this.#passes, sequence, seam) ?? this.#afterTheEnd(sequence, now);
  }

  /** No figure of the old sequence may have begun at the seam, and none of the new one may be too late for it. */
  #longestFigure(sequence: Sequence): Seconds {
    return Math.max(
      ...[sequence, ...this.#passes.map((pass) => pass.sequence)].flatMap(({ first, again }) => [
        first.graceLead,
        again.graceLead,
      ]),
    );
  }

  #afterTheEnd(sequence: Sequence, now: Seconds): Splice | undefined {
    const last = this.#passes.at(-1);
    return last && last.until > now + KEPT ? spliceAtEnd(last, sequence) : undefined;
  }
}
