import { pathBounds } from '../../../src/geometry/bounds.js';
import type { Path } from '../../../src/geometry/path.js';
import type { Point } from '../../../src/geometry/point.js';

/** How far a point lies off a closed polyline. */
export const off = (p: Point, line: readonly Point[]): number => line.reduce((least, a, i) => {
  const b = line[(i + 1) % line.length]!;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.min(least, Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy));
}, Infinity);

/** The path whose box is that of `like`, as another writer left it. */
export const nearestPath = (paths: readonly Path[], like: Path): Path => {
  const box = pathBounds(like);
  const found = paths.find((p) => {
    const b = pathBounds(p);
    return Math.abs(b.x0 - box.x0) + Math.abs(b.x1 - box.x1) + Math.abs(b.y0 - box.y0) + Math.abs(b.y1 - box.y1) < 0.01;
  });
  if (found === undefined) throw new Error('no such path in the PDF');
  return found;
};
