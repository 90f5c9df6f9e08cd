import { isHand, type Surface, SURFACES } from '../sticking/limbs.ts';
import { isObject, list, must, oneOf, whole } from '../check.ts';
import type { Limb } from '../sticking/types.ts';
import type { Stroke } from '../timeline/types.ts';

/** What a stroke must be; every key that is given must hold. */
export interface StrokeTest {
  /** A grace note, or none. */
  grace?: boolean;
  /** A primary with grace notes, or without. */
  flammed?: boolean;
  accent?: boolean;
  ghost?: boolean;
  /** One stroke of a diddle. */
  diddle?: boolean;
  /** A main stroke of a hand that is neither accented, ghosted nor flammed. */
  tap?: boolean;
  limb?: Limb;
  /** The first, the last or the nth main stroke of its cell, counted from 1. */
  place?: 'first' | 'last' | number;
}

/** Strokes that pass a test go to a surface, or one after another round a list of them. */
export interface OrchestrationRule {
  when: StrokeTest;
  to: Surface | readonly Surface[];
}

/** A stroke and whether its surface was written, which only these rules ask. */
export interface Placed {
  stroke: Stroke;
  written: boolean;
}

interface CellPlace {
  nth: number;
  of: number;
}

function passes(stroke: Stroke, place: CellPlace, test: StrokeTest): boolean {
  const grace = stroke.kind === 'grace';
  const hand = isHand(stroke.limb);
  const flammed = stroke.graces.length > 0;
  const is: Required<Omit<StrokeTest, 'limb' | 'place'>> = {
    grace,
    flammed,
    accent: stroke.accent,
    ghost: stroke.ghost,
    diddle: stroke.kind === 'diddle',
    tap: hand && !grace && !flammed && !stroke.accent && !stroke.ghost,
  };
  return (
    (Object.keys(is) as (keyof typeof is)[]).every((key) => test[key] === undefined || test[key] === is[key]) &&
    (test.limb === undefined || test.limb === stroke.limb) &&
    (test.place === undefined || (!grace && atPlace(place, test.place)))
  );
}

const atPlace = ({ nth, of }: CellPlace, place: 'first' | 'last' | number): boolean =>
  nth === (place === 'first' ? 1 : place === 'last' ? of : place);

/** Which main stroke of its cell each stroke is. */
function cellPlaces(strokes: Stroke[]): Map<string, CellPlace> {
  const sizes = new Map<number, number>();
  const main = strokes.filter((s) => s.kind !== 'grace');
  const nth = main.map((s) => {
    sizes.set(s.cell, (sizes.get(s.cell) ?? 0) + 1);
    return sizes.get(s.cell)!;
  });
  return new Map(main.map((s, i) => [s.id, { nth: nth[i], of: sizes.get(s.cell)! }]));
}

const TESTS = ['grace', 'flammed', 'accent', 'ghost', 'diddle', 'tap', 'limb', 'place'];

const PLACES = ['first', 'last'];

function checkRule(rule: OrchestrationRule): void {
  must(isObject(rule) && isObject(rule.when), 'rule', rule, 'what a stroke must be and where it goes');
  const { when, to } = rule;
  for (const key of Object.keys(when)) oneOf('what a rule asks for', key, TESTS);
  if (typeof when.place === 'number') whole('place', when.place, 1);
  else if (when.place !== undefined) oneOf('place', when.place, PLACES);
  const surfaces = [to].flat();
  must(surfaces.length > 0, 'surfaces of a rule', 'none', 'at least one');
  for (const surface of surfaces) oneOf('surface', surface, SURFACES);
}

/** Moves strokes by rules; written surfaces stay, and the last rule that fits wins. Throws RangeError for no surface. */
export function applyOrchestration(placed: Placed[], rules: readonly OrchestrationRule[]): Stroke[] {
  list('orchestration', rules, 'rules');
  rules.forEach(checkRule);
  if (rules.length === 0) return placed.map(({ stroke }) => stroke);
  const places = cellPlaces(placed.map((p) => p.stroke));
  const turns = rules.map(() => 0);
  return placed.map(({ stroke, written }) => {
    const place = places.get(stroke.id) ?? { nth: 0, of: 0 };
    const rule = written ? -1 : rules.findLastIndex((r) => passes(stroke, place, r.when));
    if (rule < 0) return stroke;
    const list = [rules[rule].to].flat();
    return { ...stroke, surface: list[turns[rule]++ % list.length] };
  });
}

/**
 * Rules that keep hands from crossing on a kit set up for a right lead: what the left hand moves goes to the high tom,
 * what the right hand moves goes to the floor (common practice).
 */
export const ORCHESTRATIONS: Record<string, OrchestrationRule[]> = {
  'grace notes on the high tom': [{ when: { grace: true, limb: 'L' }, to: 'tom1' }],
  'accents on the floor': [{ when: { accent: true, limb: 'R' }, to: 'floor' }],
  'accents round the toms': [{ when: { accent: true }, to: ['tom1', 'tom2', 'floor'] }],
};
