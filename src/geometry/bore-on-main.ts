import type { Curve } from './curve.js';
import { cosOverHeight, requireSaddle, type SaddleJoint } from './saddle.js';

/** How high the edge stands over the main's axis, square to it. */
const overMain = ({ main, branch, offset }: SaddleJoint, phi: number): number => {
  const side = offset + branch * Math.sin(phi);
  return Math.sqrt(Math.max(0, (main - side) * (main + side)));
};

/**
 * The hole that a round tool along the branch's axis makes in the main, unrolled from the main's surface: x is the half-girth
 * R·asin((e + r·sin φ)/R) from the line that faces the branch, y runs along the main towards the acute side from the
 * crossing of the axes, [√(R² − w²)·cos θ + r·cos φ] ÷ sin θ. `branch` is the tool's radius; φ as on the branch. Exact. Its
 * length is that of the cut edge on the branch. (Atkins, Practical Sheet and Plate Metal Work, ch. III, for the equality.)
 */
export const boreOnMain = (joint: SaddleJoint): Curve => {
  requireSaddle(joint);
  const { main, branch, angle, offset } = joint;
  const side = (phi: number): number => offset + branch * Math.sin(phi);
  return {
    point: (phi) => ({
      x: main * Math.asin(Math.min(1, Math.max(-1, side(phi) / main))),
      y: (overMain(joint, phi) * Math.cos(angle) + branch * Math.cos(phi)) / Math.sin(angle),
    }),
    slope: (phi, from) => {
      const ratio = cosOverHeight(joint, phi, from);
      return {
        x: main * branch * ratio,
        y: (-side(phi) * branch * ratio * Math.cos(angle) - branch * Math.sin(phi)) / Math.sin(angle),
      };
    },
  };
};
