import type { z, ZodType } from 'zod';

/** A schema without what is wrapped round it: optional, default, lazy, transforms behind it. Stops at a field. */
export function unwrap(schema: ZodType): ZodType {
  let inner = schema;
  for (let next = layerBelow(inner); next; next = layerBelow(inner)) inner = next;
  return inner;
}

/** The next layer in; undefined at a field, or where nothing is wrapped. */
export function layerBelow(schema: ZodType): ZodType | undefined {
  const def = schema._zod.def as { readonly type: string; readonly innerType?: ZodType; readonly in?: ZodType };
  if (def.type === 'lazy') return (schema as z.ZodLazy<ZodType>)._zod.innerType;
  if (def.innerType) return def.innerType;
  return def.type === 'pipe' && def.in && !isField(schema) ? def.in : undefined;
}

/** Whether a schema is one of the reader's own fields. */
const isField = (schema: ZodType): boolean => typeof schema.meta()?.['field'] === 'string';
