import { cubicRoots } from './cubic-roots.js';
import type { PlacedSegment } from './explicit-segments.js';
import type { Arc } from './path.js';

const TURN = 2 * Math.PI;

/** Where centre + u·cos t + v·sin t takes the value `level` within an arc's sweep, as parts of the sweep. */
const arcCrossings = ({ t0, t1 }: Arc, [centre, u, v]: readonly [number, number, number], level: number): number[] => {
  const reach = Math.hypot(u, v);
  const ratio = (level - centre) / reach;
  if (!(Math.abs(ratio) <= 1)) return [];
  const middle = Math.atan2(v, u);
  const half = Math.acos(ratio);
  const [low, high] = [Math.min(t0, t1), Math.max(t0, t1)];
  return [middle - half, middle + half].flatMap((first) => {
    const found: number[] = [];
    for (let t = first + Math.ceil((low - first) / TURN) * TURN; t <= high; t += TURN) found.push((t - t0) / (t1 - t0));
    return found;
  });
};

/**
 * Parameters in 0…1 at which a segment has the given x or y (`axis`), in no order: lines and arcs in closed form, cubics
 * to 1e-12. A line that runs along the level has none.
 */
export const levelCrossings = ({ segment, from }: PlacedSegment, axis: 'x' | 'y', level: number): readonly number[] => {
  switch (segment.kind) {
    case 'line': {
      const t = (level - from[axis]) / (segment.to[axis] - from[axis]);
      return t >= 0 && t <= 1 ? [t] : [];
    }
    case 'arc': return arcCrossings(segment, [segment.centre[axis], segment.u[axis], segment.v[axis]], level);
    case 'cubic': return cubicRoots([from[axis], segment.c1[axis], segment.c2[axis], segment.to[axis]], level);
  }
};
