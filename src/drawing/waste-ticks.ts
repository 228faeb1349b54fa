import { explicitSegments, type PlacedSegment } from '../geometry/explicit-segments.js';
import type { Path } from '../geometry/path.js';
import { add, distance, point } from '../geometry/point.js';
import { segmentPoint, segmentSlope } from '../geometry/segment-point.js';
import { line } from '../geometry/shapes.js';
import type { Shape } from './drawing.js';
import { shape } from './items.js';

/** On which side the waste lies, and how the ticks stand. */
export interface WasteTickOptions {
  /** Of the way that the path goes, as seen on the page. */
  readonly side: 'left' | 'right';
  /** Along the path, mm; the ticks share the path's length evenly. */
  readonly spacing?: number;
  /** Of a tick, mm. */
  readonly length?: number;
}

/** Steps in which a segment is measured: a tick stands on the path exactly, but its station need not be true to a micrometre. */
const steps = 16;

/** A piece of a segment from parameter t0 to t1, and the length of the path up to its start. */
interface Piece extends PlacedSegment {
  readonly t0: number;
  readonly t1: number;
  readonly run: number;
  readonly length: number;
}

const piecesOf = (path: Path): Piece[] => {
  let run = 0;
  return explicitSegments(path).flatMap(({ segment, from }) => Array.from({ length: steps }, (_, i): Piece => {
    const [t0, t1] = [i / steps, (i + 1) / steps];
    const length = distance(segmentPoint(segment, from, t0), segmentPoint(segment, from, t1));
    run += length;
    return { segment, from, t0, t1, run: run - length, length };
  }));
};

const tick = ({ segment, from }: PlacedSegment, t: number, { side, length = 2 }: WasteTickOptions): Shape => {
  const at = segmentPoint(segment, from, t);
  const slope = segmentSlope(segment, from, t);
  const k = length / Math.SQRT2 / Math.max(Math.hypot(slope.x, slope.y), 1e-300);
  const across = side === 'right' ? point(-slope.y, slope.x) : point(slope.y, -slope.x);
  return shape('waste', line(at, add(at, point((across.x + slope.x) * k, (across.y + slope.y) * k))));
};

/** Short ticks at 45° from a path into its waste side, the side that is cut away. They start on the path itself. */
export const wasteTicks = (path: Path, options: WasteTickOptions): Shape[] => {
  const pieces = piecesOf(path).filter((p) => p.length > 0);
  const whole = pieces.reduce((sum, p) => sum + p.length, 0);
  const count = Math.max(1, Math.round(whole / (options.spacing ?? 4)));
  let next = 0;
  return pieces.flatMap((piece) => {
    const ticks: Shape[] = [];
    for (; next < count; next++) {
      const along = ((whole * (next + 0.5)) / count - piece.run) / piece.length;
      if (along > 1) break;
      ticks.push(tick(piece, piece.t0 + (piece.t1 - piece.t0) * Math.max(along, 0), options));
    }
    return ticks;
  });
};
