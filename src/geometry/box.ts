import type { Point } from './point.js';

/** An axis-parallel box, mm; empty when x1 < x0. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Holds nothing; uniting it with a box gives that box. */
export const emptyBox: Box = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };

/** The least box round some points; exact. */
export const boxOf = (points: readonly Point[]): Box => points.reduce<Box>((b, p) => ({
  x0: Math.min(b.x0, p.x), y0: Math.min(b.y0, p.y), x1: Math.max(b.x1, p.x), y1: Math.max(b.y1, p.y),
}), emptyBox);

/** The least box round some boxes; exact. */
export const uniteBoxes = (boxes: readonly Box[]): Box => boxes.reduce<Box>((a, b) => ({
  x0: Math.min(a.x0, b.x0), y0: Math.min(a.y0, b.y0), x1: Math.max(a.x1, b.x1), y1: Math.max(a.y1, b.y1),
}), emptyBox);

/** The box grown by `by` on every side (shrunk where negative). */
export const growBox = (b: Box, by: number): Box => ({ x0: b.x0 - by, y0: b.y0 - by, x1: b.x1 + by, y1: b.y1 + by });

/** Whether two boxes share a point, edges counted. */
export const boxesMeet = (a: Box, b: Box): boolean => a.x0 <= b.x1 && b.x0 <= a.x1 && a.y0 <= b.y1 && b.y0 <= a.y1;

/** Whether a box holds another whole, edges counted. */
export const boxContains = (outer: Box, inner: Box): boolean =>
  outer.x0 <= inner.x0 && outer.y0 <= inner.y0 && outer.x1 >= inner.x1 && outer.y1 >= inner.y1;

/** Extent along x, mm. */
export const boxWidth = (b: Box): number => b.x1 - b.x0;
/** Extent along y, mm. */
export const boxHeight = (b: Box): number => b.y1 - b.y0;
