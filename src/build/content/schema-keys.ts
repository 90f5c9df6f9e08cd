import type { z } from 'astro/zod';

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
