import * as z from 'zod';
import type { FieldReader } from '../../spec/fields.js';
import type { Round } from '../../spec/spec.js';
import { sawAllowance } from '../../shop/tools.js';
import { radians } from '../../units/units.js';

/** The pin or loose tenon on the branch's axis; what is absent is worked out from the rounds. mm. */
export interface PinFields {
  readonly diameter?: number | undefined;
  readonly intoBranch?: number | undefined;
  readonly intoMain?: number | undefined;
}

/** The far end as asked for: mm, radians. */
export interface FarEndFields {
  readonly main: Round;
  readonly angle: number;
  readonly offset: number;
  readonly twist: number;
}

/** A saddle cope as asked for: mm, radians, rounds looked up. */
export interface SaddleCopeFields {
  readonly branch: Round;
  readonly main: Round;
  readonly angle: number;
  readonly offset: number;
  readonly paperThickness: number;
  readonly abrasive: number;
  readonly wingAllowance: number;
  /** Whether the ordinates are printed whatever paper they take. */
  readonly ordinates: boolean;
  readonly pin: PinFields;
  readonly centres?: number | undefined;
  readonly farEnd?: FarEndFields | undefined;
}

const leastAngle = radians(8);

const angleAbout = 'Angle between the two axes, the acute one (of 102° write 78°; the throat is then on that side); 90 is square';
const beyondSquare = 'The throat is on the side of that acute angle, the long point opposite';
const offsetAbout =
  'Shortest distance between the axes; positive = the branch lies to the right of the main, seen from the throat with the far end up';

/** Fields of `saddle-cope`. */
export const schema = (f: FieldReader): z.ZodType<SaddleCopeFields> => z.strictObject({
  branch: f.round({ about: 'The round that is cut hollow' }),
  main: f.round({ about: 'The round that it sits on' }),
  angle: f.angle({ about: angleAbout, min: leastAngle, beyondSquare }),
  offset: f.length({ about: offsetAbout, min: -150, max: 150 }).default(0),
  paperThickness: f.length({ about: 'Thickness of the paper that is wrapped round', max: 1 }).default(0.1),
  abrasive: f.length({ about: 'Thickness of the abrasive on the sanding form', max: 3 }).default(0.5),
  wingAllowance: f.length({ about: 'Wood that the first saw cut leaves at the wings, along the branch, for the saw’s own error', max: 10 })
    .default(sawAllowance),
  ordinates: f.flag({ about: 'Whether the ordinates, for laying out without a printer, are printed whatever paper they take; without it only where they take no further sheet' })
    .default(false),
  pin: z.strictObject({
    diameter: f.length({ about: 'Pin or loose tenon; 0 = none; absent = 2/5 of the branch, to a bit owned', max: 100 }).optional(),
    intoBranch: f.length({ about: 'Length in the branch; absent = 3 pin diameters, at least 30 mm', max: 400 }).optional(),
    intoMain: f.length({ about: 'Length in the main, along the pin; absent = 2/3 of the main', max: 400 }).optional(),
  }).meta({ description: 'Pin or loose tenon on the branch’s axis' }).default({}),
  centres: f.length({ about: 'Distance between the crossings of the axes at the two ends, along the branch', min: 20, max: 6000 }).optional(),
  farEnd: z.strictObject({
    main: f.round({ about: 'The round at the far end' }),
    angle: f.angle({ about: angleAbout, min: leastAngle, beyondSquare }),
    offset: f.length({ about: offsetAbout, min: -150, max: 150 }).default(0),
    twist: f.angle({
      about: 'Turn of the far throat against the near one, counter-clockwise seen from the far end; 0: both throats on one side, as between posts that lean together; 180: on opposite sides, as between parallel posts', min: -Math.PI, max: Math.PI,
    }).default(0),
  }).meta({ description: 'The far end of the branch, hollowed too' }).optional(),
}).superRefine((fields, ctx) => {
  if (fields.farEnd !== undefined && fields.centres === undefined) {
    ctx.addIssue({ code: 'custom', path: ['centres'], message: 'is missing: a branch with a far end needs the distance between the two crossings' });
  }
});
