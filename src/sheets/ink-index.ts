import { pathBounds, segmentBounds } from '../geometry/bounds.js';
import { boxOf, uniteBoxes, type Box } from '../geometry/box.js';
import { explicitSegments, type PlacedSegment } from '../geometry/explicit-segments.js';
import type { Item, Lettering, Shape } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { letteringCorners } from '../drawing/item-bounds.js';

/** A segment with where it starts and the box it lies in; mm. */
export interface InkSegment extends PlacedSegment {
  readonly box: Box;
}

/** A stroked path with the box of each segment. */
export interface StrokeInk {
  readonly kind: 'stroke';
  readonly item: Shape;
  /** In the order of the path, its closing run written out. */
  readonly segments: readonly InkSegment[];
  readonly box: Box;
}

/** Lettering and filled shapes are taken whole. */
export interface BlockInk {
  readonly kind: 'block';
  readonly item: Item;
  readonly box: Box;
}

/** What leaves ink on paper. */
export type Ink = StrokeInk | BlockInk;

/** A drawing taken to pieces so that a sheet finds its own without looking at the rest. */
export interface InkIndex {
  readonly inks: readonly Ink[];
  /** Least box of the centre lines, filled shapes and lettering; the pen's width is not counted. */
  readonly bounds: Box;
}

const inkOf = (item: Item, font: Font): Ink => {
  if (item.kind === 'lettering') return { kind: 'block', item, box: letteringBox(item, font) };
  if (item.filled === true) return { kind: 'block', item, box: pathBounds(item.path) };
  const segments = explicitSegments(item.path).map(({ segment, from }) => ({ segment, from, box: segmentBounds(segment, from) }));
  return { kind: 'stroke', item, segments, box: segments.length === 1 ? segments[0]!.box : uniteBoxes(segments.map((s) => s.box)) };
};

/** The box of a line of lettering as set, from accents to descenders. */
export const letteringBox = (item: Lettering, font: Font): Box => boxOf(letteringCorners(item, font));

/** Takes items to pieces. Exact. */
export const indexInk = (items: readonly Item[], font: Font): InkIndex => {
  const inks = items.map((item) => inkOf(item, font));
  return { inks, bounds: uniteBoxes(inks.map((ink) => ink.box)) };
};
