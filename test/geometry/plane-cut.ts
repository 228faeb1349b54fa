import type { Curve } from '../../src/geometry/curve.js';

/** A plane cut across a round: radius, mm, and the tilt from a square cut, radians, below 90°. */
export interface PlaneCut {
  readonly radius: number;
  readonly tilt: number;
}

/** Height of a plane cut's edge along the round, mm from where the cut meets the axis: r·cos φ·tan tilt. Exact. (Apostol & Mnatsakanian, Amer. Math. Monthly 114 (2007), sec. 2: it unrolls to a sine.) */
export const planeCutHeight = ({ radius, tilt }: PlaneCut, phi: number): number => radius * Math.cos(phi) * Math.tan(tilt);

/** The edge of a plane cut on the wrap strip: x = φ·(r + t/2), y = −height, for the far end is up. Exact. */
export const planeCutCurve = (cut: PlaneCut, paperThickness: number): Curve => {
  const girth = cut.radius + paperThickness / 2;
  return {
    point: (phi) => ({ x: phi * girth, y: -planeCutHeight(cut, phi) }),
    slope: (phi) => ({ x: girth, y: cut.radius * Math.sin(phi) * Math.tan(cut.tilt) }),
  };
};
