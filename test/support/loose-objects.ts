type Json = Readonly<Record<string, unknown>>;

/**
 * Paths of the mappings in a JSON Schema that would let an unknown key through in silence. The list's own frame (a jig before
 * its kind is known, told by `allOf`) is left out: there the kind's schema closes it.
 */
export function looseObjects(schema: unknown, path = ''): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const { type, allOf, additionalProperties } = schema as Json;
  const loose = type === 'object' && allOf === undefined && additionalProperties === undefined ? [path] : [];
  return [...loose, ...Object.entries(schema).flatMap(([key, inner]) => looseObjects(inner, path === '' ? key : `${path}.${key}`))];
}
