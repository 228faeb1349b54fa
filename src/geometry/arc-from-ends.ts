import type { Arc } from './path.js';
import { distance, type Point } from './point.js';

/** An elliptical arc as SVG gives it: half-axes, the turn of the first from +x towards +y (radians), the flags, both ends. */
export interface EndsArc {
  readonly from: Point;
  readonly to: Point;
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
  readonly large: boolean;
  readonly sweep: boolean;
}

const angleOf = (x: number, y: number): number => Math.atan2(y, x);

/**
 * The arc by its centre of one given by its ends; exact. Undefined where it is no arc: ends in one point (drop it) or a
 * half-axis of 0 (a straight run). Negative half-axes count as positive, too small ones are enlarged until they reach.
 * (SVG 2, implementation notes B.2.4 and B.2.5.)
 */
export const arcFromEnds = (given: EndsArc): Arc | undefined => {
  const { from, to, turn, large, sweep } = given;
  if (given.rx === 0 || given.ry === 0 || distance(from, to) === 0) return undefined;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [hx, hy] = [(from.x - to.x) / 2, (from.y - to.y) / 2];
  const [x, y] = [(cos * hx + sin * hy) / Math.abs(given.rx), (cos * hy - sin * hx) / Math.abs(given.ry)];
  const reach = Math.hypot(x, y);
  const grow = Math.max(1, reach);
  const [rx, ry] = [Math.abs(given.rx) * grow, Math.abs(given.ry) * grow];
  const [px, py] = [x / grow, y / grow];
  const square = px * px + py * py;
  const k = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, (1 - square) / square));
  const [cx, cy] = [k * py, -k * px];
  const t0 = angleOf(px - cx, py - cy);
  const raw = angleOf(-px - cx, -py - cy) - t0;
  const wrapped = ((raw % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return {
    kind: 'arc',
    centre: { x: cos * rx * cx - sin * ry * cy + (from.x + to.x) / 2, y: sin * rx * cx + cos * ry * cy + (from.y + to.y) / 2 },
    u: { x: cos * rx, y: sin * rx },
    v: { x: -sin * ry, y: cos * ry },
    t0,
    t1: t0 + (sweep ? wrapped : wrapped - 2 * Math.PI),
  };
};
