import type { Drawing, Shape } from '../../src/drawing/drawing.js';
import { letter, shape } from '../../src/drawing/items.js';
import type { LineType } from '../../src/drawing/line-types.js';
import type { Path, Segment } from '../../src/geometry/path.js';
import { point, type Point } from '../../src/geometry/point.js';
import { circle, circularArc, ellipse, polyline } from '../../src/geometry/shapes.js';

/** Numbers in 0 … 1 from a seed, the same on every machine (Park and Miller, Comm. ACM 31, 1988). */
export const randomFrom = (seed: number): (() => number) => {
  let state = (seed * 7919 + 17) % 2147483647;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
};

const freeForm = (random: () => number, at: () => Point): Path => {
  const segments: Segment[] = Array.from({ length: 3 }, () => (random() < 0.5
    ? { kind: 'line', to: at() } : { kind: 'cubic', c1: at(), c2: at(), to: at() }));
  return { start: at(), segments, closed: random() < 0.5 };
};

const arcOf = (random: () => number, centre: Point, size: number): Path => {
  const t0 = random() * 6;
  const arc = circularArc(centre, size / 2, t0, t0 + (random() - 0.5) * 11);
  return { start: { x: centre.x + (size / 2) * Math.cos(t0), y: centre.y + (size / 2) * Math.sin(t0) }, segments: [arc], closed: false };
};

/** Lines, arcs, circles, ellipses, free curves and lettering strewn over 260 to 620 mm each way. */
export const randomDrawing = (seed: number): Drawing => {
  const random = randomFrom(seed);
  const [width, height] = [260 + random() * 360, 260 + random() * 360];
  const [left, top] = [(random() - 0.5) * 900, (random() - 0.5) * 900];
  const at = (): Point => point(left + random() * width, top + random() * height);
  const lines: readonly LineType[] = ['edge', 'hidden', 'bore'];
  const paths: Path[] = [
    polyline([at(), at(), at()], random() < 0.5), freeForm(random, at), circle(at(), 10 + random() * 120),
    ellipse(at(), 20 + random() * 100, 15 + random() * 60, random() * 3), arcOf(random, at(), 60 + random() * 200),
  ];
  const shapes: Shape[] = paths.map((path, i) => shape(lines[(i + seed) % 3]!, path, `shape-${i}`));
  return {
    name: `random-${seed}`, title: `Random ${seed}`, whole: false, spine: false, datum: at(), lands: [],
    keepClear: [{ box: { x0: left + 100, y0: top, x1: left + 160, y1: top + height }, why: 'a seat' }],
    items: [...shapes, letter(at(), `Lettering ${seed} across wherever it falls`, { height: 5, turn: random() * 6 })],
  };
};
