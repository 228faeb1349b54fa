import * as z from 'zod';
import type { FieldReader } from '../../spec/fields.js';
import type { Round } from '../../spec/spec.js';
import { radians } from '../../units/units.js';

/** A carrier as asked for: mm, radians; what is absent is worked out, or comes from a saddle cope. */
export interface CarrierFields {
  readonly from?: string | undefined;
  readonly end: 'near' | 'far';
  readonly sharpAngle?: number | undefined;
  readonly sawReading: number;
  readonly round?: Round | undefined;
  readonly length?: number | undefined;
  readonly width?: number | undefined;
  readonly twist?: number | undefined;
}

/** The fields of a V-cradle as read: mm, radians, rounds looked up. */
export interface VCradleFields {
  readonly holds: readonly Round[];
  readonly make?: readonly ('block' | 'carrier')[] | undefined;
  readonly includedAngle: number;
  readonly depth?: number | undefined;
  readonly flat: number;
  readonly block: { readonly length?: number | undefined; readonly width?: number | undefined; readonly height?: number | undefined };
  readonly stop?: number | undefined;
  readonly carrier?: CarrierFields | undefined;
}

const block = (f: FieldReader) => z.strictObject({
  length: f.length({ about: 'Length of the block along the groove; left out: at least 150 mm and four times the thickest round, beyond the stop', min: 10 }).optional(),
  width: f.length({ about: 'Width of the block across the groove; left out: the groove and 12 mm of wall on each side', min: 5, max: 1000 }).optional(),
  height: f.length({ about: 'Height of block and carrier; left out: the groove and 12 mm of floor under it', min: 5, max: 1000 }).optional(),
}).meta({ description: 'The block that the groove is sawn in' }).prefault({});

const carrier = (f: FieldReader): z.ZodType<CarrierFields> => z.strictObject({
  from: f.text({ about: 'Name of a saddle-cope jig: sharp angle, round, toe and twist of its first cut come from it' }).optional(),
  end: f.choice(['near', 'far'], { about: 'Which end of that saddle-cope’s branch' }).default('near'),
  sharpAngle: f.angle({ about: 'Sharp angle between the cut face and the axis of the round', min: radians(5), max: radians(89) }).optional(),
  sawReading: f.angle({ about: 'What the saw itself is set to, from square', min: 0, max: radians(80) }).default(0),
  round: f.round({ about: 'The round that is cut in it; left out: the thickest one held' }).optional(),
  length: f.length({ about: 'Length of the carrier along the groove; left out: what keeps hands 150 mm from the blade', min: 10 }).optional(),
  width: f.length({ about: 'Width of the carrier; left out: what leaves it 50 mm of seat on the fence', min: 10, max: 1000 }).optional(),
  twist: f.angle({ about: 'Turn of the other end’s cut against this one, counter-clockwise seen from the other end', min: -Math.PI, max: Math.PI }).optional(),
}).superRefine((fields, ctx) => {
  const complain = (path: string, message: string): void => ctx.addIssue({ code: 'custom', path: [path], message });
  if (fields.from === undefined) {
    if (fields.sharpAngle === undefined) complain('sharpAngle', 'is missing: write the sharp angle, or from and the name of a saddle-cope');
    return;
  }
  for (const key of ['sharpAngle', 'round', 'twist'] as const) {
    if (fields[key] !== undefined) complain(key, 'is given twice: it comes from the jig named in from already; leave out one of the two');
  }
}).meta({ description: 'Carrier for a cut steeper than the saw goes' });

/** What may be written for a V-cradle. Lengths come out in mm, angles in radians; what is left out is solved for. */
export const schema = (f: FieldReader): z.ZodType<VCradleFields> => z.strictObject({
  holds: z.array(f.round({ about: 'A round that it holds' })).min(1, 'a cradle holds at least one round')
    .refine((rounds) => new Set(rounds.map((r) => r.name)).size === rounds.length, 'a round is named twice').meta({ description: 'Every round that it holds' }),
  make: z.array(f.choice(['block', 'carrier'], { about: 'What is made: the block that rounds are drilled in, the carrier for the saw' })).min(1, 'makes nothing: write block, carrier or both')
    .meta({ description: 'What is made; left out: the block, and the carrier where there is one' }).optional(),
  includedAngle: f.angle({ about: 'Angle between the two flanks of the groove', min: radians(20), max: radians(160) }).default(Math.PI / 2),
  depth: f.length({
    about: 'Depth of the groove: how deep the saw cuts, from the block’s top to the flat (to the point of a sharp V); left out: what is sound for the thickest round',
    min: 0.5, max: 500,
  }).optional(),
  flat: f.length({ about: 'Width of the flat at the bottom, 0 for a sharp V', min: 0, max: 200 }).default(4),
  block: block(f),
  stop: f.length({ about: 'End stop for the round: how far its face stands from the left end of the block' }).optional(),
  carrier: carrier(f).optional(),
}).superRefine((fields, ctx) => {
  if (fields.make?.includes('carrier') === true && fields.carrier === undefined) {
    ctx.addIssue({ code: 'custom', path: ['carrier'], message: 'is missing: make asks for it' });
  }
});
