import * as z from 'zod';
import type { FieldReader } from './fields.js';
import { roundSchema } from './round-schema.js';
import { paperSchema, plainSheets, sheetsSchema } from './sheets-schema.js';
import { shopSchema } from './shop-schema.js';

/** More jigs than any piece needs; keeps a mistaken file from running for hours. */
export const mostJigs = 200;

/**
 * The top level of a spec. Jigs are left as they are: each is read by its own kind. What most specs leave out is made only where it
 * is given (`z.lazy`), since start-up pays for every schema.
 */
export const pieceSchema = (fields: FieldReader) =>
  z.strictObject({
    title: fields.text({ about: 'What the piece is called on every sheet', max: 120 }),
    revision: fields.text({ about: 'Which state of the design this is', max: 40 }).default(''),
    units: fields.choice(['inch', 'mm'], { about: 'Unit of a bare number, and the one that sheets print first' }).default('mm'),
    paper: z.lazy(() => paperSchema(fields)).optional(),
    rounds: z.record(z.string(), roundSchema(fields)).meta({ description: 'Round parts by name' }).default({}),
    shop: z.lazy(() => shopOrPath(fields)).default({}),
    sheets: z.lazy(() => sheetsSchema(fields)).default(plainSheets),
    jigs: z.array(z.unknown()).min(1).max(mostJigs).meta({ description: 'The jigs to draw, in order' }),
  });

const shopOrPath = (fields: FieldReader) =>
  z
    .union([shopSchema(fields), fields.text({ about: 'Path of a shop file, from the spec’s folder', max: 1000 })])
    .meta({ description: 'What the shop has, or the path of a shop file' });

/** The top level as read, in mm and radians. */
export type Piece = z.output<ReturnType<typeof pieceSchema>>;
