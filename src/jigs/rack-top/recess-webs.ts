import { boxesMeet, growBox } from '../../geometry/box.js';
import { flattenPath } from '../../geometry/flatten-path.js';
import { distance, type Point } from '../../geometry/point.js';
import { pointInPath } from '../../geometry/point-in-path.js';
import type { Path } from '../../geometry/path.js';
import { capsule, gapBetween, type Convex } from './convex.js';
import type { Recess } from './recess.js';
import { recessBounds } from './solve-recesses.js';

/** Chords along an outline for measuring webs keep within this of it, mm. */
const measuring = 0.01;

/** Wood between a recess and a region about `middle`, seen from above; negative where they meet. To 0.01 mm. */
export const woodToRecess = (recess: Recess, region: Convex, middle: Point): number => {
  const corners = flattenPath(recess.outline, measuring);
  const gap = corners.reduce((least, p, i) => Math.min(least, gapBetween(region, capsule(p, corners[(i + 1) % corners.length]!, 0))), Infinity);
  return gap > 0 && pointInPath(recess.outline, middle) ? -gap : gap;
};

const evenly = (path: Path): Point[] => {
  const corners = flattenPath(path, measuring);
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const count = Math.max(1, Math.ceil(distance(a, b)));
    return Array.from({ length: count }, (_, k) => ({ x: a.x + ((b.x - a.x) * k) / count, y: a.y + ((b.y - a.y) * k) / count }));
  });
};

/** Wood between two recesses seen from above, sampled at 1 mm; at most 0 where they overlap; Infinity where they are far apart. */
export const woodBetweenRecesses = (a: Recess, b: Recess, reach: number): number => {
  if (!boxesMeet(growBox(recessBounds(a), reach), recessBounds(b))) return Infinity;
  const [of, against] = [evenly(a.outline), evenly(b.outline)];
  if (of.some((p) => pointInPath(b.outline, p)) || against.some((p) => pointInPath(a.outline, p))) return 0;
  return of.reduce((least, p) => against.reduce((near, q) => Math.min(near, distance(p, q)), least), Infinity);
};
