import fc, { type Arbitrary } from 'fast-check';
import {
  LIMITS,
  printSticking,
  slotsOf,
  SURFACES,
  type Chord,
  type GroupItem,
  type Hand,
  type Item,
  type SlotItem,
  type Sticking,
  type StrokeText,
} from '../../src/core/index.ts';

/** A third of the runs where time is short, ten times as many with LONG. */
export const runs = (n: number): { numRuns: number } => ({ numRuns: process.env.LONG ? 10 * n : Math.ceil(n / 3) });

const surface = fc.option(fc.constantFrom(...SURFACES), { nil: undefined, freq: 3 });
const hand = fc.constantFrom<Hand>('R', 'L');
const other = (h: Hand): Hand => (h === 'R' ? 'L' : 'R');
/** Drops the keys that are undefined: a sticking has a key only where something was written. */
const tidy = <T extends object>(o: T): T =>
  Object.fromEntries(Object.entries(o).filter(([, v]) => v !== undefined)) as T;

const grace = fc.record({ hand, surface }).map(tidy);
const dynamic = fc.constantFrom<Partial<StrokeText>>({}, {}, {}, { accent: '>' }, { accent: '^' }, { ghost: true });

/** A hand stroke; its last grace note, if it has any, is by the other hand. */
function handStroke(limb: Hand, graces: boolean): Arbitrary<StrokeText> {
  return fc
    .record({
      before: graces ? fc.array(grace, { maxLength: 2 }) : fc.constant([]),
      last: graces
        ? fc.option(
            surface.map((s) => tidy({ hand: other(limb), surface: s })),
            { nil: undefined, freq: 2 },
          )
        : fc.constant(undefined),
      buzz: fc.constantFrom(undefined, undefined, undefined, true as const),
      surface,
      dynamic,
    })
    .map(({ before, last, buzz, surface: at, dynamic: how }) =>
      tidy({ limb, ...(last ? { graces: [...before, last] } : {}), buzz, surface: at, ...how }),
    );
}

const footStroke = (limb: 'K' | 'H'): Arbitrary<StrokeText> =>
  fc.record({ surface, dynamic }).map(({ surface: at, dynamic: how }) => tidy({ limb, surface: at, ...how }));

const feetChord: Arbitrary<Chord> = fc
  .tuple(fc.option(footStroke('K')), fc.option(footStroke('H')))
  .map((pair) => pair.filter((s) => s !== null));

/** A chord of any limbs, never empty. */
const chord: Arbitrary<Chord> = fc.tuple(fc.constantFrom('R', 'L', 'both', 'none'), feetChord).chain(([who, feet]) => {
  if (who === 'none') return fc.constant(feet);
  if (who === 'both') return fc.tuple(handStroke('R', false), handStroke('L', false)).map((two) => [...two, ...feet]);
  return handStroke(who as Hand, true).map((one) => [one, ...feet]);
});

const shared = (part: Arbitrary<Chord>): Arbitrary<SlotItem> =>
  fc
    .array(part, { minLength: 1, maxLength: 4 })
    .map((parts) => ({ kind: 'slot', parts: parts.every((p) => p.length === 0) ? [[]] : parts }));

/** One slot that is not a hold. */
export const slot: Arbitrary<SlotItem> = shared(
  fc.oneof({ weight: 4, arbitrary: chord }, { weight: 1, arbitrary: fc.constant<Chord>([]) }),
);
const feetSlot: Arbitrary<SlotItem> = shared(feetChord);

const rings = (item: Item | undefined): boolean =>
  item?.kind === 'hold' || (item?.kind === 'slot' && item.parts[item.parts.length - 1].length > 0);

/** Turns the slots that a coin marks into holds, where a stroke rings. */
function withHolds(slots: SlotItem[], coins: boolean[]): Item[] {
  const line: Item[] = [];
  slots.forEach((item, i) => line.push(coins[i] && rings(line[i - 1]) ? { kind: 'hold' } : item));
  return line;
}

/** A line of a few kinds of slot, because making each anew takes long; holds where they may stand. */
const line = (one: Arbitrary<SlotItem>, length: number): Arbitrary<Item[]> =>
  fc
    .tuple(
      fc.array(one, { minLength: 1, maxLength: Math.min(6, length) }),
      fc.array(fc.nat({ max: 59 }), { minLength: length, maxLength: length }),
    )
    .map(([kinds, picks]) =>
      withHolds(
        picks.map((pick) => kinds[pick % kinds.length]),
        picks.map((pick) => pick >= 48),
      ),
    );

const shortLine = fc.integer({ min: 1, max: 6 }).chain((n) => line(slot, n));
const count = fc.integer({ min: 1, max: 5 });
const inner: Arbitrary<GroupItem> = fc.record({ kind: fc.constant('group' as const), items: shortLine, count });
const group: Arbitrary<GroupItem> = fc.record({
  kind: fc.constant('group' as const),
  items: fc
    .array(
      fc.oneof(
        shortLine,
        inner.map((g): Item[] => [g]),
      ),
      { minLength: 1, maxLength: 3 },
    )
    .map((all) => all.flat()),
  count,
});

/** Text without heads: loose slots and groups, up to two deep. */
const free: Arbitrary<Sticking> = fc
  .array(
    fc.oneof(
      shortLine,
      group.map((g): Item[] => [g]),
    ),
    { minLength: 1, maxLength: 4 },
  )
  .map((all) => ({ hands: all.flat() }));

export const meter = fc.oneof(
  fc.tuple(fc.integer({ min: 1, max: 15 }), fc.constantFrom(2, 4, 8, 16)).map(([n, d]) => `${n}/${d}`),
  fc.constantFrom('2+2+3/8', '3+2/4', '3+3+2/8', '2+3/16'),
);
export const grid = fc.integer({ min: 1, max: 8 });

/** A bar with its head and, by a coin, a bar line before the next. */
const bar: Arbitrary<Item[]> = fc
  .tuple(fc.constantFrom('1/4', '2/4', '3/8', '6/8', '2+3/16', '1/2'), fc.integer({ min: 1, max: 4 }), fc.boolean())
  .chain(([m, g, closed]) =>
    line(slot, slotsOf(m, g)).map((slots): Item[] => [
      { kind: 'head', meter: m, grid: g },
      ...slots,
      ...(closed ? [{ kind: 'bar' } as const] : []),
    ]),
  );
const headed: Arbitrary<Sticking> = fc
  .array(bar, { minLength: 1, maxLength: 3 })
  .map((bars) => ({ hands: bars.flat() }));

/** Two lines: hands without feet, and feet under them. */
const handsOnly = fc
  .constantFrom<Hand>('R', 'L')
  .chain((limb) => handStroke(limb, true))
  .map((s): Chord => [s]);
const twoLines: Arbitrary<Sticking> = fc
  .integer({ min: 1, max: 12 })
  .chain((n) => fc.record({ hands: line(shared(handsOnly), n), feet: line(feetSlot, n) }));

/** Any sticking that the grammar can write. */
export const sticking: Arbitrary<Sticking> = fc
  .oneof(free, headed, twoLines)
  .filter((s) => printSticking(s).length <= LIMITS.characters);

/** Slots that fill so many places, each a stroke or a rest, holds where they may stand. */
export const slots = (n: number): Arbitrary<Item[]> => line(slot, n);

/** Text made of the letters of the notation, mostly wrong. */
export const nearText = fc
  .array(
    fc.constantFrom(
      ...'RLKHrl-_|+>^()z@:{}[]/ \n\t0123456789',
      'snare',
      'feet:',
      '[4/4:4]',
      '{R L}2',
      '😀',
      'é',
      '\u2028',
    ),
    {
      maxLength: 40,
    },
  )
  .map((pieces) => pieces.join(''));
