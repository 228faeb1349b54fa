import { explicitSegments } from './explicit-segments.js';
import { type Path, pathEnd, type Segment } from './path.js';
import type { Point } from './point.js';

const backwards = (segment: Segment, from: Point): Segment => {
  switch (segment.kind) {
    case 'line': return { kind: 'line', to: from };
    case 'arc': return { ...segment, t0: segment.t1, t1: segment.t0 };
    case 'cubic': return { kind: 'cubic', c1: segment.c2, c2: segment.c1, to: from };
  }
};

/** The same stroke run the other way; exact. A closed path keeps its start. */
export const reversePath = (path: Path): Path => ({
  start: pathEnd(path),
  segments: explicitSegments(path).map(({ segment, from }) => backwards(segment, from)).reverse(),
  closed: path.closed,
});
