import type { ZodType } from 'zod';
import { unwrap } from './unwrap.js';
import type { Path } from './path.js';

/** The keys that a schema knows at a path below it, in its order; every branch of a union counts. */
export function schemaKeys(schema: ZodType, path: Path): readonly string[] {
  const inner = unwrap(schema);
  const { def } = inner._zod;
  if (def.type === 'union') return [...new Set((def as unknown as Union).options.flatMap((option) => schemaKeys(option, path)))];
  const [step, ...rest] = path;
  if (def.type === 'object') return keysOfObject((def as unknown as Group).shape, step, rest);
  if (def.type === 'array') return typeof step === 'number' ? schemaKeys((def as unknown as List).element, rest) : [];
  if (def.type === 'record') return step === undefined ? [] : schemaKeys((def as unknown as ByName).valueType, rest);
  return [];
}

interface Union {
  readonly options: readonly ZodType[];
}
interface Group {
  readonly shape: Readonly<Record<string, ZodType>>;
}
interface List {
  readonly element: ZodType;
}
interface ByName {
  readonly valueType: ZodType;
}

function keysOfObject(shape: Group['shape'], step: string | number | undefined, rest: Path): readonly string[] {
  if (step === undefined) return Object.keys(shape);
  const child = Object.hasOwn(shape, step) ? shape[step] : undefined;
  return child ? schemaKeys(child, rest) : [];
}
