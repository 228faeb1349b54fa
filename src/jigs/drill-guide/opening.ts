import { boreOnMain } from '../../geometry/bore-on-main.js';
import type { Curve } from '../../geometry/curve.js';
import { fitCurve } from '../../geometry/fit-curve.js';
import type { Path } from '../../geometry/path.js';
import type { Point } from '../../geometry/point.js';
import { wingParameters } from '../../geometry/saddle-curve.js';
import type { SaddleJoint } from '../../geometry/saddle.js';

/**
 * The edge of the hole in the round's surface, unrolled: x along the round from where the bit's axis enters, towards the
 * acute side; y = −girth from the line that faces the bit, so that the paper is read from outside. The girth lies on the
 * paper's mid-plane. `joint.branch` is the bit's radius; parameter φ about the bit, as in the saddle. Exact. Refuses
 * (GeometryError) a bit that runs off the round.
 */
export const openingCurve = (joint: SaddleJoint, paperThickness: number): Curve => {
  const { main, angle, offset } = joint;
  const bore = boreOnMain(joint);
  const entry = Math.sqrt((main - offset) * (main + offset)) / Math.tan(angle);
  const swell = (main + paperThickness / 2) / main;
  const turned = (p: Point): Point => ({ x: p.y, y: -p.x * swell });
  return {
    point: (phi) => {
      const { x, y } = turned(bore.point(phi));
      return { x: x - entry, y };
    },
    slope: (phi, side) => turned(bore.slope(phi, side)),
  };
};

/** The opening as one closed path of cubics, in the frame of `openingCurve`; within 0.8 µm of the true curve. */
export const openingPath = (joint: SaddleJoint, paperThickness: number): Path => ({
  ...fitCurve(openingCurve(joint, paperThickness), { from: 0, to: 2 * Math.PI, tolerance: 0.0008, breaks: wingParameters(0, 2 * Math.PI) }),
  closed: true,
});

/** Where `slope`, of the sign of `sign` at `low` and of the other one half a turn on, passes through zero; to the last bit. */
const turnOf = (slope: (phi: number) => number, low: number, sign: 1 | -1): number => {
  let [a, b] = [low, low + Math.PI];
  for (let i = 0; i < 60; i += 1) {
    const middle = (a + b) / 2;
    if (slope(middle) * sign > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};

/** Extent of the opening along the round, mm, from its furthest point on the obtuse side to that on the acute side; to 1e-9 mm. */
export const openingLengthOnRound = (joint: SaddleJoint): number => {
  const bore = boreOnMain(joint);
  const slope = (phi: number): number => bore.slope(phi).y;
  return bore.point(turnOf(slope, -Math.PI / 2, 1)).y - bore.point(turnOf(slope, Math.PI / 2, -1)).y;
};
