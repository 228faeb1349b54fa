import type { SaddleJoint } from '../../geometry/saddle.js';
import { saddleHeights } from '../../geometry/saddle-heights.js';
import type { Context } from '../jig.js';
import type { PinFields } from './schema.js';

/** The pin or loose tenon of one end: it lies on the branch's axis. mm. */
export interface Pin {
  readonly diameter: number;
  readonly intoBranch: number;
  /** Along the axis from the finished tip, the horn, to the bottom of the hollow: on top of the hole in the branch, drilled while the end is whole. */
  readonly hornToHollow: number;
  /** Along the pin from where the axis enters the main. */
  readonly intoMain: number;
  /** Wood left in the main beyond the end of the hole, square to its surface; below 0 the hole comes out. */
  readonly wall: number;
  /** Wood left in the main beside the hole where it passes closest to the surface. */
  readonly skin: number;
}

/** A hole is drilled this much deeper than the pin, for glue and air: common practice, mm. */
export const holeExtra = 1.5;
const leastIntoBranch = 30;

/** 2/5 of the branch, to the nearest owned bit between 1/3 and 1/2 of it, else to 1/16 in or 1 mm. Common practice. */
const defaultDiameter = (branch: number, { shop, units }: Context): number => {
  const wanted = 0.4 * branch;
  const owned = (shop.bits ?? []).map((b) => b.diameter).filter((d) => d >= branch / 3 && d <= branch / 2)
    .sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted));
  const rounding = units === 'inch' ? 25.4 / 16 : 1;
  return owned[0] ?? Math.max(rounding, Math.round(wanted / rounding) * rounding);
};

/**
 * Wood left beyond the rim of a hole's flat end, mm: to the main's surface where the end lies past the axis' level,
 * else across the whole far half. Below 0 the hole comes out. Rim looked at every half degree: within 1e-3 mm.
 */
const wallBeyond = ({ main, angle, offset }: SaddleJoint, radius: number, depth: number): number => {
  const entry = Math.sqrt((main - offset) * (main + offset)) / Math.sin(angle);
  let wall = Infinity;
  for (let i = 0; i < 720; i += 1) {
    const turn = (i * Math.PI) / 360;
    const across = offset + radius * Math.sin(turn);
    const height = (entry - depth) * Math.sin(angle) - radius * Math.cos(turn) * Math.cos(angle);
    wall = Math.min(wall, height < 0 ? main - Math.hypot(across, height) : main - Math.abs(across) + height);
  }
  return wall;
};

/** The pin of a joint with what the spec leaves out filled in; undefined where the spec asks for none. */
export const solvePin = (fields: PinFields, joint: SaddleJoint, context: Context): Pin | undefined => {
  if (fields.diameter === 0) return undefined;
  const diameter = fields.diameter ?? defaultDiameter(2 * joint.branch, context);
  const intoMain = fields.intoMain ?? (2 / 3) * 2 * joint.main;
  return {
    diameter,
    intoBranch: fields.intoBranch ?? Math.max(3 * diameter, leastIntoBranch),
    hornToHollow: Math.sqrt((joint.main - joint.offset) * (joint.main + joint.offset)) / Math.sin(joint.angle) - saddleHeights(joint).least,
    intoMain,
    wall: wallBeyond(joint, diameter / 2, intoMain + holeExtra),
    skin: joint.main - Math.abs(joint.offset) - diameter / 2,
  };
};
