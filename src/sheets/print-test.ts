import type { Font } from '../drawing/font.js';
import { letter, moveItems, shape } from '../drawing/items.js';
import { growBox } from '../geometry/box.js';
import { point } from '../geometry/point.js';
import { line } from '../geometry/shapes.js';
import type { Paper } from '../units/paper.js';
import type { Units } from '../units/units.js';
import { furniture } from './furniture.js';
import type { LayoutRequest } from './layout-request.js';
import { pageFrame } from './page-frame.js';
import { scaleCheck } from './scale-check.js';
import type { Sheet } from './sheet.js';
import { scaleWords } from './strip-words.js';

const margins = { top: 10, right: 10, bottom: 10, left: 10 };

/** What the print test needs to know. */
export interface PrintTestRequest extends Partial<Pick<LayoutRequest, 'correction' | 'printer'>> {
  readonly paper: Paper;
  readonly units: Units;
}

const blanks = ['x-bar measured', 'y-bar measured', 'diagonal from top left', 'diagonal from top right'];

/**
 * One upright sheet to measure a printer by: bars, calibration square with diagonals, reading mark, and
 * lines to note the figures on. Its bars are `nominalBars`. With a correction: to see that it has worked.
 */
export const printTest = ({ paper, units, correction = { x: 1, y: 1 }, printer }: PrintTestRequest, font: Font): Sheet => {
  const request: LayoutRequest = {
    title: `Print test, ${paper.name}`, revision: '', digest: '', units, paper, correction, jigs: [], findings: [],
    wishes: { margins, overlap: 12, turn: 'portrait', seams: {} }, ...(printer !== undefined && { printer }),
  };
  const frame = pageFrame(paper, margins, false, units);
  const area = growBox(frame.area, -1);
  const top = scaleCheck(area, frame, request, font);
  const y = area.y0 + top.height + 8;
  const notes = blanks.flatMap((text, i) => [
    letter(point(area.x0, y + 5 + i * 8), text, { height: 2.5 }),
    shape('reference', line(point(area.x0 + 46, y + 5.4 + i * 8), point(area.x0 + 90, y + 5.4 + i * 8))),
  ]);
  const words = {
    lines: [{ text: request.title, part: 'sheet-title', single: true }],
    running: [scaleWords(request, frame)],
  };
  return {
    code: '1', title: request.title, width: frame.width, height: frame.height, bookmark: request.title,
    items: [
      ...moveItems(top.items, area.x0, area.y0), ...notes,
      ...furniture(frame, request, font)({ code: '1', words }),
    ],
  };
};
