import * as z from 'zod';
import type { FieldReader } from '../../spec/fields.js';
import { customIssue, type FieldIssue } from '../../spec/issue.js';
import { leastCutter } from '../../shop/router.js';
import { radians } from '../../units/units.js';
import { linerNames } from './liner.js';
import { longestBoard } from './board.js';
import { outlineField, outlineIssue, reachIssue } from './outline-field.js';

const board = (f: FieldReader) => z.strictObject({
  length: f.length({ about: 'Length of the board over all, rounded ends included', min: 50, max: longestBoard }),
  width: f.length({ about: 'Width of the board, front edge to rear edge', min: 20, max: 3000 }),
  thickness: f.length({ about: 'Thickness of the board', min: 3, max: 200 }),
  endRadius: f.length({ about: 'Radius of rounded ends, at least half the width (half the width: half rounds); left out: square ends' }).optional(),
  cornerRadius: f.length({ about: 'Radius of the four corners' }).default(0),
}).meta({ description: 'The board' });

const mouth = (f: FieldReader) => z.strictObject({
  ease: f.length({ about: 'Radius that eases the two corners of the mouth', max: 100 }).optional(),
  flare: f.angle({ about: 'Angle by which each wall of the throat opens towards the edge, usually 5 to 10°', max: radians(45) }).default(0),
  run: f.length({ about: 'How far in from the edge the flare begins; left out: half the depth' }).optional(),
}).meta({ description: 'Mouth of the slot: eased by 6 mm (1/4 in) unless flared' }).prefault({});

const slot = (f: FieldReader) => z.strictObject({
  count: f.count({ about: 'How many slots alike', max: 1000 }).default(1),
  at: f.length({ about: 'Station of the first slot’s axis from the left end; left out: the row stands in the middle of the board', max: longestBoard }).optional(),
  pitch: f.length({ about: 'Axis to axis along the board; left out: widest + gap, but no less than leaves a land of 19 mm or the board’s thickness', min: 1 }).optional(),
  item: f.round({ about: 'Round part that lies in the slot' }),
  widest: f.length({ about: 'Widest part of what hangs there (a blade, a handle); left out: the item itself' }).optional(),
  gap: f.length({ about: 'Room wanted between the widest parts of neighbours', max: 500 }).default(12),
  clearance: f.length({ about: 'Air on each side of the item', max: 50 }).default(1),
  liner: z.union([
    f.choice(linerNames, { about: 'Lining by name: leather 1.6, cork 1.6, thick-cork 3.2, felt 2 mm squeezed by a third' }),
    f.length({ about: 'Thickness of a lining that does not give', max: 20 }),
  ]).default('none'),
  glue: f.length({ about: 'Glue line under the lining; left out: 0.1 mm where there is a lining', max: 2 }).optional(),
  width: f.length({ about: 'Width of the slot in the wood, where a cutter or a template fixes it; left out: item + 2 (clearance + lining + glue)', min: 1 }).optional(),
  depth: f.length({ about: 'From the edge to the axis of the item in its seat; left out: twice the slot’s width', max: 3000 }).optional(),
  mouth: mouth(f),
  edge: f.choice(['front', 'rear', 'alternate'], { about: 'Edge that the slots open to; alternate: front, rear, front …' }).default('front'),
}).meta({ description: 'A row of slots alike' });

const station = (f: FieldReader, about: string) => z.tuple([
  f.length({ about: `${about}, along from the left end`, max: longestBoard }),
  f.length({ about: `${about}, across from the front edge`, max: 3000 }),
]).meta({ description: `${about}: [along, across] from the left front corner, seen from above` });

const hole = (f: FieldReader) => z.strictObject({
  round: f.round({ about: 'Leg or post that comes through the board' }),
  clearance: f.length({ about: 'Hole over the leg, on the diameter', max: 10 }).default(0),
  at: station(f, 'Centre of the hole on the top face'),
  lean: f.angle({ about: 'Lean of the leg from square to the face', max: radians(60) }).default(0),
  toward: f.angle({
    about: 'Compass turn of the lean, in the direction in which the leg goes up: 0 along the board to the right, counter-clockwise seen from above',
    min: -2 * Math.PI, max: 2 * Math.PI, words: { right: 0, rear: Math.PI / 2, left: Math.PI, front: (3 * Math.PI) / 2 },
  }).default(0),
  above: f.length({ about: 'How far the leg goes on above the top face; 0: it ends there', max: 3000 }).default(0),
  below: f.length({ about: 'How far down what hangs could meet the leg', max: 3000 }).default(300),
}).meta({ description: 'A hole for a leg, square or canted' });

const box = (f: FieldReader) => z.strictObject({
  width: f.length({ about: 'Along the board', min: 3, max: longestBoard }),
  height: f.length({ about: 'Across the board', min: 3, max: 3000 }),
  radius: f.length({ about: 'Radius of the four corners; left out: the cutter’s radius + 0.5 mm' }).optional(),
}).meta({ description: 'Box with rounded corners' });

const sizeMissing = ({ units }: FieldReader): FieldIssue => ({
  code: 'missing-key', message: 'is missing beside path', allowed: `the width along the board that the outline is scaled to, such as size: ${units === 'inch' ? '6' : '150'}`,
});

const recess = (f: FieldReader) => z.strictObject({
  path: outlineField(f).optional(),
  circle: f.length({ about: 'Diameter of a round recess', min: 3, max: 3000 }).optional(),
  box: box(f).optional(),
  size: f.length({ about: 'Width along the board that the path is scaled to, before it is turned', min: 3, max: longestBoard }).optional(),
  at: station(f, 'Middle of the recess'),
  turn: f.angle({ about: 'Turn of the shape, counter-clockwise seen from above', min: -2 * Math.PI, max: 2 * Math.PI }).default(0),
  depth: f.length({ about: 'Depth of the recess', min: 0.5, max: 200 }),
  face: f.choice(['top', 'under'], { about: 'Face that it is cut in; its shape is given as seen from above either way' }).default('top'),
}).refine((r) => [r.path, r.circle, r.box].filter((given) => given !== undefined).length === 1, 'takes exactly one of path, circle and box')
  .superRefine((r, ctx) => {
    if (r.path === undefined) return;
    if (r.size === undefined) {
      ctx.addIssue({ ...customIssue(sizeMissing(f), undefined), path: ['size'] });
      return;
    }
    const issue = outlineIssue(r.path) === undefined ? reachIssue(r.path, r.size) : undefined;
    if (issue !== undefined) ctx.addIssue({ ...customIssue(issue, r.path), path: ['path'] });
  })
  .refine((r) => r.path !== undefined || r.size === undefined, { message: 'size goes with a path; a circle and a box have their own', path: ['size'] })
  .meta({ description: 'A recess' });

const cutter = (f: FieldReader) => z.strictObject({
  diameter: f.length({ about: 'Diameter of the router cutter', min: leastCutter, max: 100 }),
  bushing: f.length({ about: 'Outside diameter of the guide bushing; left out: a flush-trim bit whose bearing is as large as the cutter', min: 2, max: 120 }).optional(),
  length: f.length({ about: 'Length of its cutting edges; left out: the page says how long they may be', min: 2, max: 150 }).optional(),
  templateThickness: f.length({ about: 'Thickness of the sheet that the template is made of; left out: 1/2 in (12 mm)', min: 2, max: 50 }).optional(),
}).meta({ description: 'The cutter that follows the template: 1/2 in (12 mm) flush trim unless given' })
  .prefault({ diameter: f.units === 'inch' ? '1/2 in' : '12 mm' });

const indexPins = (f: FieldReader) => z.strictObject({
  diameter: f.length({ about: 'Diameter of the two index pins', min: 2, max: 30 }).default(f.units === 'inch' ? 6.35 : 6),
  spacing: f.length({ about: 'Distance between the two pins; left out: clear of the mouth by 10 mm', min: 10, max: 2000 }).optional(),
}).meta({ description: 'Index pins that a one-slot template walks along a pitch stick on' }).prefault({});

const spline = (f: FieldReader) => z.strictObject({
  thickness: f.length({ about: 'Thickness of the loose spline; left out: the shop size nearest a third of the board', min: 1, max: 100 }).optional(),
  groove: f.length({ about: 'Depth of its groove in each half', min: 3, max: 100 }).default(f.units === 'inch' ? 15.875 : 16),
  margin: f.length({ about: 'How far the groove stops short of the edges', min: 0, max: 500 }).default(f.units === 'inch' ? 19.05 : 20),
}).meta({ description: 'Loose spline of the joints between the parts of the board' }).prefault({});

/** Slots of one board, all rows together. */
const mostSlots = 1000;

/** What may be written for a rack top. Lengths come out in mm, angles in radians. */
export const rackTopSchema = (f: FieldReader) => z.strictObject({
  board: board(f),
  slots: z.union([slot(f), z.array(slot(f)).max(mostSlots)]).default([]).superRefine((rows, ctx) => {
    const count = [rows].flat().reduce((sum, row) => sum + row.count, 0);
    if (count > mostSlots) ctx.addIssue(customIssue({ code: 'too-many-slots', message: `come to ${count} slots`, allowed: `at most ${mostSlots} on a board` }, undefined));
  }).meta({ description: 'Slots: one row by count and pitch, or a list of rows and single slots' }),
  holes: z.array(hole(f)).max(200).default([]).meta({ description: 'Holes for legs and posts' }),
  recesses: z.array(recess(f)).max(100).default([]).meta({ description: 'Recesses in the top or the underside' }),
  cutter: cutter(f),
  indexPins: indexPins(f),
  split: z.array(f.length({ about: 'Station of a joint from the left end', max: longestBoard })).max(50).default([]).meta({ description: 'Stations at which the parts of the board are joined, each in a land' }),
  spline: spline(f),
});

/** The fields of a rack top as read: mm, radians, rounds looked up. */
export type RackTopFields = z.infer<ReturnType<typeof rackTopSchema>>;
/** A row of slots as asked for: mm, radians. */
export type SlotFields = z.infer<ReturnType<typeof slot>>;
/** A hole for a leg as asked for: mm, radians. */
export type HoleFields = z.infer<ReturnType<typeof hole>>;
/** A recess as asked for: mm, radians. */
export type RecessFields = z.infer<ReturnType<typeof recess>>;
