import { describe, expect, it } from 'vitest';
import { cylinderSolid, sagitta, vertices } from '../../support/solids.js';
import { context, fields, sampled, solved, writeAndRead, type WrittenStrip } from './written.js';
import { dot3, jointFrame, length3, plus, times, type Vector } from './joint-frame.js';
import type { SaddleCopeSolution, SaddleEnd } from '../../../src/jigs/saddle-cope/solve.js';
import { radians } from '../../../src/units/units.js';

/** A repeatable stream of numbers in 0…1 (Park & Miller's minimal standard). */
const stream = (seed: number) => () => (seed = (seed * 48271) % 2147483647) / 2147483647;

const randomCope = (index: number): SaddleCopeSolution => {
  const next = stream(7919 + 104729 * index);
  for (let i = 0; i < 5; i += 1) next();
  const between = (a: number, b: number): number => a + (b - a) * next();
  const main = between(16, 80);
  const branch = main * between(0.3, 0.86);
  const spare = (main - branch) / 2;
  const end = () => ({ angle: radians(between(20, 90)), offset: index % 3 === 0 ? 0 : spare * between(-0.6, 0.6) });
  const far = index % 2 === 0 ? {} : {
    centres: between(4, 6) * main + 100,
    farEnd: { main: { name: 'post 2', diameter: main * between(1, 1.4) }, ...end(), twist: between(-Math.PI, Math.PI) },
  };
  return solved(fields({ branchDiameter: branch, mainDiameter: main, ...end(), ...far, pin: { diameter: 0 } }), context);
};

const facets = 256;

/** The vertices of the mesh's cut edge at one end, with the error that the mesh itself may have there. */
const meshEdge = (s: SaddleCopeSolution, end: SaddleEnd): readonly { readonly at: Vector; readonly error: number }[] => {
  const { main, branch, angle } = end.joint;
  const { throat, mainPoint, mainAxis } = jointFrame(end, s.centres ?? 0);
  const reach = (4 * (main + branch)) / Math.sin(angle);
  const middle = mainPoint[2];
  const rod = cylinderSolid({ at: [0, 0, middle], axis: [0, 0, 1], from: -reach, to: reach, radius: branch, facets });
  const post = cylinderSolid({ at: mainPoint, axis: mainAxis, from: -3 * reach, to: 3 * reach, radius: main, facets });
  const away: Vector = [0, 0, end.name === 'near' ? 1 : -1];
  const over = plus(times(Math.sin(angle), away), times(-Math.cos(angle), throat));
  const slack = sagitta(main, facets) + 1e-4;
  return vertices(rod.subtract(post)).flatMap((at) => {
    const from = plus(at, times(-1, mainPoint));
    const radial = plus(from, times(-dot3(from, mainAxis), mainAxis));
    if (Math.abs(length3(radial) - main) > slack || dot3(from, over) < 0) return [];
    const outward: Vector = [at[0] / branch, at[1] / branch, 0];
    const cos = dot3(outward, radial) / (length3(radial) * length3(outward));
    const error = (sagitta(main, facets) + sagitta(branch, facets)) / Math.sqrt(1 - cos * cos);
    return [{ at, error }];
  });
};

/** A strip's edge wrapped round the branch: printed to be read from outside, far end up, φ growing to the right. */
const wrapped = (s: SaddleCopeSolution, strip: WrittenStrip, edge: number) => {
  const radius = s.branch.diameter / 2;
  const start = strip.edges[0]!.start;
  const flat = sampled(strip.edges[edge]!, 40);
  const phis = flat.map(({ x }) => (2 * Math.PI * x) / strip.width);
  const curve = flat.map(({ y }, i): Vector => [radius * Math.cos(phis[i]!), radius * Math.sin(phis[i]!), s.near.throat - (y - start.y)]);
  return { curve, phis };
};

const distanceToSegment = (p: Vector, a: Vector, b: Vector): number => {
  const ab = plus(b, times(-1, a));
  const ap = plus(p, times(-1, a));
  const t = Math.min(1, Math.max(0, dot3(ap, ab) / (dot3(ab, ab) || 1)));
  return length3(plus(ap, times(-t, ab)));
};

/** Distance from a point to a wrapped edge; only the part of the edge within 0.08 rad of the point's own φ is looked at. */
const nearestDistance = (p: Vector, curve: readonly Vector[], phis: readonly number[]): number => {
  const phi = Math.atan2(p[1], p[0]);
  let best = Infinity;
  for (const turned of [phi, phi + 2 * Math.PI]) {
    for (let i = firstAbove(phis, turned - 0.08); i + 1 < curve.length && phis[i]! < turned + 0.08; i += 1) {
      best = Math.min(best, distanceToSegment(p, curve[i]!, curve[i + 1]!));
    }
  }
  return best;
};

const firstAbove = (sorted: readonly number[], value: number): number => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
};

/** Single-precision vertices, chords between samples, and the micrometre allowed to what is written; mm. */
const reading = 0.0015;

describe('a written strip, wrapped round the branch, lies on the cut edge of a mesh boolean (manifold-3d)', () => {
  it.each(Array.from({ length: 44 }, (_, i) => i))('joint %i', async (index) => {
    const s = randomCope(index);
    const written = await writeAndRead(s);
    const ends = s.far === undefined ? [s.near] : [s.near, s.far];
    ends.forEach((end, i) => {
      const edge = meshEdge(s, end);
      expect(edge.length).toBeGreaterThan(facets);
      for (const strip of [written.svg, written.pdf]) {
        const { curve, phis } = wrapped(s, strip, i);
        const worst = Math.max(...edge.map(({ at, error }) => nearestDistance(at, curve, phis) - error));
        expect(worst).toBeLessThan(reading);
      }
    });
  });
});
