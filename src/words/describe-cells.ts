import type { Hand, Stroke, Timeline } from '../core/index.ts';
import { numberWord } from './numbers.ts';

/** So many of a named cell: `four flam drags`, `two R L L`, `a kick`. */
function counted(name: string, count: number): string {
  if (count === 1) return /^[a-z]/.test(name) ? `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}` : name;
  const plural = /[a-z]$/.test(name) && !/s$/.test(name) ? `${name}s` : name;
  return `${numberWord(count)} ${plural}`;
}

/** Named cells, counted: in their order where that is short, else by kind. */
function namedCells(names: readonly string[]): string[] {
  const runs = names.reduce<[string, number][]>((all, name) => {
    const last = all[all.length - 1];
    if (last?.[0] === name) last[1] += 1;
    else all.push([name, 1]);
    return all;
  }, []);
  if (runs.length <= 5) return runs.map(([name, count]) => counted(name, count));
  const kinds = [...Map.groupBy(names, (name) => name)].map(([name, all]) => counted(name, all.length));
  return kinds.length <= 5 ? kinds : [];
}

const isHand = (stroke: Stroke): boolean => stroke.primary === undefined && stroke.kind !== 'foot';

/** The hand that leads each cell that has more than one hand stroke; where there is none, each cell. */
function leadsOf(timeline: Timeline): Hand[] {
  const hands = timeline.strokes.filter(isHand);
  const cells = [...Map.groupBy(hands, (stroke) => stroke.cell).values()];
  const long = cells.filter((cell) => cell.length > 1);
  return (long.length ? long : cells).map(([first]) => first.limb as Hand);
}

function leadWords(timeline: Timeline): string[] {
  const leads = leadsOf(timeline);
  if (leads.length === 0) return [];
  if (leads.every((hand) => hand === leads[0])) return [`${leads[0] === 'R' ? 'right' : 'left'} hand leads`];
  return leads.every((hand, i) => i === 0 || hand !== leads[i - 1]) ? ['the lead alternates'] : [];
}

/** Plain strokes of every kind in a piece whose cells have no names. */
function kindWords(timeline: Timeline): string[] {
  const hands = timeline.strokes.filter(isHand);
  const turns = hands.every((stroke, i) => i === 0 || stroke.limb !== hands[i - 1].limb);
  const plain = timeline.strokes.every((stroke) => stroke.kind === 'single');
  return plain && turns && hands.length > 1 ? ['single strokes hand to hand'] : [];
}

/** What a piece is made of and which hand leads, as far as it can be said in a few words. */
export function cellWords(timeline: Timeline, names: readonly (string | null)[]): string[] {
  const named = timeline.cells.map((_, i) => names[i] ?? '');
  const all = named.length > 0 && named.every((name) => name !== '');
  return [...(all ? namedCells(named) : kindWords(timeline)), ...leadWords(timeline)];
}
