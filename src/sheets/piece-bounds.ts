import type { LineType } from '../drawing/line-types.js';
import { uniteBoxes, type Box } from '../geometry/box.js';
import type { StrokeInk } from './ink-index.js';
import type { TilePlan } from './plan-tiles.js';

const worked: ReadonlySet<LineType> = new Set(['edge', 'saw', 'bore']);

/** The strokes that a blade or a bit follows, in order, mm as printed. */
export const workedStrokes = (plan: TilePlan): StrokeInk[] =>
  plan.cut.index.inks.flatMap((ink) => (ink.kind === 'stroke' && worked.has(ink.item.line) ? [ink] : []));

/** The box of the piece itself, mm as printed: of what is cut, sawn or drilled, without labels and the stubs of centre lines. Of all ink where nothing is cut. */
export const pieceBounds = (plan: TilePlan): Box => {
  const boxes = workedStrokes(plan).map((ink) => ink.box);
  return boxes.length === 0 ? plan.cut.index.bounds : uniteBoxes(boxes);
};
