import { parse as parseYaml } from 'yaml';
import { describe, expect, it } from 'vitest';
import { jsonSchema, jsonSchemaText } from '../../src/spec/json-schema.js';
import { looseObjects } from '../support/loose-objects.js';
import { toyKinds } from './toy-kinds.js';

type Json = Readonly<Record<string, unknown>>;
const schema = jsonSchema(toyKinds) as Json;

/** What stands at a path of keys. */
const at = (...keys: readonly string[]): unknown => keys.reduce<unknown>((value, key) => (value as Json)[key], schema);

describe('jsonSchema', () => {
  it('is of draft 2020-12 and requires a title and jigs', () => {
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema['required']).toEqual(['title', 'jigs']);
  });

  it('checks each jig against its own kind', () => {
    expect(at('properties', 'jigs', 'items', 'properties', 'kind', 'enum')).toEqual(['collar', 'slot-row']);
    expect(at('properties', 'jigs', 'items', 'allOf', '0', 'then')).toEqual({ $ref: '#/$defs/jig-collar' });
    expect(at('$defs', 'jig-collar', 'required')).toEqual(['on', 'angle']);
    expect(Object.keys(at('$defs', 'jig-collar', 'properties') as Json)).toEqual(['kind', 'name', 'on', 'angle', 'offset', 'pin']);
  });

  it('gives defaults as one would write them, not in mm and radians as read', () => {
    expect(at('$defs', 'jig-collar', 'properties', 'offset', 'default')).toBe('0 mm');
    expect(at('properties', 'sheets', 'properties', 'overlap', 'default')).toBe('12 mm');
    expect(at('properties', 'sheets', 'properties', 'margins', 'default')).toBe('10 mm');
    expect(at('$defs', 'jig-slot-row', 'properties', 'edge', 'default')).toBe('front');
  });

  it('tells limits in the description, in both units', () => {
    expect(at('$defs', 'jig-collar', 'properties', 'offset')).toEqual({
      $ref: '#/$defs/length', default: '0 mm', description: 'Distance between the axes. Length, −150 mm (−5 29⁄32″) to 150 mm (5 29⁄32″)',
    });
  });

  it('lets every form of a length and an angle through its pattern', () => {
    const pattern = new RegExp(at('$defs', 'length', 'pattern') as string);
    for (const text of ['1-3/8', '1 3/8 in', '1⅜"', '⅜', `3' 2-1/2"`, '34.9 mm', '-3 in', '−3', '.5', '24°', '1:6']) expect(text).toMatch(pattern);
    for (const text of ['post', '--3', '']) expect(text).not.toMatch(pattern);
  });

  it('leaves no mapping open to unknown keys', () => {
    expect(looseObjects(schema)).toEqual([]);
    expect(looseObjects({ properties: { pin: { type: 'object', properties: {} } } })).toEqual(['properties.pin']);
  });

  it('leaves no trace of the reader’s own metadata', () => {
    expect(jsonSchemaText(toyKinds)).not.toMatch(/"field":|"choices":|"min":/);
  });

  it('is JSON text that ends in a line end, the same every time', () => {
    expect(parseYaml(jsonSchemaText(toyKinds))).toEqual(JSON.parse(jsonSchemaText(toyKinds)));
    expect(jsonSchemaText(toyKinds).endsWith('}\n')).toBe(true);
  });
});
