import type { Item, Lettering } from '../../src/drawing/drawing.js';
import type { Font } from '../../src/drawing/font.js';
import { lineStyles } from '../../src/drawing/line-types.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { growBox, uniteBoxes, type Box } from '../../src/geometry/box.js';
import { explicitSegments } from '../../src/geometry/explicit-segments.js';
import type { Path } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';
import { isEmptyBox } from '../geometry/empty-box.js';

/** Points along a path close enough for a drawing to be looked at: 32 chords a curved segment. */
const flat = (path: Path): Point[][] => explicitSegments(path).map(({ segment, from }) =>
  Array.from({ length: segment.kind === 'line' ? 2 : 33 }, (_, i) => segmentPoint(segment, from, i / (segment.kind === 'line' ? 1 : 32))));

/** Whether the straight run from a to b enters the box (Liang and Barsky 1984). */
const enters = (a: Point, b: Point, box: Box): boolean => {
  let [t0, t1] = [0, 1];
  for (const [p, q] of [[a.x - b.x, a.x - box.x0], [b.x - a.x, box.x1 - a.x], [a.y - b.y, a.y - box.y0], [b.y - a.y, box.y1 - a.y]] as const) {
    if (p === 0 && q < 0) return false;
    if (p < 0) t0 = Math.max(t0, q / p);
    if (p > 0) t1 = Math.min(t1, q / p);
  }
  return t0 < t1;
};

/** The ink of a line of lettering in its own frame (unturned, base line at 0), and the map into that frame. */
const inkOf = (item: Lettering, font: Font) => {
  const shift = { start: 0, middle: 0.5, end: 1 }[item.anchor] * font.width(item.text, item.height);
  const ink = uniteBoxes(font.outlines(item.text, item.height).map(pathBounds));
  const [cos, sin] = [Math.cos(item.turn), Math.sin(item.turn)];
  const local = ({ x, y }: Point): Point => {
    const [dx, dy] = [x - item.at.x, y - item.at.y];
    return { x: cos * dx + sin * dy + shift, y: cos * dy - sin * dx };
  };
  return { ink, local };
};

/** Every line of lettering that a stroke or a fill of the same drawing lies across, pen width counted; empty where all can be read. */
export const labelCrossings = (items: readonly Item[], font: Font): { readonly text: string; readonly line: string; readonly part: string | undefined }[] => {
  const shapes = items.flatMap((item) => (item.kind === 'shape' ? [{ item, runs: flat(item.path) }] : []));
  return items.flatMap((item) => {
    if (item.kind !== 'lettering') return [];
    const { ink, local } = inkOf(item, font);
    if (isEmptyBox(ink)) return [];
    return shapes.flatMap(({ item: shape, runs }) => {
      const box = growBox(ink, shape.filled === true ? 0 : lineStyles[shape.line].width / 2);
      const crossed = runs.some((run) => run.some((p, i) => i > 0 && enters(local(run[i - 1]!), local(p), box)));
      return crossed ? [{ text: item.text, line: shape.line, part: shape.part }] : [];
    });
  });
};

/** Every pair of lines of lettering whose ink overlaps (boxes about turned lettering are taken whole, so near misses of those count). */
export const labelOverlaps = (items: readonly Item[], font: Font): { readonly a: string; readonly b: string }[] => {
  const boxes = items.flatMap((item) => {
    if (item.kind !== 'lettering') return [];
    const { ink, local } = inkOf(item, font);
    return isEmptyBox(ink) ? [] : [{ text: item.text, ink, local, item }];
  });
  const corners = ({ ink, item }: (typeof boxes)[number]): Point[] => {
    const shift = { start: 0, middle: 0.5, end: 1 }[item.anchor] * font.width(item.text, item.height);
    const [cos, sin] = [Math.cos(item.turn), Math.sin(item.turn)];
    return [[ink.x0, ink.y0], [ink.x1, ink.y0], [ink.x1, ink.y1], [ink.x0, ink.y1]].map(([x, y]) =>
      ({ x: item.at.x + cos * (x! - shift) - sin * y!, y: item.at.y + sin * (x! - shift) + cos * y! }));
  };
  return boxes.flatMap((a, i) => boxes.slice(i + 1).flatMap((b) => {
    const round = corners(b).map(a.local);
    const crossed = round.some((p, k) => enters(p, round[(k + 1) % 4]!, a.ink));
    return crossed ? [{ a: a.text, b: b.text }] : [];
  }));
};
