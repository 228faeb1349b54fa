import { calibrationSide, calibrationSquare } from '../drawing/calibration-square.js';
import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { letter, moveItems, placeItems } from '../drawing/items.js';
import { readingMark, readingMarkSize } from '../drawing/reading-mark.js';
import { textBlock } from '../drawing/text-block.js';
import type { Box } from '../geometry/box.js';
import { point } from '../geometry/point.js';
import { scaling } from '../geometry/transform.js';
import { lengthLabel } from '../units/format.js';
import { barLengths } from './bars.js';
import { isCorrected, pageCorrection, type LayoutRequest } from './layout-request.js';
import type { PageFrame } from './page-frame.js';
import { scaleWords } from './strip-words.js';

/** How to prove the scale, step by step. */
const steps = (request: LayoutRequest, frame: PageFrame): string[] => {
  const bars = barLengths(frame, pageCorrection(request.correction, frame.landscape), request.units);
  const side = lengthLabel(calibrationSide(request.units), request.units);
  return [
    'Print this sheet alone: 100 %, true size, one side of the paper; no setting that makes pages smaller.',
    `Lay a steel rule along both bars. The x-bar at the foot must measure ${lengthLabel(bars.x, request.units)}, the y-bar at the left ${lengthLabel(bars.y, request.units)}.`,
    `The square must measure ${side} both ways and its diagonals must be alike; if they differ, the printer draws it askew.`,
    isCorrected(request.correction)
      ? 'This sheet is corrected for your printer. A bar is off all the same: measure a “roundwright print-test” drawn without “--printer”, and keep those figures; measures of this sheet would undo the correction.'
      : 'A bar is off by a hair: measure both, keep the figures with “roundwright printer NAME --x-bar … --y-bar …” and draw again with “--printer NAME”. Off by much: look for a setting that makes pages smaller first.',
    'Print the other sheets with the same settings and check the bars on each of them.',
  ];
};

/** A block of the top of a sheet: items from the area's corner, and how far down they reach. mm */
export interface ScaleCheck {
  readonly items: readonly Item[];
  readonly height: number;
}

/**
 * Title, calibration square, what to do with it, and the reading mark, from the top left corner of `area`. The square is
 * corrected like the drawing, so that it measures true when printed.
 */
export const scaleCheck = (area: Box, frame: PageFrame, request: LayoutRequest, font: Font): ScaleCheck => {
  const factors = pageCorrection(request.correction, frame.landscape);
  const width = area.x1 - area.x0;
  const state = [request.digest === '' ? '' : `Spec ${request.digest}`, request.revision === '' ? '' : `revision ${request.revision.slice(0, 60)}`, request.paper.name, request.units];
  const head = textBlock({ at: point(0, 0), width, paragraphs: [request.title.slice(0, 200)], height: 5 }, font);
  const under = textBlock({ at: point(0, head.height + 1), width, paragraphs: [state.filter((w) => w !== '').join(' · ')], height: 2.5 }, font);
  const top = head.height + 1 + under.height + 4;
  const square = placeItems(calibrationSquare(point(0, 0), request.units), scaling(1 / factors.x, 1 / factors.y), 0);
  const side = calibrationSide(request.units);
  const [wide, high] = [side / factors.x, side / factors.y];
  const column = wide + 6;
  const text = textBlock({
    at: point(column, top + 7), width: width - column, height: 2.5, between: 1.4,
    paragraphs: [...steps(request, frame), ...(isCorrected(request.correction) ? [scaleWords(request, frame)] : [])],
    mark: (i) => (i < 5 ? `${i + 1}` : '–'),
  }, font);
  const markTop = Math.max(top + 7 + text.height + 4, top + high - readingMarkSize.height);
  return {
    items: [
      ...head.items, ...under.items, ...moveItems(square, 0.2, top),
      letter(point(column, top + 3.5), 'Prove the scale first', { height: 3.5 }), ...text.items,
      ...readingMark(point(column, markTop + readingMarkSize.height), font),
    ],
    height: Math.max(top + high, markTop + readingMarkSize.height),
  };
};
