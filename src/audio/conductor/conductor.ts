import type { Seconds } from '../../core/index.ts';
import { planOf, type Plan, type Sounding } from '../plan/plan.ts';
import type { PlayRequest, Position } from '../types.ts';
import { cutAtEnd, findCut, placesAhead, type Cut } from './cut.ts';
import { positionIn } from './position.ts';
import { firstMoment, hitMoment, holds, openingTurn, SAME, turnAfter, type Turn } from './turns.ts';

/** A sound that was ordered and may still be taken back. */
export interface Order {
  cancel(): void;
}

/** Who makes the sounds: a clock, and a way to order a sound for a time on it. */
export interface Desk {
  now(): Seconds;
  /** `round` counts the passes from 0. */
  strike(sound: Sounding, when: Seconds, round: number): Order;
}

/** From the press to the first sound: enough for the audio thread to be told in time. */
const START_GAP: Seconds = 0.2;
/** What is nearer than this is left as it is when the request changes: it may be on its way to the loudspeaker. */
const KEPT: Seconds = 0.06;
/** How far back positions can be asked for: longer than a loudspeaker lags. */
const REMEMBERED: Seconds = 2;
/** Passes are known this far beyond the sounds ordered: longer than any figure of grace notes, or a beat at tempo 30. */
const FORESEEN: Seconds = 8;
/** What a stalled page could not order in time is left out rather than played late. */
const TOO_LATE: Seconds = 0.005;

interface Ordered {
  order: Order;
  when: Seconds;
  home: Seconds;
}

/** Orders the sounds of a plan ahead of time and keeps the place when the plan changes. Knows no audio interface. */
export class Conductor {
  readonly #desk: Desk;
  #turns: Turn[] = [];
  #orders: Ordered[] = [];

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  /** Begins a request as soon as can be. */
  start(request: PlayRequest): void {
    const plan = planOf(request);
    this.#turns = [openingTurn(plan, this.#desk.now() + START_GAP - firstMoment(plan))];
  }

  /** Orders everything that sounds within so many seconds from now. To be called again and again. */
  pump(ahead: Seconds): void {
    const now = this.#desk.now();
    this.#foresee(now + ahead + FORESEEN);
    for (const turn of this.#turns) this.#orderFrom(turn, now, now + ahead);
    this.#forget(now);
  }

  /** Goes on from the same musical place as the new request has it; what was ordered for later is taken back. */
  change(request: PlayRequest): void {
    this.#foresee(this.#desk.now() + FORESEEN);
    const cut = this.#cutFor(request);
    if (!cut) return;
    this.#takeBack(cut.moment);
    cut.turn.until = cut.moment;
    this.#turns = [...this.#turns.slice(0, this.#turns.indexOf(cut.turn) + 1), cut.next];
  }

  /** What sounds at a moment of the desk's time. */
  positionAt(moment: Seconds): Position | undefined {
    return positionIn(this.#turns, moment);
  }

  /** When everything is over; undefined where it goes round for ever. */
  get end(): Seconds | undefined {
    const last = this.#turns.at(-1);
    return last && !last.plan.request.loop ? last.until : undefined;
  }

  #foresee(moment: Seconds): void {
    for (let last = this.#turns.at(-1); last && last.until < moment; last = this.#turns.at(-1)) {
      const next = turnAfter(last);
      if (!next) return;
      this.#turns.push(next);
    }
  }

  #orderFrom(turn: Turn, now: Seconds, horizon: Seconds): void {
    const { hits } = turn.pass;
    for (; turn.next < hits.length && turn.start + hits[turn.next].seconds < horizon; turn.next += 1) {
      const hit = hits[turn.next];
      const when = hitMoment(turn, hit);
      if (!holds(turn, hit) || when < now - TOO_LATE) continue;
      const order = this.#desk.strike(hit.sound, when, turn.number - 1);
      this.#orders.push({ order, when, home: turn.start + hit.home });
    }
  }

  #takeBack(moment: Seconds): void {
    const isLater = ({ home }: Ordered): boolean => home >= moment - SAME;
    for (const { order } of this.#orders.filter(isLater)) order.cancel();
    this.#orders = this.#orders.filter((ordered) => !isLater(ordered));
  }

  #forget(now: Seconds): void {
    this.#orders = this.#orders.filter(({ when }) => when > now - REMEMBERED);
    this.#turns = this.#turns.filter(({ until }, i, { length }) => i === length - 1 || until > now - REMEMBERED);
  }

  #cutFor(request: PlayRequest): Cut | undefined {
    const now = this.#desk.now();
    const [next] = placesAhead(this.#turns, now);
    const plan = planOf(next?.place.phase === 'count-in' ? { ...request, countIn: true } : request);
    const seam = now + KEPT + this.#longestFigure(plan);
    return findCut(this.#turns, plan, seam) ?? this.#afterTheEnd(plan, now);
  }

  /** No figure of the old plan may have begun at the seam, and none of the new one may be too late for it. */
  #longestFigure(plan: Plan): Seconds {
    return Math.max(...[plan, ...this.#turns.map((turn) => turn.plan)].flatMap((p) => [p.first.ahead, p.again.ahead]));
  }

  #afterTheEnd(plan: Plan, now: Seconds): Cut | undefined {
    const last = this.#turns.at(-1);
    return last && last.until > now + KEPT ? cutAtEnd(last, plan) : undefined;
  }
}
