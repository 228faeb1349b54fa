import * as z from 'zod';
import type { FieldReader } from './fields.js';
import { diameterLimits, longestRound } from './round-field.js';
import type { Round } from './spec.js';

/** One entry under `rounds`: a measured diameter, or a group with the round's length and how it came to be round. Name added by the caller. */
export const roundSchema = (fields: FieldReader): z.ZodType<Omit<Round, 'name'>> =>
  z
    .union([
      diameter(fields).transform((mm) => ({ diameter: mm })),
      z.strictObject({
        diameter: diameter(fields),
        length: fields.length({ about: 'Length of the round', min: 10, max: longestRound }).optional(),
        from: fields.choice(['square', 'bought'], { about: 'Made from a square blank, or bought round' }).optional(),
      }),
    ])
    .meta({ description: 'A round part by name: its measured diameter, or a group' });

const diameter = (fields: FieldReader) => fields.length({ about: 'Measured diameter', ...diameterLimits });
