import fc from 'fast-check';
import type { Arc, Path, Segment } from '../../src/geometry/path.js';
import { arcPoint } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import type { SaddleJoint } from '../../src/geometry/saddle.js';

/** Numbers on a grid of a thousandth: figures of 1e-300 mm only test the floating point. */
const number = (min: number, max: number) => fc.integer({ min: Math.ceil(min * 1000), max: Math.floor(max * 1000) }).map((n) => n / 1000);

export const anyPoint: fc.Arbitrary<Point> = fc.record({ x: number(-100, 100), y: number(-100, 100) });

const away: fc.Arbitrary<Point> = fc.record({ x: number(5, 60), y: number(-60, 60) });

type Draw = (from: Point) => Segment;

/** An arc of an ellipse that starts where the pen stands. */
const arcFrom = (u: Point, v: Point, t0: number, sweep: number): Draw => (from) => {
  const bare: Arc = { kind: 'arc', centre: { x: 0, y: 0 }, u, v, t0, t1: t0 + sweep };
  const at = arcPoint(bare, t0);
  return { ...bare, centre: { x: from.x - at.x, y: from.y - at.y } };
};

const anySegment: fc.Arbitrary<Draw> = fc.oneof(
  anyPoint.map((to): Draw => () => ({ kind: 'line', to })),
  fc.tuple(anyPoint, anyPoint, anyPoint).map(([c1, c2, to]): Draw => () => ({ kind: 'cubic', c1, c2, to })),
  fc.tuple(away, number(5, 60), number(-3, 3), number(0.1, 6), fc.boolean()).map(([u, k, t0, sweep, back]): Draw =>
    arcFrom(u, { x: (-u.y * k) / 30, y: (u.x * k) / 40 }, t0, back ? -sweep : sweep)),
);

/** A path of lines, cubics and elliptical arcs, open or closed. */
export const anyPath: fc.Arbitrary<Path> = fc.tuple(anyPoint, fc.array(anySegment, { minLength: 1, maxLength: 5 }), fc.boolean())
  .map(([start, draws, closed]) => {
    const segments: Segment[] = [];
    let from = start;
    for (const draw of draws) {
      const segment = draw(from);
      segments.push(segment);
      from = segment.kind === 'arc' ? arcPoint(segment, segment.t1) : segment.to;
    }
    return { start, segments, closed };
  });

/** Any joint that can be cut: diameters 3…300 mm, r/R 0.05…1, 8…90°, any legal offset, equality and just below it among them. */
export const anyJoint: fc.Arbitrary<SaddleJoint> = fc.record({
  main: number(1.5, 150),
  ratio: fc.oneof(number(0.05, 1), number(0, 12).map((k) => Math.max(0.05, 1 - Math.pow(10, -k))), fc.constant(1)),
  angle: number((8 * Math.PI) / 180, Math.PI / 2),
  share: fc.oneof(number(-1, 1), fc.constantFrom(-1, 0, 1), number(1, 10).map((k) => 1 - Math.pow(10, -k))),
}).map(({ main, ratio, angle, share }) => ({ main, branch: main * ratio, angle, offset: (main - main * ratio) * share }));

/** Joints of everyday proportions, clear of the limits. */
export const easyJoint: fc.Arbitrary<SaddleJoint> = fc.record({
  main: number(5, 100), ratio: number(0.1, 0.9), angle: number(0.3, Math.PI / 2), share: number(-0.9, 0.9),
}).map(({ main, ratio, angle, share }) => ({ main, branch: main * ratio, angle, offset: main * (1 - ratio) * share }));
