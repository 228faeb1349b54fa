import type { Box } from '../geometry/box.js';
import { distance, type Point } from '../geometry/point.js';
import { segmentPoint } from '../geometry/segment-point.js';
import type { InkIndex, InkSegment } from './ink-index.js';

/** Ink counted on a raster, with sums from the top left corner, so that any box of cells is asked in one step. */
export interface InkMap {
  readonly origin: Point;
  /** Size of a cell, mm. */
  readonly cell: Point;
  readonly columns: number;
  readonly rows: number;
  /** Exact size of the drawing, mm; the last cells may reach beyond it. */
  readonly extent: Point;
  /** (columns + 1) × (rows + 1): cells with ink above and left of a corner. */
  readonly sums: Int32Array;
}

/** At least the length of a segment, mm. */
const lengthAtMost = ({ segment, from }: InkSegment): number => {
  if (segment.kind === 'line') return distance(from, segment.to);
  if (segment.kind === 'arc') return Math.hypot(segment.u.x, segment.u.y, segment.v.x, segment.v.y) * Math.abs(segment.t1 - segment.t0);
  return distance(from, segment.c1) + distance(segment.c1, segment.c2) + distance(segment.c2, segment.to);
};

/** Visits points along a segment about `step` apart; its ends are among them. */
const sample = (s: InkSegment, step: number, visit: (p: Point) => void): void => {
  const count = Math.max(1, Math.ceil(lengthAtMost(s) / step));
  for (let i = 0; i <= count; i++) visit(segmentPoint(s.segment, s.from, i / count));
};

/**
 * Marks the cells that hold ink: lines sampled at half a cell, lettering and filled shapes by their boxes. A guide
 * for the search of seams; what a sheet really holds is found by clipping.
 */
export const inkMap = (index: InkIndex, cell: Point): InkMap => {
  const { bounds } = index;
  const columns = Math.max(1, Math.ceil((bounds.x1 - bounds.x0) / cell.x - 1e-9));
  const rows = Math.max(1, Math.ceil((bounds.y1 - bounds.y0) / cell.y - 1e-9));
  const marked = new Uint8Array(columns * rows);
  const column = (x: number): number => Math.min(columns - 1, Math.max(0, Math.floor((x - bounds.x0) / cell.x)));
  const row = (y: number): number => Math.min(rows - 1, Math.max(0, Math.floor((y - bounds.y0) / cell.y)));
  const markBox = (b: Box): void => {
    for (let r = row(b.y0); r <= row(b.y1); r++) marked.fill(1, r * columns + column(b.x0), r * columns + column(b.x1) + 1);
  };
  const mark = (p: Point): void => { marked[row(p.y) * columns + column(p.x)] = 1; };
  const step = Math.min(cell.x, cell.y) / 2;
  for (const ink of index.inks) {
    if (ink.kind === 'block') markBox(ink.box);
    else for (const s of ink.segments) sample(s, step, mark);
  }
  const extent = { x: bounds.x1 - bounds.x0, y: bounds.y1 - bounds.y0 };
  return { origin: { x: bounds.x0, y: bounds.y0 }, cell, columns, rows, extent, sums: cornerSums(marked, columns, rows) };
};

const cornerSums = (marked: Uint8Array, columns: number, rows: number): Int32Array => {
  const wide = columns + 1;
  const sums = new Int32Array(wide * (rows + 1));
  for (let r = 0; r < rows; r++) {
    let along = 0;
    for (let c = 0; c < columns; c++) {
      along += marked[r * columns + c]!;
      sums[(r + 1) * wide + c + 1] = sums[r * wide + c + 1]! + along;
    }
  }
  return sums;
};

/** How many inked cells lie in columns a…b and rows c…d (upper ends not counted). */
export const inkIn = (map: InkMap, a: number, b: number, c: number, d: number): number => {
  const wide = map.columns + 1;
  return map.sums[d * wide + b]! - map.sums[c * wide + b]! - map.sums[d * wide + a]! + map.sums[c * wide + a]!;
};

/** Whether a box, mm, lies clear of all inked cells. */
export const isClear = (map: InkMap, box: Box): boolean => {
  const at = (v: number, origin: number, size: number, most: number): number => Math.min(most, Math.max(0, Math.floor((v - origin) / size)));
  const a = at(box.x0, map.origin.x, map.cell.x, map.columns);
  const b = Math.min(map.columns, at(box.x1, map.origin.x, map.cell.x, map.columns) + 1);
  const c = at(box.y0, map.origin.y, map.cell.y, map.rows);
  const d = Math.min(map.rows, at(box.y1, map.origin.y, map.cell.y, map.rows) + 1);
  return box.x1 < map.origin.x || box.y1 < map.origin.y || b <= a || d <= c || inkIn(map, a, b, c, d) === 0;
};
