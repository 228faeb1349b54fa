import type { ZodType } from 'zod';
import type { FieldMeta } from './field.js';
import { layerBelow } from './unwrap.js';

/** One field or group of a kind, as `fields` lists it. Figures in mm and radians. */
export interface FieldDescription {
  /** `angle`, `pin.diameter`, `holes[].at`, `rounds.<name>.length`. */
  readonly path: string;
  readonly required: boolean;
  /** What stands in for an absent field, as read (mm, radians); undefined where none does. */
  readonly default?: unknown;
  readonly about: string;
  /** What may be written; `group`, `list` and `names` have their own fields below them. */
  readonly sort: FieldMeta['field'] | 'group' | 'list' | 'names' | 'either';
  /** Limits and choices of a plain field. */
  readonly meta?: FieldMeta;
}

/** All fields that a schema knows, in its order: a group before what is in it, the branches of a choice one after another. */
export const describeFields = (schema: ZodType): readonly FieldDescription[] => below('', layers(schema).inner);

interface Layers {
  readonly inner: ZodType;
  readonly required: boolean;
  readonly default: unknown;
  readonly about: string;
}

/** Unwraps a schema and keeps what its wrappings say, the outermost first: optional, default, description. */
function layers(schema: ZodType): Layers {
  let found: Layers = { inner: schema, required: true, default: undefined, about: schema.meta()?.description ?? '' };
  for (let next = layerBelow(schema); next; next = layerBelow(next)) {
    const def = found.inner._zod.def as { readonly type: string; readonly defaultValue?: unknown };
    found = {
      inner: next,
      required: found.required && !['optional', 'default', 'prefault'].includes(def.type),
      default: found.default ?? def.defaultValue,
      about: found.about === '' ? (next.meta()?.description ?? '') : found.about,
    };
  }
  return found;
}

interface Def {
  readonly type: string;
  readonly shape?: Readonly<Record<string, ZodType>>;
  readonly element?: ZodType;
  readonly valueType?: ZodType;
  readonly options?: readonly ZodType[];
  readonly items?: readonly ZodType[];
}

function describe(path: string, schema: ZodType): readonly FieldDescription[] {
  const { inner, required, default: standIn, about } = layers(schema);
  return [{ path, required, about, ...(standIn === undefined ? {} : { default: standIn }), ...sortOf(inner) }, ...below(path, inner)];
}

const sorts: Readonly<Record<string, FieldDescription['sort']>> = { object: 'group', array: 'list', record: 'names', union: 'either', tuple: 'list' };

function sortOf(inner: ZodType): Pick<FieldDescription, 'sort' | 'meta'> {
  const meta = inner.meta() as FieldMeta | undefined;
  if (typeof meta?.field === 'string') return { sort: meta.field, meta };
  return { sort: sorts[(inner._zod.def as Def).type] ?? 'either' };
}

/** Fields of what a schema holds; none for a plain field. */
function below(path: string, inner: ZodType): readonly FieldDescription[] {
  const { shape, element, valueType, options, items } = inner._zod.def as Def;
  if (shape) return Object.entries(shape).flatMap(([key, child]) => describe(join(path, key), child));
  if (element) return inList(`${path}[]`, element);
  if (valueType) return inList(join(path, '<name>'), valueType);
  if (items) return items.flatMap((item, index) => describe(`${path}[${index}]`, item));
  return (options ?? []).flatMap((option) => ofBranch(path, option));
}

const join = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** A list of groups shows the groups' fields; a list of plain values says on a line of its own what they are. */
function inList(path: string, schema: ZodType): readonly FieldDescription[] {
  const { inner } = layers(schema);
  const { shape, type } = inner._zod.def as Def;
  if (type === 'unknown') return [];
  return shape ? below(path, inner) : describe(path, schema);
}

/** A branch of a choice: a plain field on a line of its own, a group by its fields. */
function ofBranch(path: string, option: ZodType): readonly FieldDescription[] {
  const { inner } = layers(option);
  return typeof inner.meta()?.['field'] === 'string' ? describe(path, option) : below(path, inner);
}
