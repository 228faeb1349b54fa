import { pathArea } from '../../geometry/path-area.js';
import { minimumRadius, type Bend } from '../../geometry/minimum-radius.js';
import type { Path } from '../../geometry/path.js';
import { point, type Point } from '../../geometry/point.js';
import { circle, circularArc } from '../../geometry/shapes.js';
import type { Segment } from '../../geometry/path.js';

/** A recess, mm; its outline on paper as seen from above. */
export interface Recess {
  readonly number: number;
  readonly sort: 'path' | 'circle' | 'box';
  readonly along: number;
  readonly across: number;
  readonly centre: Point;
  readonly depth: number;
  readonly face: 'top' | 'under';
  readonly outline: Path;
  readonly width: number;
  readonly height: number;
  /** Least radius inside it: 0 at a sharp corner. */
  readonly insideRadius: number;
  /** Where that bend is, on paper; undefined where there is none. */
  readonly tightestAt: Point | undefined;
  /** What the cutter leaves, where it cannot reach into every corner. */
  readonly reached: Path | undefined;
  /** The template's opening for a guide bushing. */
  readonly template: Path | undefined;
}

/** A box about the origin with rounded corners; the radius at most half the shorter side. Exact. */
export const roundedBox = (width: number, height: number, radius: number): Path => {
  const [x, y] = [width / 2, height / 2];
  const r = Math.min(radius, x, y);
  const corner = (cx: number, cy: number, t0: number): Segment[] => (r > 0 ? [circularArc(point(cx, cy), r, t0, t0 + Math.PI / 2)] : []);
  const line = (px: number, py: number): Segment => ({ kind: 'line', to: point(px, py) });
  return {
    start: point(-x + r, -y), closed: true,
    segments: [
      line(x - r, -y), ...corner(x - r, -y + r, -Math.PI / 2), line(x, y - r), ...corner(x - r, y - r, 0),
      line(-x + r, y), ...corner(-x + r, y - r, Math.PI / 2), line(-x, -y + r), ...corner(-x + r, -y + r, Math.PI),
    ],
  };
};

/** A circle about the origin by its diameter. */
export const disc = (diameter: number): Path => circle(point(0, 0), diameter / 2);

/** The tightest of an outline's bends towards its inside, which a cutter in the recess must get into; radius 0 at a sharp corner. */
export const tightestInside = (outline: Path): Bend => {
  const { clockwise, anticlockwise } = minimumRadius(outline);
  return pathArea(outline) > 0 ? clockwise : anticlockwise;
};
