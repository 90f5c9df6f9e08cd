/**
 * Whole numbers of any size as rows of digits in one flat array. Millions of small sums are faster so, and take less room,
 * than as bigints, which are made only where a number leaves this folder.
 */
import { MAX_DIGITS, tooWide } from './limits.ts';

const BASE = 2 ** 32;

/** Numbers by index; row `n` is the digits from `from[n]` on, `width[n]` of them, the least one first. Zero has none. */
export interface Numbers {
  readonly from: Int32Array;
  readonly width: Int32Array;
  digits: Uint32Array;
  /** Where sums are made, as wide as the widest number and one more. */
  sums: Float64Array;
  /** Digits in use. */
  used: number;
}

/** So many numbers, all zero. */
export const zeros = (count: number): Numbers => ({
  from: new Int32Array(count),
  width: new Int32Array(count),
  digits: new Uint32Array(Math.max(64, count)),
  sums: new Float64Array(64),
  used: 0,
});

/** Sets a number to one. */
export function setOne(numbers: Numbers, n: number): void {
  makeRoom(numbers, 1);
  numbers.from[n] = numbers.used;
  numbers.width[n] = 1;
  numbers.digits[numbers.used] = 1;
  numbers.used += 1;
}

/** Sets a number to the sum of the first `count` numbers of a list. */
export function setSum(numbers: Numbers, n: number, list: Int32Array, count: number): void {
  const { from, width } = numbers;
  let widest = 0;
  for (let i = 0; i < count; i += 1) if (width[list[i]] > widest) widest = width[list[i]];
  makeRoom(numbers, widest + 1);
  const { digits, sums } = numbers;
  sums.fill(0, 0, widest);
  for (let i = 0; i < count; i += 1) addDigits(sums, digits, from[list[i]], width[list[i]]);
  from[n] = numbers.used;
  width[n] = carried(sums, widest, digits, numbers.used);
  numbers.used += width[n];
}

/** Sums of digits stay exact: a double holds two million of them. */
function addDigits(sums: Float64Array, digits: Uint32Array, from: number, width: number): void {
  for (let d = 0; d < width; d += 1) sums[d] += digits[from + d];
}

/** Writes sums of digits as digits, and says how many they are. */
function carried(sums: Float64Array, width: number, digits: Uint32Array, to: number): number {
  let carry = 0;
  for (let d = 0; d < width; d += 1) {
    const sum = sums[d] + carry;
    const low = sum >>> 0;
    digits[to + d] = low;
    carry = (sum - low) / BASE;
  }
  if (carry > 0) digits[to + width] = carry;
  return carry > 0 ? width + 1 : width;
}

function makeRoom(numbers: Numbers, more: number): void {
  if (more > numbers.sums.length) numbers.sums = new Float64Array(2 * more);
  const { digits, used } = numbers;
  if (used + more <= digits.length) return;
  if (used + more > MAX_DIGITS) throw tooWide();
  numbers.digits = new Uint32Array(Math.max(used + more, 2 * digits.length));
  numbers.digits.set(digits);
}

/** A number of the list as a bigint. */
export const bigOf = ({ from, width, digits }: Numbers, n: number): bigint => toBig(digits, from[n], width[n]);

function toBig(digits: Uint32Array, from: number, width: number): bigint {
  if (width === 0) return 0n;
  let hex = '0x';
  for (let d = width - 1; d >= 0; d -= 1) hex += digits[from + d].toString(16).padStart(8, '0');
  return BigInt(hex);
}

/** A number that changes. */
export interface Register {
  readonly digits: Uint32Array;
  width: number;
}

/** A register that holds a number, with room for so many digits. */
export function registerOf(value: bigint, room: number): Register {
  const hex = value === 0n ? '' : value.toString(16);
  const width = Math.ceil(hex.length / 8);
  const digits = new Uint32Array(Math.max(width, room));
  for (let d = 0; d < width; d += 1)
    digits[d] = parseInt(hex.slice(Math.max(0, hex.length - 8 * d - 8), hex.length - 8 * d), 16);
  return { digits, width };
}

/** What a register holds. */
export const valueOf = ({ digits, width }: Register): bigint => toBig(digits, 0, width);

/** Takes a number of the list away from a register; false, and nothing done, where the register holds less. */
export function takeAway(register: Register, { from, width, digits }: Numbers, n: number): boolean {
  if (isBelow(register, digits, from[n], width[n])) return false;
  const own = register.digits;
  let borrow = 0;
  for (let d = 0; d < register.width && (d < width[n] || borrow > 0); d += 1) {
    const rest = own[d] - (d < width[n] ? digits[from[n] + d] : 0) - borrow;
    own[d] = rest;
    borrow = rest < 0 ? 1 : 0;
  }
  while (register.width > 0 && own[register.width - 1] === 0) register.width -= 1;
  return true;
}

function isBelow({ digits, width }: Register, other: Uint32Array, from: number, otherWidth: number): boolean {
  if (width !== otherWidth) return width < otherWidth;
  for (let d = width - 1; d >= 0; d -= 1) if (digits[d] !== other[from + d]) return digits[d] < other[from + d];
  return false;
}

/** Adds a number of the list to a register, which must have room for the sum. */
export function addTo(register: Register, { from, width, digits }: Numbers, n: number): void {
  const own = register.digits;
  let carry = 0;
  for (let d = 0; d < width[n] || carry > 0; d += 1) {
    const sum = own[d] + (d < width[n] ? digits[from[n] + d] : 0) + carry;
    own[d] = sum;
    carry = sum >= BASE ? 1 : 0;
    if (d >= register.width) register.width = d + 1;
  }
}
