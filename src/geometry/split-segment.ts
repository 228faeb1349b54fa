import type { PlacedSegment } from './explicit-segments.js';
import { type Cubic, endOf, type Segment } from './path.js';
import { between, type Point } from './point.js';
import { arcAngle } from './segment-point.js';

const splitCubic = (s: Cubic, from: Point, t: number): readonly [Cubic, Cubic] => {
  const a = between(from, s.c1, t);
  const b = between(s.c1, s.c2, t);
  const c = between(s.c2, s.to, t);
  const ab = between(a, b, t);
  const bc = between(b, c, t);
  const to = between(ab, bc, t);
  return [{ kind: 'cubic', c1: a, c2: ab, to }, { kind: 'cubic', c1: bc, c2: c, to: s.to }];
};

/** The two parts of a segment that starts at `from`, parted at `t` in 0…1 (an arc by its angle, a cubic by de Casteljau); exact. */
export const splitSegment = (segment: Segment, from: Point, t: number): readonly [Segment, Segment] => {
  switch (segment.kind) {
    case 'line': return [{ kind: 'line', to: between(from, segment.to, t) }, segment];
    case 'arc': {
      const angle = arcAngle(segment, t);
      return [{ ...segment, t1: angle }, { ...segment, t0: angle }];
    }
    case 'cubic': return splitCubic(segment, from, t);
  }
};

/** The part of a segment between the parameters 0 ≤ a < b ≤ 1, with the point it starts from; exact. */
export const subSegment = ({ segment, from }: PlacedSegment, a: number, b: number): PlacedSegment => {
  const head = b < 1 ? splitSegment(segment, from, b)[0] : segment;
  if (a <= 0) return { from, segment: head };
  const [before, after] = splitSegment(head, from, a / b);
  return { from: endOf(before), segment: after };
};
