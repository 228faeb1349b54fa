import type { Point } from './point.js';

/** A true curve of the drawing plane, mm, given point by point over a parameter of its own. */
export interface Curve {
  readonly point: (t: number) => Point;
  /**
   * The derivative of `point` by t, exact. At a cusp `side` says from where the curve is seen: −1 from below t, 1 from
   * above; a curve without cusps takes no notice of it.
   */
  readonly slope: (t: number, side?: -1 | 1) => Point;
}
