import type { Drawing, Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { letter, shape } from '../drawing/items.js';
import { boxContains, boxesMeet, growBox, type Box } from '../geometry/box.js';
import { point, type Point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import { lengthMain } from '../units/format.js';
import type { Units } from '../units/units.js';
import { indexInk, letteringBox, type InkIndex } from './ink-index.js';

/** Stations are ticked this far apart, mm. */
export const stationStep = (units: Units): number => (units === 'inch' ? 4 * 25.4 : 100);

const tick = 1;
const figureHeight = 1.8;

/** A line that leaves much of its box empty; not one that arithmetic leaves a hair off upright. */
const isSlanting = (a: Point, b: Point): boolean => Math.abs(a.x - b.x) > 1e-6 && Math.abs(a.y - b.y) > 1e-6;

/** Whether a box keeps off all ink, taken segment by segment. */
const keepsOff = (index: InkIndex, box: Box): boolean => {
  const wide = growBox(box, 0.3);
  return index.inks.every((ink) => (ink.kind === 'block'
    ? !boxesMeet(ink.box, wide)
    : ink.segments.every((s) => !boxesMeet(s.box, wide) || s.segment.kind === 'line' && isSlanting(s.from, s.segment.to))));
};

/** A figure beside its tick, above the line or below it, wherever it disturbs nothing and stays within the drawing; else none. */
const figure = (at: { x: number; y: number }, text: string, index: InkIndex, font: Font): Item[] => {
  const [above, below] = [at.y - 1.2, at.y + figureHeight + 1.2];
  const places = [above, below].flatMap((y) => [
    letter(point(at.x + 0.8, y), text, { height: figureHeight, part: 'station' }),
    letter(point(at.x - 0.8, y), text, { height: figureHeight, part: 'station', anchor: 'end' }),
  ]);
  const free = places.find((p) => boxContains(index.bounds, letteringBox(p, font)) && keepsOff(index, letteringBox(p, font)));
  return free === undefined ? [] : [free];
};

/** The ink that a figure beside the spine could touch. */
const nearSpine = (index: InkIndex, y: number): InkIndex =>
  ({ ...index, inks: index.inks.filter(({ box }) => box.y0 < y + 8 && box.y1 > y - 8) });

/**
 * The drawing's items and, where it asks for a spine, the line at the height of its datum from end to end, ticked with
 * stations every 100 mm or 4 in: what one lays a steel rule along once the sheets are taped. Exact.
 */
export const withSpine = (drawing: Drawing, units: Units, font: Font): readonly Item[] => {
  if (!drawing.spine) return drawing.items;
  const index = indexInk(drawing.items, font);
  const near = nearSpine(index, drawing.datum.y);
  const { x: x0, y } = drawing.datum;
  const step = stationStep(units);
  const first = Math.ceil((index.bounds.x0 - x0) / step - 1e-9);
  const last = Math.floor((index.bounds.x1 - x0) / step + 1e-9);
  const stations = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  return [
    ...drawing.items,
    shape('centre', line(point(index.bounds.x0, y), point(index.bounds.x1, y)), 'spine'),
    ...stations.flatMap((k) => {
      const at = point(x0 + k * step, y);
      return [shape('mark', line(point(at.x, y - tick), point(at.x, y + tick)), 'station-tick'), ...figure(at, lengthMain(k * step, units), near, font)];
    }),
  ];
};
