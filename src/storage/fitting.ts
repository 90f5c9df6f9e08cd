/** What of a value from outside fits: the one way in which stored texts, files, links and messages are checked. */
import * as v from 'valibot';
import { isFields } from './shelf.ts';

// The text of each check says what may stand there, in figures and values alone.

/** Two ends, both included. */
export interface Range {
  from: number;
  to: number;
}

const says = ({ from, to }: Range): string => `${from}–${to}`;

const isIn = (value: unknown, { from, to }: Range): boolean =>
  typeof value === 'number' && value >= from && value <= to;

/** A number in a range. */
export const between = (range: Range) => v.custom<number>((value) => isIn(value, range), says(range));
/** A whole number in a range. */
export const whole = (range: Range) =>
  v.custom<number>((value) => isIn(value, range) && Number.isInteger(value), says(range));
/** One of these values. */
export const oneOf = <const T extends readonly (string | number)[]>(...values: T) =>
  v.picklist(values, values.join(', '));
/** A text of this form, of which `may` is an example. */
export const matching = (form: RegExp, may: string) =>
  v.custom<string>((value) => typeof value === 'string' && form.test(value), may);
/** Yes or no. */
export const flag = () => v.boolean('true, false');

/** The checks of an object's fields, by their names. */
export type Checks = Record<string, v.GenericSchema>;

/** An object whose fields have passed their checks. */
export type Checked<C extends Checks> = { -readonly [Name in keyof C]: v.InferOutput<C[Name]> };

/** Something in an outside text that does not fit. */
export interface LeftOut {
  /** The names that lead to it: `['site', 'swing']`. */
  at: string[];
  value: unknown;
  /** What may stand there, `1–4`; nothing where nothing may. */
  may?: string;
}

/** Hears of everything that does not fit. */
export type Report = (at: string[], value: unknown, may?: string) => void;

/** The fields of an object that fit their checks; those that do not, and a value that is no object, are reported. */
export function fitting<C extends Checks>(
  value: unknown,
  checks: C,
  at: string[],
  report: Report,
): Partial<Checked<C>> {
  if (value !== undefined && !isFields(value)) report(at, value);
  if (!isFields(value)) return {};
  const good = Object.entries(value).filter(([name, field]) => {
    const checked = Object.hasOwn(checks, name) ? v.safeParse(checks[name], field) : undefined;
    if (!checked?.success) report([...at, name], field, checked?.issues[0].message);
    return checked?.success;
  });
  return Object.fromEntries(good) as Partial<Checked<C>>;
}

/** A value that fits its check; undefined for any other. */
export function fit<T>(value: unknown, check: v.GenericSchema<unknown, T>): T | undefined {
  const checked = v.safeParse(check, value);
  return checked.success ? checked.output : undefined;
}

/** An object all of whose fields fit their checks, without what else it has; undefined for any other value. */
export function fitWhole<C extends Checks>(value: unknown, checks: C): Checked<C> | undefined {
  const fields = fitting(value, checks, [], () => undefined);
  return Object.keys(checks).every((name) => Object.hasOwn(fields, name)) ? (fields as Checked<C>) : undefined;
}
