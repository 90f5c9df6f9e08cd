import type { z } from 'astro/zod';
import { knownHint, nearest } from './nearest.ts';

/** What a schema found wrong, said to whoever wrote it. */
export interface Said {
  /** Where in the value; the last step may be a key that is not known. */
  path: PropertyKey[];
  /** Whether the path leads to the key rather than to its value. */
  atKey: boolean;
  message: string;
  hint?: string;
}

/** Checks a value; gives what it is, or what is wrong in sentences. `what` names it: `a cell`, `<Bar>`. */
export function judge<T>(
  schema: z.ZodType<T>,
  value: unknown,
  what: string,
): { ok: true; data: T } | { ok: false; said: Said[] } {
  const read = schema.safeParse(value);
  if (read.success) return { ok: true, data: read.data };
  return { ok: false, said: read.error.issues.flatMap((issue) => sayIssue(schema, value, what, issue)) };
}

function sayIssue(schema: z.ZodType, value: unknown, what: string, issue: z.core.$ZodIssue): Said[] {
  const path = issue.path;
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(schema, path, key, what));
  if (path.length === 0) return [{ path, atKey: false, message: `${what} takes ${rootSays(issue)}` }];
  const found = valueAt(value, path);
  const name = pathName(path);
  const message =
    found === undefined
      ? `"${name}" is missing; it takes ${issue.message}`
      : `"${name}" is ${show(found)}; it takes ${issue.message}`;
  return [{ path, atKey: false, message, hint: issueHint(issue, found) }];
}

/** A value that is no list of fields at all has no message of its own. */
const rootSays = (issue: z.core.$ZodIssue) =>
  issue.code === 'invalid_type' ? 'fields, each on a line of its own: name: value' : issue.message;

function unknownKey(schema: z.ZodType, path: PropertyKey[], key: string, what: string): Said {
  const keys = keysAt(schema, path);
  const inside = path.length ? `"${pathName(path)}"` : what;
  return { path: [...path, key], atKey: true, message: `${inside} has no "${key}"`, hint: knownHint(key, keys) };
}

function issueHint(issue: z.core.$ZodIssue, found: unknown): string | undefined {
  if (issue.code !== 'invalid_value') return undefined;
  const near = nearest(String(found), issue.values.map(String));
  return near && `did you mean "${near}"?`;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((at, key) => (at as Record<PropertyKey, unknown> | undefined)?.[key], value);
}

/** `lessons[3].title`, counted from 1 as people do. */
function pathName(path: readonly PropertyKey[]): string {
  return path
    .map((key, index) => (typeof key === 'number' ? `[${key + 1}]` : `${index ? '.' : ''}${String(key)}`))
    .join('');
}

/** A value as it is shown in a sentence, cut short. */
function show(value: unknown): string {
  const text = written(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** YAML can make a list that holds itself, which JSON cannot write. */
function written(value: unknown): string {
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return 'a list that holds itself';
  }
}

/** A schema without its wrappers: optional, with a default, refined, transformed. */
function bare(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
  const def = schema?._zod.def as { innerType?: z.core.$ZodType; in?: z.core.$ZodType } | undefined;
  const inner = def?.innerType ?? def?.in;
  return inner ? bare(inner) : schema;
}

function step(schema: z.core.$ZodType | undefined, key: PropertyKey): z.core.$ZodType | undefined {
  const def = bare(schema)?._zod.def as
    { shape?: Record<PropertyKey, z.core.$ZodType>; element?: z.core.$ZodType } | undefined;
  return def?.shape?.[key] ?? def?.element;
}

/** The keys that can stand at a path of a value with this schema. */
export function keysAt(schema: z.core.$ZodType, path: readonly PropertyKey[]): string[] {
  const at = path.reduce<z.core.$ZodType | undefined>(step, schema);
  const def = bare(at)?._zod.def as { shape?: object } | undefined;
  return Object.keys(def?.shape ?? {});
}
