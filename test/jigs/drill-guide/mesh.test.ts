import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { arcToCubics } from '../../../src/geometry/arc-to-cubics.js';
import { cubicPoint } from '../../../src/geometry/bounds.js';
import { eachSegment, type Cubic, type Path } from '../../../src/geometry/path.js';
import type { Point } from '../../../src/geometry/point.js';
import type { DrillGuideSolution } from '../../../src/jigs/drill-guide/solve.js';
import { radians } from '../../../src/units/units.js';
import { partShapes } from '../../support/read-svg.js';
import { cylinderSolid, sagitta, solids, vertices } from '../../support/solids.js';
import { dot3, length3, plus, times, type Vector } from '../saddle-cope/joint-frame.js';
import { pattern, round, solved, stroked, writeAndRead } from './guide.js';
import { placeBlock, readBlock } from './written-block.js';

const facets = 256;
/** Single-precision vertices, chords between samples, and the micrometre allowed to what is written; mm. */
const reading = 0.0015;

/** A repeatable stream of numbers in 0…1 (Park & Miller's minimal standard). */
const stream = (seed: number) => () => (seed = (seed * 48271) % 2147483647) / 2147483647;

const randomGuide = (index: number, sole: 'v' | 'cove'): DrillGuideSolution => {
  const next = stream(104729 + 7919 * index);
  for (let i = 0; i < 5; i += 1) next();
  const between = (a: number, b: number): number => a + (b - a) * next();
  const diameter = between(24, 80);
  const drill = diameter * between(0.12, 0.4);
  const offset = index % 3 === 0 ? 0 : (diameter - drill) * 0.5 * between(-0.7, 0.7);
  return solved({ onto: round(diameter), drill, offset, angle: radians(between(15, 90)), depth: 0.4 * diameter, sole });
};

const sampled = (path: Path, count: number): Point[] => {
  const points: Point[] = [path.start];
  const add = (cubic: Cubic, from: Point): void => {
    for (let i = 1; i <= count; i += 1) points.push(cubicPoint(from, cubic, i / count));
  };
  eachSegment(path, (segment, from) => {
    if (segment.kind === 'cubic') add(segment, from);
    else if (segment.kind === 'line') points.push(segment.to);
    else {
      let start = from;
      for (const cubic of arcToCubics(segment)) {
        add(cubic, start);
        start = cubic.to;
      }
    }
  });
  return points;
};

const distanceTo = (p: Vector, curve: readonly Vector[]): number => {
  let best = Infinity;
  for (let i = 0; i + 1 < curve.length; i += 1) {
    const ab = plus(curve[i + 1]!, times(-1, curve[i]!));
    const ap = plus(p, times(-1, curve[i]!));
    const t = Math.min(1, Math.max(0, dot3(ap, ab) / (dot3(ab, ab) || 1)));
    best = Math.min(best, length3(plus(ap, times(-t, ab))));
  }
  return best;
};

/** The opening as written in both formats, and the point at which its centre lines cross. */
const writtenOpening = async (s: DrillGuideSolution) => {
  const { svg, pdf } = await writeAndRead(pattern(s, s.work.kind === 'flat' ? 'sole' : 'opening'));
  const arms = partShapes(svg, 'centre-line').map((shape) => pathBounds(shape.subpaths[0]!));
  const centre = { x: arms.find((a) => a.x1 - a.x0 < 1e-9)!.x0, y: arms.find((a) => a.y1 - a.y0 < 1e-9)!.y0 };
  // Of unbroken lines only the opening is drawn with the pen of bored edges, 0.25 mm.
  return { centre, curves: [partShapes(svg, 'opening')[0]!.subpaths[0]!, stroked(pdf, 0.25)[0]!] };
};

/** The bit's axis in the frame of the work, from the words of the convention alone. */
const axisOf = ({ angle, work }: DrillGuideSolution): { at: Vector; along: Vector } =>
  ({ at: [0, work.kind === 'round' ? work.offset : 0, 0], along: [Math.cos(angle), 0, Math.sin(angle)] });

/** An opening laid on the round, read from outside: x to the acute side, up the paper to the right seen from there. */
const wrapped = (s: DrillGuideSolution, curve: Path, centre: Point): Vector[] => {
  if (s.work.kind !== 'round') throw new Error('not a round');
  const { radius, offset } = s.work;
  const { along } = axisOf(s);
  const entry = (Math.sqrt(radius ** 2 - offset ** 2) / along[2]) * along[0];
  return sampled(curve, 40).map(({ x, y }): Vector => {
    const turn = Math.asin(offset / radius) + (centre.y - y) / (radius + s.paperThickness / 2);
    return [entry + x - centre.x, radius * Math.sin(turn), radius * Math.cos(turn)];
  });
};

/** Vertices of a solid that lie on the round and on the bore, on the side of the bit, with what the facets may be off there. */
const rimOnRound = (s: DrillGuideSolution, points: readonly Vector[]) => {
  if (s.work.kind !== 'round') throw new Error('not a round');
  const { radius } = s.work;
  const { at, along } = axisOf(s);
  const bit = s.drill / 2;
  const slack = sagitta(radius, facets) + sagitta(bit, facets) + 1e-4;
  return points.flatMap((p) => {
    const from = plus(p, times(-1, at));
    const beside = plus(from, times(-dot3(from, along), along));
    const radial: Vector = [0, p[1], p[2]];
    if (p[2] < 0 || Math.abs(length3(beside) - bit) > slack || Math.abs(length3(radial) - radius) > slack) return [];
    const cos = dot3(beside, radial) / (length3(beside) * length3(radial));
    return [{ at: p, error: (sagitta(radius, facets) + sagitta(bit, facets)) / Math.sqrt(1 - cos * cos) }];
  });
};

describe('the written opening, wrapped on the round, lies on the edge of the hole in a mesh boolean (manifold-3d)', () => {
  it.each(Array.from({ length: 16 }, (_, i) => i))('guide %i', async (index) => {
    const s = randomGuide(index, 'v');
    if (s.work.kind !== 'round') throw new Error('not a round');
    const reach = 8 * s.work.radius;
    const { at, along } = axisOf(s);
    const post = cylinderSolid({ at: [0, 0, 0], axis: [1, 0, 0], from: -reach, to: reach, radius: s.work.radius, facets });
    const bit = cylinderSolid({ at, axis: along, from: 0, to: reach, radius: s.drill / 2, facets });
    const rim = rimOnRound(s, vertices(post.subtract(bit)));
    expect(rim.length).toBeGreaterThan(facets);
    const { centre, curves } = await writtenOpening(s);
    for (const curve of curves) {
      const laid = wrapped(s, curve, centre);
      expect(Math.max(...rim.map(({ at: p, error }) => distanceTo(p, laid) - error))).toBeLessThan(reading);
    }
  });
});

/** The block as a solid in the frame of the work: blank, less the bore, less all below the sole, less its groove. */
const blockSolid = async (s: DrillGuideSolution) => {
  const b = await readBlock(s);
  const placed = placeBlock(b, s);
  const { x, y, z, origin } = placed.columns;
  const blank = solids.cube([b.length, b.width, b.height]).translate([0, -b.width / 2, 0])
    .subtract(cylinderSolid({ at: [b.bore.x, b.bore.y, 0], axis: [0, 0, 1], from: -1, to: b.height + 1, radius: b.bore.radius, facets }))
    .transform([...x, 0, ...y, 0, ...z, 0, ...origin, 1]);
  const plane = placed.place([0, 0, b.sole.obtuse])[2];
  const sawn = blank.subtract(solids.cube([2000, 2000, 1000]).translate([-1000, -1000, plane - 1000]));
  return { b, placed, plane, sawn };
};

const grooved = (s: DrillGuideSolution, sawn: Awaited<ReturnType<typeof blockSolid>>['sawn'], plane: number) => {
  if (s.work.kind !== 'round') return sawn;
  const { radius } = s.work;
  if (s.sole.form === 'cove') return sawn.subtract(cylinderSolid({ at: [0, 0, 0], axis: [1, 0, 0], from: -1500, to: 1500, radius, facets }));
  const apex = radius / Math.sin(s.sole.halfAngle);
  const wide = (apex - plane + 5) * Math.tan(s.sole.halfAngle);
  const v = solids.extrude([[[0, apex], [-wide, plane - 5], [wide, plane - 5]]], 3000)
    .transform([0, 1, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, -1500, 0, 0, 1]);
  return sawn.subtract(v);
};

describe('the block as written, set on the round by its sole', () => {
  it.each(Array.from({ length: 12 }, (_, i) => i))('guide %i holds the bit on the axis asked for, over the station mark', async (index) => {
    const s = randomGuide(index, index % 2 === 0 ? 'v' : 'cove');
    if (s.work.kind !== 'round') throw new Error('not a round');
    const b = await readBlock(s);
    const { boreAt, boreAlong, place } = placeBlock(b, s);
    expect(Math.abs(Math.atan2(boreAlong[2], boreAlong[0]) - s.angle)).toBeLessThan(1e-5);
    // What is written is rounded to 0.1 µm.
    expect(Math.abs(boreAt[1] - s.work.offset)).toBeLessThan(2e-4);
    expect(Math.abs(b.bore.radius - s.drill / 2)).toBeLessThan(2e-4);
    // Where that axis meets the round, and where the mark on the block's side says that it does.
    const surface = Math.sqrt(s.work.radius ** 2 - s.work.offset ** 2);
    const entry = boreAt[0] + ((surface - boreAt[2]) / boreAlong[2]) * boreAlong[0];
    const onSole = b.sole.obtuse + (b.station! / b.length) * (b.sole.acute - b.sole.obtuse);
    expect(Math.abs(place([b.station!, 0, onSole])[0] - entry)).toBeLessThan(1e-3);
  });

  it.each([0, 1, 2, 3, 4, 5])('guide %i with a V touches the round and does not bite into it', async (index) => {
    const s = randomGuide(index, 'v');
    if (s.work.kind !== 'round') throw new Error('not a round');
    const { sawn, plane } = await blockSolid(s);
    const solid = grooved(s, sawn, plane);
    const post = cylinderSolid({ at: [0, 0, 0], axis: [1, 0, 0], from: -1500, to: 1500, radius: s.work.radius, facets });
    expect(solid.intersect(post).volume()).toBeLessThan(1e-2);
    expect(solid.translate([0, 0, -0.05]).intersect(post).volume()).toBeGreaterThan(0.1);
  });

  it.each([1, 3, 4, 5, 7, 8])('guide %i with a cove: the bore comes out of it on the written opening, SVG and PDF', async (index) => {
    const s = randomGuide(index, 'cove');
    const { sawn, plane, placed } = await blockSolid(s);
    const shift = placed.boreAt[0] - (placed.boreAt[2] / placed.boreAlong[2]) * placed.boreAlong[0];
    const rim = rimOnRound(s, vertices(grooved(s, sawn, plane).translate([-shift, 0, 0])));
    expect(rim.length).toBeGreaterThan(facets / 2);
    const { centre, curves } = await writtenOpening(s);
    for (const curve of curves) {
      const laid = wrapped(s, curve, centre);
      expect(Math.max(...rim.map(({ at, error }) => distanceTo(at, laid) - error))).toBeLessThan(reading);
    }
  });

  it.each([90, 72, 55, 38, 21])('for flat work at %d°: the bore comes out of the sole on the written ellipse, SVG and PDF', async (deg) => {
    const s = solved({ drill: 11, angle: radians(deg), thickness: 20 });
    const { sawn, placed, plane, b } = await blockSolid(s);
    const shift = placed.boreAt[0] - ((placed.boreAt[2] - plane) / placed.boreAlong[2]) * placed.boreAlong[0];
    const rim = vertices(sawn).filter((p) => Math.abs(p[2] - plane) < 1e-4 && Math.hypot(p[0] - shift, p[1]) < Math.min(b.length, b.width) / 2 - 1
      && Math.hypot(p[0] - shift, p[1]) < s.hole.openingLength);
    expect(rim.length).toBeGreaterThanOrEqual(facets);
    const { centre, curves } = await writtenOpening(s);
    for (const curve of curves) {
      const laid = sampled(curve, 40).map(({ x, y }): Vector => [x - centre.x + shift, y - centre.y, plane]);
      const error = sagitta(5.5, facets) / Math.sin(s.angle);
      expect(Math.max(...rim.map((p) => distanceTo(p, laid) - error))).toBeLessThan(reading);
    }
  });
});
