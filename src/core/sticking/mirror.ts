import { isObject, must, oneOf } from '../check.ts';
import { checkSticking } from './check-sticking.ts';
import { type Chord, type Grace, type Item, type Limb, LIMITS, type Sticking, type StrokeText } from './types.ts';
import { printSticking } from './print.ts';
import { DEFAULT_SURFACE, isHand, LIMBS, otherHand, type Surface, SURFACES } from './limbs.ts';

/** Where each surface goes when the kit is turned round; surfaces left out stay. */
export type KitMap = Partial<Record<Surface, Surface>>;
type Kit = KitMap | ReadonlyMap<Surface, Surface>;

/** Chords in the order R L K H. */
export const sortChord = (chord: Chord): Chord =>
  [...chord].sort((a, b) => LIMBS.indexOf(a.limb) - LIMBS.indexOf(b.limb));

/** A surface that was not written stays unwritten where the kit's map leaves it alone. */
function moved(written: Surface | undefined, limb: Limb, kit: KitMap): { surface?: Surface } {
  const from = written ?? DEFAULT_SURFACE[limb];
  const to = kit[from] ?? from;
  return written === undefined && to === from ? {} : { surface: to };
}

const mirrorGrace = ({ hand }: Grace, surface: { surface?: Surface }): Grace => ({ hand: otherHand(hand), ...surface });

function mirrorStroke(stroke: StrokeText, kit: KitMap): StrokeText {
  const { surface, graces, limb, ...rest } = stroke;
  return {
    limb: isHand(limb) ? otherHand(limb) : limb,
    ...(graces ? { graces: graces.map((g) => mirrorGrace(g, moved(g.surface, g.hand, kit))) } : {}),
    ...moved(surface, limb, kit),
    ...rest,
  };
}

function mirrorItem(item: Item, kit: KitMap): Item {
  if (item.kind === 'group') return { ...item, items: item.items.map((i) => mirrorItem(i, kit)) };
  if (item.kind !== 'slot') return item;
  return { ...item, parts: item.parts.map((chord) => sortChord(chord.map((s) => mirrorStroke(s, kit)))) };
}

/**
 * The sticking for the other lead: hands exchanged, grace notes with them; surfaces stay, unless a map of the kit is given.
 * Throws RangeError for a map to what is no surface, and for one whose names are too long for a text.
 * @example
 * printSticking(mirror(parseSticking('>lR LL R').sticking)) // → '>rL RR L'
 */
export function mirror(sticking: Sticking, kit: Kit = {}): Sticking {
  checkSticking(sticking);
  const map = kitMap(kit);
  const turn = (items: Item[]): Item[] => items.map((item) => mirrorItem(item, map));
  const mirrored = { hands: turn(sticking.hands), ...(sticking.feet ? { feet: turn(sticking.feet) } : {}) };
  if (Object.keys(map).length > 0) checkLength(mirrored);
  return mirrored;
}

function kitMap(kit: Kit): KitMap {
  must(kit instanceof Map || isObject(kit), 'kit', kit, 'a map of surfaces');
  const map: KitMap = kit instanceof Map ? Object.fromEntries(kit) : (kit as KitMap);
  for (const [from, to] of Object.entries(map)) for (const surface of [from, to]) oneOf('surface', surface, SURFACES);
  return map;
}

function checkLength(sticking: Sticking): void {
  const { length } = printSticking(sticking);
  must(length <= LIMITS.characters, 'length of the mirrored text', length, `at most ${LIMITS.characters} characters`);
}
