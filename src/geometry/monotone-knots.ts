import { arcTurns } from './bounds.js';
import { cubicTurns } from './cubic-roots.js';
import type { PlacedSegment } from './explicit-segments.js';

/** Parameters in 0…1, ends among them, between which y only rises or only falls. */
export const monotoneKnots = ({ segment, from }: PlacedSegment): readonly number[] => {
  switch (segment.kind) {
    case 'line': return [0, 1];
    case 'arc': {
      const { t0, t1 } = segment;
      const inner = arcTurns(segment, 'y').map((t) => (t - t0) / (t1 - t0)).sort((a, b) => a - b);
      return [0, ...inner.filter((t) => t > 0 && t < 1), 1];
    }
    case 'cubic': return [0, ...cubicTurns(from.y, segment.c1.y, segment.c2.y, segment.to.y), 1];
  }
};
