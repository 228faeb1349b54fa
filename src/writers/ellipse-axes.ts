import type { Arc } from '../geometry/path.js';
import { cross } from '../geometry/point.js';

/** An ellipse by its principal half-axes, mm, and the turn of the first from +x towards +y, radians. */
export interface EllipseAxes {
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
  /** Whether growing t runs clockwise on the page. */
  readonly clockwise: boolean;
}

/**
 * Principal axes of the ellipse that an arc's conjugate half-diameters u, v span: eigenvectors of u·uᵀ + v·vᵀ.
 * Exact to rounding; the short axis comes from the area so that it keeps its figures when the ellipse is thin.
 */
export const ellipseAxes = ({ u, v }: Arc): EllipseAxes => {
  const xx = u.x * u.x + v.x * v.x;
  const yy = u.y * u.y + v.y * v.y;
  const xy = u.x * u.y + v.x * v.y;
  const half = Math.hypot((xx - yy) / 2, xy);
  const rx = Math.sqrt((xx + yy) / 2 + half);
  const area = cross(u, v);
  const round = half <= 1e-14 * (xx + yy);
  return { rx, ry: round ? rx : Math.abs(area) / rx, turn: round ? 0 : Math.atan2(2 * xy, xx - yy) / 2, clockwise: area > 0 };
};
