import * as z from 'zod';
import { degreesShown } from './angle-field.js';
import type { FieldMeta } from './field.js';
import { makeFieldReader, type FieldReader } from './fields.js';
import { lengthFigure } from './length-field.js';
import { longestJigName } from './jig-names.js';
import { pieceSchema } from './piece-schema.js';

/** A kind as the JSON Schema needs it. */
export type DescribedKinds = Readonly<Record<string, { readonly schema: (fields: FieldReader) => z.ZodType; readonly summary?: string }>>;

type Json = Readonly<Record<string, unknown>>;

/**
 * JSON Schema (draft 2020-12) of a whole spec, made from the schemas that read it, so that an editor completes and checks. Limits of
 * lengths stand in the descriptions: a bare number's unit is another key's business. Defaults of lengths and angles carry their unit.
 */
export function jsonSchema(kinds: DescribedKinds): Json {
  const fields = makeFieldReader('mm', {});
  const piece = toJson(pieceSchema(fields));
  const properties = piece['properties'] as Json;
  const jigs = properties['jigs'] as Json;
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'roundwright spec',
    description: 'One piece of round-stock furniture: its rounds and the jigs to draw for it',
    ...piece,
    properties: { ...properties, jigs: { ...jigs, items: anyJig(kinds) } },
    $defs: {
      ...shared,
      ...Object.fromEntries(Object.entries(kinds).map(([kind, { schema, summary }]) => [`jig-${kind}`, jigJson(kind, toJson(schema(fields)), summary)])),
    },
  };
}

/** The committed file's text. */
export const jsonSchemaText = (kinds: DescribedKinds): string => `${JSON.stringify(jsonSchema(kinds), null, 2)}\n`;

function anyJig(kinds: DescribedKinds): Json {
  const names = Object.keys(kinds);
  return {
    type: 'object',
    properties: { kind: { enum: names, description: 'Kind of jig' } },
    required: ['kind'],
    // A choice by kind, not anyOf: an editor then names the key that is wrong, not that no kind fits.
    allOf: names.map((kind) => ({ if: { properties: { kind: { const: kind } }, required: ['kind'] }, then: { $ref: `#/$defs/jig-${kind}` } })),
  };
}

function jigJson(kind: string, json: Json, summary: string | undefined): Json {
  const name = { type: ['string', 'number'], maxLength: longestJigName, description: `Name of the jig and of its files. Default: ${kind}, numbered where repeated` };
  const properties = { kind: { const: kind, description: summary ?? 'Kind of jig' }, name, ...(json['properties'] as Json | undefined) };
  return { ...(summary === undefined ? {} : { description: summary }), ...json, properties };
}

function toJson(schema: z.ZodType): Json {
  const { $schema: _, ...json } = z.toJSONSchema(schema, {
    io: 'input',
    unrepresentable: 'any',
    // zod leaves out defaults on the way in, since it has them as read; `fieldJson` writes them as one would.
    override: ({ zodSchema: { _zod }, jsonSchema }) => {
      if (_zod.def.type === 'default') jsonSchema.default = _zod.def.defaultValue as z.core.JSONSchema._JSONSchema & string;
    },
  }) as Json;
  return withFields(json) as Json;
}

/** The same with every field of the reader spelt out; zod leaves its metadata where its own knowledge ends. */
function withFields(json: unknown): unknown {
  if (Array.isArray(json)) return json.map(withFields);
  if (typeof json !== 'object' || json === null) return json;
  const { default: fallback, ...rest } = json as Json;
  if (typeof rest['field'] === 'string') return fieldJson(rest as unknown as FieldMeta, fallback);
  const inner = Object.fromEntries(Object.entries(rest).map(([key, value]) => [key, withFields(value)]));
  // A default of a whole group is in millimetres and radians, as read; it would be wrong as written.
  return fallback !== null && ['string', 'boolean', 'number'].includes(typeof fallback) ? { ...inner, default: fallback } : inner;
}

function fieldJson(meta: FieldMeta, fallback: unknown): Json {
  const written = fallback === undefined ? {} : { default: writtenDefault(meta, fallback) };
  return { ...forms[meta.field](meta), ...written };
}

/** A default as one would write it. */
const writtenDefault = ({ field }: FieldMeta, value: unknown): unknown => {
  if (typeof value !== 'number') return value;
  if (field === 'length') return `${Number(value.toFixed(6))} mm`;
  return field === 'angle' ? `${degreesShown(value)}` : value;
};

const numberOrText = ['number', 'string'] as const;
/** Rough: what starts like a number. The forms themselves are told in the description. */
const startsAsNumber = '^\\s*[-−]?\\s*[0-9.¼-¾⅐-⅞]';

/** What many fields share, told once. */
const shared = {
  length: {
    type: numberOrText, pattern: startsAsNumber,
    description: 'A length: 1-3/8, 1 3/8 in, 3\' 2-1/2", 34.9 mm, 3.5 cm; a bare number is in the spec\'s units',
  },
  angle: { type: numberOrText, pattern: startsAsNumber, description: 'An angle: 24, 24 deg, 24° or a slope 1:6; a bare number is in degrees' },
  round: { type: numberOrText, description: 'A round by its name under rounds, or a measured diameter' },
};

const forms: Readonly<Record<FieldMeta['field'], (meta: FieldMeta) => Json>> = {
  length: ({ description, min = 0, max = 0 }) => ({
    $ref: '#/$defs/length',
    description: `${description}. Length, ${lengthFigure(min, 'mm')} to ${lengthFigure(max, 'mm')}`,
  }),
  angle: ({ description, min = 0, max = 0, choices }) => ({
    ...(choices === undefined ? { $ref: '#/$defs/angle' } : { anyOf: [{ enum: choices }, { $ref: '#/$defs/angle' }] }),
    description: `${description}. Angle, ${degreesShown(min)} to ${degreesShown(max)}${choices === undefined ? '' : `, or ${choices.join(', ')}`}`,
  }),
  number: ({ description, min, max }) => ({ type: 'number', minimum: min, maximum: max, description }),
  count: ({ description, min, max }) => ({ type: 'integer', minimum: min, maximum: max, description }),
  flag: ({ description }) => ({ type: 'boolean', description }),
  text: ({ description, max }) => ({ type: ['string', 'number'], maxLength: max, description }),
  choice: ({ description, choices }) => ({ enum: choices, description }),
  round: ({ description }) => ({ $ref: '#/$defs/round', description: `${description}. A round's name, or its diameter` }),
};
