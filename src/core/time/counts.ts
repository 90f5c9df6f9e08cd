import { must, shown, text, whole } from '../check.ts';
import { checkGrid, meterOf, slotsOf } from './meter.ts';
import type { Grid, MeterText, SlotIndex } from './units.ts';

/**
 * What is said after the number of a beat, by slots a beat. Each system is named by its own syllables.
 *
 * `1 e & a` is the default: grids 1 to 4 are common practice; 5 to 8 are ours, chosen so that no two slots of a beat
 * share a syllable and a count names one place. `1 ta te ta` and `1 ka di mi` are common practice in teaching (recalled)
 * for the grids they list; what they leave out is said as in the default.
 */
const SYSTEMS = {
  '1 e & a': {
    1: [],
    2: ['&'],
    3: ['trip', 'let'],
    4: ['e', '&', 'a'],
    5: ['ta', 'ka', 'di', 'mi'],
    6: ['ta', 'la', '&', 'ti', 'li'],
    7: ['ta', 'ka', 'di', 'mi', 'na', 'ti'],
    8: ['ta', 'e', 'ka', '&', 'di', 'a', 'mi'],
  },
  '1 ta te ta': {
    2: ['te'],
    3: ['la', 'li'],
    4: ['ta', 'te', 'ta'],
    6: ['ta', 'la', 'ta', 'li', 'ta'],
  },
  '1 ka di mi': {
    2: ['di'],
    3: ['ki', 'da'],
    4: ['ka', 'di', 'mi'],
    5: ['ka', 'di', 'mi', 'ti'],
    6: ['va', 'ki', 'di', 'da', 'ma'],
  },
  /** 6/8, 9/8 and 12/8 by their eighths (common practice); other meters as the default. */
  '1 2 3 4 5 6': {},
} as const satisfies Record<string, Partial<Record<number, readonly string[]>>>;

/** A way of counting, named by its syllables. */
export type CountSystem = keyof typeof SYSTEMS;

/** The ways of counting there are; the first is the default. */
export const COUNT_SYSTEMS = Object.keys(SYSTEMS) as CountSystem[];

/** How many slots of a compound beat share an eighth, where the eighths are what is counted. */
function slotsPerEighth(meter: MeterText, grid: Grid, system?: CountSystem): number {
  return system === '1 2 3 4 5 6' && meterOf(meter).compound && grid % 3 === 0 ? grid / 3 : 0;
}

function afterNumber(grid: Grid, system: CountSystem): readonly string[] {
  const table: Partial<Record<number, readonly string[]>> = SYSTEMS[system];
  return table[grid] ?? (SYSTEMS['1 e & a'] as Record<number, readonly string[]>)[grid];
}

function checkSystem(system: CountSystem): void {
  must(COUNT_SYSTEMS.includes(system), 'system', system, `one of ${COUNT_SYSTEMS.map(shown).join(', ')}`);
}

/**
 * The syllable of every slot of a bar. Throws RangeError for what is no meter, grid or system.
 * @example
 * countSyllables('2/4', 4) // → ['1', 'e', '&', 'a', '2', 'e', '&', 'a']
 */
export function countSyllables(meter: MeterText, grid: Grid, system: CountSystem = '1 e & a'): string[] {
  const slots = slotsOf(meter, grid);
  checkSystem(system);
  const perNumber = slotsPerEighth(meter, grid, system) || grid;
  const rest = afterNumber(perNumber, system);
  return Array.from({ length: slots }, (_, slot) =>
    slot % perNumber === 0 ? String(slot / perNumber + 1) : rest[(slot % perNumber) - 1],
  );
}

const PLACES = ['first', 'second', 'third'] as const;

/** What tells the syllables of a beat apart: a syllable that comes more than once is the first, the second, the third. */
function apart(syllables: readonly string[]): string[] {
  return syllables.map((syllable, at) => {
    const same = syllables.flatMap((other, place) => (other === syllable ? [place] : []));
    return same.length === 1 ? syllable : `${PLACES[same.indexOf(at)]} ${syllable}`;
  });
}

/**
 * The name of every slot of a bar: its beat and its syllable, no two alike.
 * @example
 * countNames('2/4', 2) // → ['1', '1 &', '2', '2 &']
 * countNames('1/4', 4, '1 ta te ta') // → ['1', '1 first ta', '1 te', '1 second ta']
 */
export function countNames(meter: MeterText, grid: Grid, system?: CountSystem): string[] {
  return [...namesOf(meter, grid, system)];
}

/** Names that have been found: the same few are asked for at every cell. */
const known = new Map<string, readonly string[]>();

function namesOf(meter: MeterText, grid: Grid, system: CountSystem = '1 e & a'): readonly string[] {
  checkGrid(grid);
  checkSystem(system);
  meterOf(meter);
  const key = `${meter}:${grid}:${system}`;
  const names = known.get(key) ?? nameSlots(meter, grid, system);
  known.set(key, names);
  return names;
}

function nameSlots(meter: MeterText, grid: Grid, system: CountSystem): string[] {
  const syllables = countSyllables(meter, grid, system);
  const size = slotsPerEighth(meter, grid, system) || grid;
  const rest = apart(syllables.slice(1, size));
  return syllables.map((number, slot) =>
    slot % size === 0 ? number : `${syllables[slot - (slot % size)]} ${rest[(slot % size) - 1]}`,
  );
}

/**
 * The name of one slot. Throws RangeError outside the bar.
 * @example
 * countName('4/4', 4, 15) // → '4 a'
 */
export function countName(meter: MeterText, grid: Grid, slot: SlotIndex, system?: CountSystem): string {
  const names = namesOf(meter, grid, system);
  must(typeof slot === 'number' && slot in names, 'slot', slot, `0 to ${names.length - 1} in a bar of ${meter}`);
  return names[slot];
}

/**
 * A count as a teacher says it.
 * @example
 * sayCount('4 a') // → 'the a of 4'
 */
export function sayCount(name: string): string {
  text('count', name);
  const [beat, ...syllable] = name.split(' ');
  return syllable.length > 0 ? `the ${syllable.join(' ')} of ${beat}` : `beat ${beat}`;
}

/**
 * A slot's count as a teacher says it, in whatever bar it falls. Where the eighths of a compound bar are counted, a number
 * is no beat.
 * @example
 * saySlot('4/4', 4, 31) // → 'the a of 4'
 * saySlot('6/8', 3, 3, '1 2 3 4 5 6') // → 'the 4'
 */
export function saySlot(meter: MeterText, grid: Grid, slot: SlotIndex, system?: CountSystem): string {
  const names = countNames(meter, grid, system);
  whole('slot', slot, 0);
  const name = names[slot % names.length];
  return slotsPerEighth(meter, grid, system) > 0 && !name.includes(' ') ? `the ${name}` : sayCount(name);
}
