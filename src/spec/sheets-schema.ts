import * as z from 'zod';
import { papers } from '../units/paper.js';
import { ownPaper, paperSides } from '../units/parse-paper.js';
import type { Paper } from '../units/paper.js';
import type { FieldReader } from './fields.js';
import type { SheetWishes } from './spec.js';

/** A paper by name or by its sides, given either way round. */
export const paperSchema = (fields: FieldReader): z.ZodType<Paper> =>
  z
    .union([
      fields.choice(Object.keys(papers), { about: 'Paper by name' }).transform((name) => papers[name] ?? z.NEVER),
      z
        .strictObject({
          width: fields.length({ about: 'Width of the paper', ...paperSides }),
          height: fields.length({ about: 'Height of the paper', ...paperSides }),
        })
        .transform(({ width, height }) => ownPaper(width, height)),
    ])
    .meta({ description: 'Paper by name, or { width, height }' });

/** How the sheets are laid out where the spec says nothing: 10 mm clear all round (common practice), 12 mm of overlap. */
export const plainSheets: SheetWishes = { margins: { top: 10, right: 10, bottom: 10, left: 10 }, overlap: 12, turn: 'auto', seams: {} };

/** How the sheets are laid out; everything has a default. */
export const sheetsSchema = (fields: FieldReader): z.ZodType<SheetWishes> =>
  z
    .strictObject({
      margins: marginsSchema(fields).prefault(`${plainSheets.margins.top} mm`),
      overlap: fields.length({ about: 'How far neighbouring sheets overlap', max: 100 }).default(plainSheets.overlap),
      turn: fields.choice(['auto', 'portrait', 'landscape'], { about: 'Which way the paper lies; auto searches for the fewest sheets' }).default(plainSheets.turn),
      seams: z
        .record(z.string(), seamsSchema(fields))
        .meta({ description: 'By jig: where seams must run in the first of its patterns that takes several sheets, from that drawing’s datum; its other patterns are left to the search' })
        .default({}),
    })
    .meta({ description: 'How the sheets are laid out' });

const marginsSchema = (fields: FieldReader): z.ZodType<SheetWishes['margins']> => {
  const margin = (about: string) => fields.length({ about, max: 100 });
  const side = (name: keyof SheetWishes['margins']) => margin(`Margin at the ${name}`).default(plainSheets.margins[name]);
  return z
    .union([
      margin('One margin all round').transform((all) => ({ top: all, right: all, bottom: all, left: all })),
      z.strictObject({ top: side('top'), right: side('right'), bottom: side('bottom'), left: side('left') }),
    ])
    .meta({ description: 'From the paper’s edge to the live area: one length, or by side' });
};

const seamsSchema = (fields: FieldReader) => {
  const places = (about: string) =>
    z.array(fields.length({ about, max: 100_000 })).max(1000).meta({ description: about }).default([]);
  return z.strictObject({ along: places('Seams across the length, by their distance along it'), across: places('Seams along the length, by their distance across it') });
};
