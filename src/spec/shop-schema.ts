import * as z from 'zod';
import type { FieldReader } from './fields.js';
import type { Bit, Shop } from './shop.js';

/** What the shop has: every part may be left out, and then nothing is checked against it. */
export const shopSchema = (fields: FieldReader): z.ZodType<Shop> => z.strictObject(shopShape(fields)).meta({ description: 'What the shop has; used by checks alone' });

/** The same with `units`, which a shop file must give: it is shared by specs of both. */
export const shopFileSchema = (fields: FieldReader): z.ZodType<Shop> =>
  z
    .strictObject({ units: fields.choice(['inch', 'mm'], { about: 'Unit of a bare number in the shop file' }), ...shopShape(fields) })
    .transform(({ units: _, ...shop }) => shop);

const shopShape = (fields: FieldReader) => ({
  saw: sawSchema(fields).optional(),
  drillPress: drillPressSchema(fields).optional(),
  router: z
    .strictObject({ maxBitDiameter: fields.length({ about: 'Largest bit that the router table takes', min: 3, max: 150 }).optional() })
    .optional(),
  bits: z.array(bitSchema(fields)).max(500).meta({ description: 'Drill bits owned' }).optional(),
  formRadii: z
    .array(fields.length({ about: 'Radius of a sanding form owned', min: 1, max: 300 }))
    .max(500)
    .meta({ description: 'Radii of the sanding forms owned' })
    .optional(),
});

const sawSchema = (fields: FieldReader) =>
  z.strictObject({
    maxReading: fields.angle({ about: 'Furthest that the saw’s own gauge turns from square' }).optional(),
    maxTilt: fields.angle({ about: 'Furthest that the blade tilts from upright' }).optional(),
    maxDepth: fields.length({ about: 'Depth of cut with the blade upright', min: 1, max: 1000 }).optional(),
    kerf: fields.length({ about: 'Width of the cut', min: 0.1, max: 12 }).optional(),
    reach: fields.length({ about: 'How far across the table, from the fence, a mitre or sliding saw cuts', min: 10, max: 3000 }).optional(),
  });

const drillPressSchema = (fields: FieldReader) =>
  z.strictObject({
    stroke: fields.length({ about: 'How far the quill travels', min: 1, max: 1000 }).optional(),
    maxTableTilt: fields.angle({ about: 'Furthest that the table tilts from level' }).optional(),
    throat: fields.length({ about: 'From the quill’s centre to the column', min: 10, max: 2000 }).optional(),
  });

/** Height of a 118° drill point over its diameter, 1/(2·tan 59°): what a bit has whose point is not given. */
const pointOfTwistDrill = 1 / (2 * Math.tan((59 * Math.PI) / 180));

const bitSchema = (fields: FieldReader): z.ZodType<Bit> =>
  z
    .strictObject({
      diameter: fields.length({ about: 'Diameter of the bit', min: 0.5, max: 150 }),
      usableLength: fields.length({ about: 'From the chuck’s jaws to the corners of the lips', min: 1, max: 1000 }),
      point: fields.length({ about: 'How far the point stands out beyond the lips; without it, that of a 118° drill', max: 100 }).optional(),
    })
    .transform(({ point, ...bit }) => ({ ...bit, point: point ?? bit.diameter * pointOfTwistDrill }));
