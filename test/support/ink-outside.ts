import type { Box } from '../../src/geometry/box.js';
import type { Path, Segment } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { readSvg, type SvgShape } from './read-svg.js';

/** Ink beyond a box: what it is, and how far it stands out, mm. */
export interface InkOutside {
  readonly what: string;
  readonly by: number;
  readonly side: 'left' | 'right' | 'top' | 'bottom';
}

/** Chords that an arc or a cubic is looked at by: a quarter circle of 300 mm keeps within 6 µm of them. */
const chords = 128;

const along = (from: Point, segment: Segment, t: number): Point => {
  if (segment.kind === 'line')
    return { x: from.x + t * (segment.to.x - from.x), y: from.y + t * (segment.to.y - from.y) };
  if (segment.kind === 'arc') {
    const a = segment.t0 + t * (segment.t1 - segment.t0);
    return {
      x: segment.centre.x + segment.u.x * Math.cos(a) + segment.v.x * Math.sin(a),
      y: segment.centre.y + segment.u.y * Math.cos(a) + segment.v.y * Math.sin(a),
    };
  }
  const [p, q, r] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t)];
  return {
    x: p * from.x + q * segment.c1.x + r * segment.c2.x + t ** 3 * segment.to.x,
    y: p * from.y + q * segment.c1.y + r * segment.c2.y + t ** 3 * segment.to.y,
  };
};

const corners = ({ start, segments, closed }: Path): readonly Point[] => {
  const points: Point[] = [start];
  for (const segment of segments) {
    const from = points.at(-1)!;
    const count = segment.kind === 'line' ? 1 : chords;
    for (let i = 1; i <= count; i += 1) points.push(along(from, segment, i / count));
  }
  return closed ? [...points, start] : points;
};

/** Points on the edge of a pen's stroke: to both sides of each chord, and all round each joint. Ends are cut square, as SVG has it. */
const strokePoints = (path: Path, pen: number): readonly Point[] => {
  const points = corners(path);
  const half = pen / 2;
  const sides = points.slice(1).flatMap((to, i) => {
    const from = points[i]!;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length === 0) return [];
    const [nx, ny] = [(-half * (to.y - from.y)) / length, (half * (to.x - from.x)) / length];
    return [from, to].flatMap(({ x, y }) => [
      { x: x + nx, y: y + ny },
      { x: x - nx, y: y - ny },
    ]);
  });
  const joints = (path.closed ? points : points.slice(1, -1)).flatMap(({ x, y }) => [
    { x: x - half, y },
    { x: x + half, y },
    { x, y: y - half },
    { x, y: y + half },
  ]);
  return [...sides, ...joints];
};

const boxAbout = (points: readonly Point[]): Box =>
  points.reduce<Box>(
    (box, { x, y }) => ({
      x0: Math.min(box.x0, x),
      y0: Math.min(box.y0, y),
      x1: Math.max(box.x1, x),
      y1: Math.max(box.y1, y),
    }),
    { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity },
  );

const clipsIn = (text: string): ReadonlyMap<string, Box> =>
  new Map(
    [...text.matchAll(/<clipPath id="([^"]+)"><rect x="([^"]+)" y="([^"]+)" width="([^"]+)" height="([^"]+)"\/>/g)].map(
      ([, id, x, y, width, height]) => [
        id!,
        { x0: Number(x), y0: Number(y), x1: Number(x) + Number(width), y1: Number(y) + Number(height) },
      ],
    ),
  );

const inkOf = ({ attributes, subpaths }: SvgShape, clips: ReadonlyMap<string, Box>): Box => {
  const pen = attributes['stroke'] === 'none' ? 0 : Number(attributes['stroke-width']);
  const box = boxAbout(subpaths.flatMap((path) => (pen === 0 ? corners(path) : strokePoints(path, pen))));
  const clip = clips.get(/#([^)]+)/.exec(attributes['clip-path'] ?? '')?.[1] ?? '');
  if (clip === undefined) return box;
  return {
    x0: Math.max(box.x0, clip.x0),
    y0: Math.max(box.y0, clip.y0),
    x1: Math.min(box.x1, clip.x1),
    y1: Math.min(box.y1, clip.y1),
  };
};

/** A box that holds all of a shape and more: by handles, and by the half axes of arcs. */
const atMost = ({ subpaths, attributes }: SvgShape): Box => {
  const half = attributes['stroke'] === 'none' ? 0 : Number(attributes['stroke-width']) / 2;
  const { x0, y0, x1, y1 } = boxAbout(
    subpaths.flatMap(({ start, segments }) => [
      start,
      ...segments.flatMap((segment) => {
        if (segment.kind === 'line') return [segment.to];
        if (segment.kind === 'cubic') return [segment.c1, segment.c2, segment.to];
        const [w, h] = [Math.hypot(segment.u.x, segment.v.x), Math.hypot(segment.u.y, segment.v.y)];
        return [
          { x: segment.centre.x - w, y: segment.centre.y - h },
          { x: segment.centre.x + w, y: segment.centre.y + h },
        ];
      }),
    ]),
  );
  return { x0: x0 - half, y0: y0 - half, x1: x1 + half, y1: y1 + half };
};

const within = (a: Box, b: Box): boolean => a.x0 >= b.x0 && a.y0 >= b.y0 && a.x1 <= b.x1 && a.y1 <= b.y1;

const nameOf = ({ part, label, line }: SvgShape): string =>
  [line, part, label === undefined ? undefined : `“${label.slice(0, 40)}”`]
    .filter((word) => word !== undefined)
    .join(' ');

/**
 * Ink of a written SVG sheet that stands beyond a box by more than `play` mm: true outlines of lettering, strokes with their pen's
 * width, what a clip leaves. Reads the file's text alone.
 */
export const inkOutside = (svg: string, live: Box, play: number): readonly InkOutside[] => {
  const clips = clipsIn(svg);
  return readSvg(svg).shapes.flatMap((shape) => {
    if (within(atMost(shape), live)) return [];
    const ink = inkOf(shape, clips);
    if (!(ink.x0 <= ink.x1 && ink.y0 <= ink.y1)) return [];
    const over = [
      ['left', live.x0 - ink.x0],
      ['right', ink.x1 - live.x1],
      ['top', live.y0 - ink.y0],
      ['bottom', ink.y1 - live.y1],
    ] as const;
    return over.filter(([, by]) => by > play).map(([side, by]) => ({ what: nameOf(shape), by, side }));
  });
};
