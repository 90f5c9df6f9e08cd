import { usesOf } from './check.ts';
import { MAX_REASON_STATES, mostOf, TooLarge } from './limits.ts';
import type { ArrangeRequest, ArrangeRules } from './types.ts';

/** `3 and 5`, `3, 4 and 5` */
function list(words: readonly (string | number)[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

const slotsLong = (slots: number): string => `${slots} ${slots === 1 ? 'slot' : 'slots'}`;

/**
 * Why nothing fills the slots: the lengths, the uses, or a rule. Counts again with less asked, so it is found only when
 * someone asks; what would then be too much to be counted is taken to have answers, and no rule is blamed by it.
 */
export function reasonOf(request: ArrangeRequest, count: (request: ArrangeRequest) => bigint): string {
  const { cells, slots, rules = {} } = request;
  if (cells.length === 0) return `there are no cells, and ${slotsLong(slots)} to fill`;
  const free = cells.map(({ id, slots: length }) => ({ id, slots: length }));
  const lengths = [...new Set(cells.map((c) => c.slots))].sort((a, b) => a - b);
  const isNone = (asked: ArrangeRequest): boolean => counted(asked, count) === 0n;
  if (isNone({ cells: free, slots })) return `cells of ${list(lengths)} cannot fill ${slots}`;
  if (isNone({ ...request, rules: {} })) return usesReason(request);
  const names = (Object.keys(rules) as (keyof ArrangeRules)[]).filter((name) => rules[name] !== undefined);
  const without = (name: string): ArrangeRules =>
    Object.fromEntries(Object.entries(rules).filter(([key]) => key !== name));
  const alone = names.filter((name) => (counted({ ...request, rules: without(name) }, count) ?? 0n) > 0n);
  return alone.length
    ? `no order keeps to ${list(names)}; without ${alone.join(' or without ')} there are some`
    : `no order keeps to ${list(names)}`;
}

/** A count; nothing where it would be too much. */
function counted(request: ArrangeRequest, count: (request: ArrangeRequest) => bigint): bigint | undefined {
  try {
    return count({ ...request, mostStates: mostOf(request, MAX_REASON_STATES) });
  } catch (thrown) {
    if (thrown instanceof TooLarge) return undefined;
    throw thrown;
  }
}

function usesReason({ cells, slots }: ArrangeRequest): string {
  const uses = cells.map((cell) => ({ ...usesOf(cell), slots: cell.slots }));
  const least = uses.reduce((sum, c) => sum + c.min * c.slots, 0);
  const most = uses.reduce((sum, c) => sum + c.max * c.slots, 0);
  if (least === most) return `the cells make ${least} of ${slotsLong(slots)}`;
  if (least > slots) return `the cells make at least ${slotsLong(least)}, more than ${slots}`;
  if (most < slots) return `the cells make at most ${slotsLong(most)}, fewer than ${slots}`;
  return `the cells used as often as allowed cannot fill ${slots}`;
}
