import * as z from 'zod';
import type { FieldReader } from '../../spec/fields.js';
import type { Round } from '../../spec/spec.js';
import { radians } from '../../units/units.js';

/** Two tilts from upright, each as seen square to its own plane. Radians. */
export interface Tilts {
  readonly rake: number;
  readonly splay: number;
}

/** A drill guide as asked for: mm, radians, rounds looked up; what is absent is worked out. */
export interface DrillGuideFields {
  readonly from?: string | undefined;
  readonly end: 'near' | 'far';
  readonly drill?: number | undefined;
  readonly angle?: number | Tilts | undefined;
  readonly rake?: number | undefined;
  readonly splay?: number | undefined;
  readonly onto?: Round | 'flat' | undefined;
  readonly offset?: number | undefined;
  readonly thickness?: number | undefined;
  readonly depth?: number | undefined;
  readonly sole?: 'flat' | 'v' | 'cove' | undefined;
  readonly groove: { readonly includedAngle: number; readonly depth?: number | undefined };
  readonly block: { readonly length?: number | undefined; readonly width?: number | undefined; readonly height?: number | undefined };
  readonly bit: { readonly usableLength?: number | undefined; readonly point?: number | undefined };
  readonly paperThickness: number;
}

const tiltLimit = radians(60);

const beyondSquare = 'The bit’s shank leans, and the block’s acute end points, to the side of that acute angle';

const tilt = (f: FieldReader) => ({
  rake: f.angle({ about: 'lean from upright seen from the side; positive: going up it leans to the rear', min: -tiltLimit, max: tiltLimit }),
  splay: f.angle({ about: 'lean from upright seen from the front; positive: going up it leans to the right', min: -tiltLimit, max: tiltLimit }),
});

const holeFields = (f: FieldReader) => ({
  from: f.text({ about: 'name of a saddle-cope jig: angle, offset, pin diameter, depth and round come from it, so that the two holes meet' }).optional(),
  end: f.choice(['near', 'far'], { about: 'which end of that saddle-cope’s branch' }).default('near'),
  drill: f.length({ about: 'diameter of the bit', min: 1, max: 80 }).optional(),
  angle: z.union([
    f.angle({ about: 'angle between the bit and the face of the work, or the axis of the round; 90 is square', min: radians(5), beyondSquare }),
    z.strictObject(tilt(f)).describe('on flat work, two leans in place of one angle'),
  ]).optional().describe('the angle of the hole, or its rake and splay'),
  rake: tilt(f).rake.optional(),
  splay: tilt(f).splay.optional(),
  onto: z.union([f.round({ about: 'the round that is drilled, or flat' }), f.choice(['flat'], { about: 'flat work' })]).optional()
    .describe('what is drilled: a round, or flat work'),
  offset: f.length({
    about: 'on a round: distance of the bit’s axis from the round’s; positive = to the right, seen from the side to which the bit’s shank leans', min: -150, max: 150,
  }).optional(),
  thickness: f.length({ about: 'thickness of flat work', min: 1, max: 300 }).optional(),
  depth: f.length({ about: 'depth of the hole along the bit, from where its axis enters, without the point; left out: right through', min: 1, max: 600 }).optional(),
});

const guideFields = (f: FieldReader) => ({
  sole: f.choice(['flat', 'v', 'cove'], { about: 'what seats on the work; left out: flat on flat work, v on a round' }).optional(),
  groove: z.strictObject({
    includedAngle: f.angle({ about: 'angle between the flanks of a V in the sole', min: radians(60), max: radians(150) }).default(Math.PI / 2),
    depth: f.length({ about: 'depth of the V or cove from the flat of the sole; left out: what seats soundly', min: 0.5, max: 200 }).optional(),
  }).prefault({}).describe('the V or cove in the sole'),
  block: z.strictObject({
    length: f.length({ about: 'length of the block, square to the bore, in the plane of the tilt', min: 20, max: 400 }).optional(),
    width: f.length({ about: 'width of the block across the plane of the tilt', min: 20, max: 400 }).optional(),
    height: f.length({ about: 'height of the block along the bore, before the sole is sawn; left out: a bore of 38 mm, three drill diameters, or what the angle needs', min: 20, max: 800 }).optional(),
  }).default({}).describe('size of the block as it is before the sole is sawn'),
  bit: z.strictObject({
    usableLength: f.length({ about: 'from the chuck’s jaws to the corners of the lips; left out: the longest owned', min: 5, max: 1000 }).optional(),
    point: f.length({ about: 'how far the point stands out beyond the lips; left out: the owned bit’s, else 3 mm', max: 40 }).optional(),
  }).default({}).describe('the bit that goes through it'),
  paperThickness: f.length({ about: 'thickness of the paper that is wrapped round a round', max: 1 }).default(0.1),
});

type Complain = (path: string, message: string) => void;

const checkPaired = (fields: DrillGuideFields, complain: Complain): void => {
  const taken = ['drill', 'angle', 'rake', 'splay', 'onto', 'offset', 'thickness'] as const;
  for (const key of taken) {
    if (fields[key] !== undefined) complain(key, `is given twice: it comes from the jig "${fields.from}" already; leave out one of the two`);
  }
};

const checkTilts = (fields: DrillGuideFields, complain: Complain): void => {
  const apart = fields.rake !== undefined || fields.splay !== undefined;
  if (fields.angle === undefined && !apart) complain('angle', 'is missing: write the angle, or rake and splay, or from and the name of a saddle-cope');
  if (fields.angle !== undefined && apart) complain('angle', 'is given beside rake and splay; leave out one of the two');
  if (apart && fields.rake === undefined) complain('rake', 'is missing beside splay; write 0 where there is none');
  if (apart && fields.splay === undefined) complain('splay', 'is missing beside rake; write 0 where there is none');
};

const checkWork = (fields: DrillGuideFields, complain: Complain): void => {
  if (fields.onto === undefined) complain('onto', 'is missing: write flat, a round’s name, or its diameter');
  if (fields.onto === 'flat') {
    if (fields.depth === undefined && fields.thickness === undefined) {
      complain('depth', 'is missing: write the depth along the bit, or the thickness of the work for a hole right through');
    }
    if (fields.offset !== undefined) complain('offset', 'has no meaning on flat work; leave it out');
    if (fields.sole === 'v' || fields.sole === 'cove') complain('sole', 'is for a round: flat work takes a flat sole');
  } else if (fields.thickness !== undefined) {
    complain('thickness', 'is for flat work: a round has its diameter');
  }
};

/** Fields of `drill-guide`. */
export const schema = (f: FieldReader): z.ZodType<DrillGuideFields> =>
  z.strictObject({ ...holeFields(f), ...guideFields(f) }).superRefine((fields, ctx) => {
    const complain: Complain = (path, message) => ctx.addIssue({ code: 'custom', path: [path], message });
    if (fields.from !== undefined) return checkPaired(fields, complain);
    if (fields.drill === undefined) complain('drill', 'is missing: the diameter of the bit');
    checkTilts(fields, complain);
    checkWork(fields, complain);
  });
