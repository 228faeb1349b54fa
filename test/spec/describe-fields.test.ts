import { describe, expect, it } from 'vitest';
import { describeFields } from '../../src/spec/describe-fields.js';
import { makeFieldReader } from '../../src/spec/fields.js';
import { pieceSchema } from '../../src/spec/piece-schema.js';
import { toyKinds } from './toy-kinds.js';

const reader = makeFieldReader('mm', {});
const rowsOf = (kind: string) => describeFields(toyKinds[kind]!.schema(reader));

describe('describeFields', () => {
  it('lists a kind’s fields in order, groups before what is in them', () => {
    expect(rowsOf('collar').map(({ path, required, sort }) => `${path}: ${sort}${required ? ', required' : ''}`)).toEqual([
      'on: round, required', 'angle: angle, required', 'offset: length', 'pin: group', 'pin.diameter: length, required', 'pin.through: flag',
    ]);
  });

  it('looks into both branches of a choice, and into lists', () => {
    expect(rowsOf('slot-row').map(({ path }) => path)).toEqual([
      'board', 'board.length', 'slots', 'slots.count', 'slots.pitch', 'slots[].at', 'slots[].item', 'edge', 'slack', 'note',
    ]);
  });

  it('gives defaults and limits in mm and radians', () => {
    const offset = rowsOf('collar').find(({ path }) => path === 'offset');
    expect(offset).toMatchObject({ default: 0, about: 'Distance between the axes', meta: { min: -150, max: 150 } });
    expect(rowsOf('collar').find(({ path }) => path === 'angle')?.meta?.max).toBe(Math.PI / 2);
  });

  it('covers the top level, every row with words of its own but the groups of the shop', () => {
    const rows = describeFields(pieceSchema(reader));
    expect(rows.map(({ path }) => path)).toEqual(expect.arrayContaining([
      'title', 'units', 'paper.width', 'rounds.<name>.diameter', 'shop.saw.maxTilt', 'shop.bits[].usableLength', 'sheets.margins.top', 'sheets.seams.<name>.along', 'jigs',
    ]));
    expect(rows.filter(({ about, path }) => about === '' && !/^shop\.(saw|drillPress|router)$/.test(path))).toEqual([]);
  });
});
