import type { Curve } from './curve.js';
import { fitCurve } from './fit-curve.js';
import type { Path } from './path.js';
import { requireSaddle, saddleHeight, saddleSlope, type SaddleJoint } from './saddle.js';

/**
 * The cut edge on the wrap strip: x = φ·(r + t/2), for the paper's mid-plane keeps its length, and y = −z(φ), for the
 * branch's far end is up. Parameter φ, any number of turns; origin where φ = 0 meets the crossing of the axes; exact.
 */
export const saddleCurve = (joint: SaddleJoint, paperThickness: number): Curve => {
  requireSaddle(joint);
  const girth = joint.branch + paperThickness / 2;
  return {
    point: (phi) => ({ x: phi * girth, y: -saddleHeight(joint, phi) }),
    slope: (phi, side) => ({ x: girth, y: -saddleSlope(joint, phi, side) }),
  };
};

/** Every φ = ±90° strictly between `from` and `to`: cusps, or where the bend is sharpest, so that a fit does well to part there. */
export const wingParameters = (from: number, to: number): readonly number[] => {
  const first = Math.floor((from - Math.PI / 2) / Math.PI) + 1;
  const wings: number[] = [];
  for (let k = first; Math.PI / 2 + k * Math.PI < to; k += 1) wings.push(Math.PI / 2 + k * Math.PI);
  return wings.filter((wing) => wing > from);
};

/** What of the saddle is drawn. */
export interface SaddlePathOptions {
  readonly paperThickness: number;
  /** φ of the ends; 0 and 2π unless said. */
  readonly from?: number;
  readonly to?: number;
  /** Greatest distance from the true curve, mm; 0.0008 leaves room for a writer's rounding below 1 µm. */
  readonly tolerance?: number;
}

/** The cut edge on the wrap strip as cubics, in the frame of `saddleCurve`, within `tolerance` of the true curve. */
export const saddlePath = (joint: SaddleJoint, options: SaddlePathOptions): Path => {
  const { paperThickness, from = 0, to = 2 * Math.PI, tolerance = 0.0008 } = options;
  return fitCurve(saddleCurve(joint, paperThickness), { from, to, tolerance, breaks: wingParameters(from, to) });
};
