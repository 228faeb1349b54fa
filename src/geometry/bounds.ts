import { boxOf, uniteBoxes, type Box } from './box.js';
import { cubicTurns } from './cubic-roots.js';
import { arcPoint, eachSegment, endOf, type Arc, type Cubic, type Path, type Segment } from './path.js';
import type { Point } from './point.js';

/** Parameters strictly inside an arc where one coordinate turns back: t = atan2(v, u) + k·π. */
export const arcTurns = (arc: Arc, axis: 'x' | 'y'): number[] => {
  const low = Math.min(arc.t0, arc.t1);
  const high = Math.max(arc.t0, arc.t1);
  const first = Math.atan2(arc.v[axis], arc.u[axis]);
  const turns: number[] = [];
  for (let t = first + Math.ceil((low - first) / Math.PI) * Math.PI; t < high; t += Math.PI) turns.push(t);
  return turns;
};

/** The point of a cubic that starts at `from`, at parameter t in 0…1. */
export const cubicPoint = (from: Point, s: Cubic, t: number): Point => {
  const k = 1 - t;
  const w = [k * k * k, 3 * k * k * t, 3 * k * t * t, t * t * t] as const;
  return {
    x: w[0] * from.x + w[1] * s.c1.x + w[2] * s.c2.x + w[3] * s.to.x,
    y: w[0] * from.y + w[1] * s.c1.y + w[2] * s.c2.y + w[3] * s.to.y,
  };
};

/** The least box that holds a segment starting at `from`; exact to rounding, the pen's width not counted. */
export const segmentBounds = (segment: Segment, from: Point): Box => {
  const ends = [from, endOf(segment)];
  switch (segment.kind) {
    case 'line': return boxOf(ends);
    case 'arc': return boxOf([...ends, ...[...arcTurns(segment, 'x'), ...arcTurns(segment, 'y')].map((t) => arcPoint(segment, t))]);
    case 'cubic': {
      const { c1, c2, to } = segment;
      const turns = [...cubicTurns(from.x, c1.x, c2.x, to.x), ...cubicTurns(from.y, c1.y, c2.y, to.y)];
      return boxOf([...ends, ...turns.map((t) => cubicPoint(from, segment, t))]);
    }
  }
};

/** The least box that holds a path; exact to rounding, the pen's width not counted. */
export const pathBounds = (path: Path): Box => {
  const boxes: Box[] = [boxOf([path.start])];
  eachSegment(path, (segment, from) => boxes.push(segmentBounds(segment, from)));
  return uniteBoxes(boxes);
};
