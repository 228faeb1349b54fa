import { UserError } from '../errors/user-error.js';
import type { Box } from '../geometry/box.js';
import type { SheetWishes } from '../spec/spec.js';
import type { Paper } from '../units/paper.js';
import { lengthLabel } from '../units/format.js';
import type { Units } from '../units/units.js';
import { atLeast } from './limit-words.js';

/** Where things stand on a page, mm from its top left. The strip, the side and the area share the live area without overlap. */
export interface PageFrame {
  readonly width: number;
  readonly height: number;
  /** The paper's long edge runs across the page. */
  readonly landscape: boolean;
  /** Paper less its margins: all ink stays inside. */
  readonly live: Box;
  /** For the drawing alone. */
  readonly area: Box;
  /** Furniture along the bottom: code, words and the x-bar. */
  readonly strip: Box;
  /** Furniture at the left: the y-bar. */
  readonly side: Box;
}

/** Ink of the drawing keeps this far inside the drawing area, so that no pen width crosses its border; mm. */
export const areaInset = 0.4;

const sideWidth = 7;
const deepestStrip = 23.4;
const shallowestStrip = 18.2;
/** Share of the live area that the strips leave to the drawing. */
const leastShare = 0.8802;

/** The least bar that every sheet carries in each direction, mm: 150 mm, or 6 in. */
export const leastBar = (units: Units): number => (units === 'inch' ? 6 * 25.4 : 150);
/** What a bar needs beside its length for the figures at its ends, mm: half of a figure of three digits each. */
export const barOverhang = 4.4;

/**
 * Shares a page out. `landscape` turns the paper by a quarter; margins are those of the page as it is read. The strip is as
 * deep as 88 % of the live area for the drawing allow, 18.2 to 23.4 mm. Refuses margins that leave no room for the bars.
 */
export const pageFrame = (paper: Paper, margins: SheetWishes['margins'], landscape: boolean, units: Units): PageFrame => {
  const width = landscape ? paper.height : paper.width;
  const height = landscape ? paper.width : paper.height;
  const live = { x0: margins.left, y0: margins.top, x1: width - margins.right, y1: height - margins.bottom };
  const liveWidth = live.x1 - live.x0;
  const liveHeight = live.y1 - live.y0;
  refuseSmall(paper, margins, { liveWidth, liveHeight, units });
  const most = liveHeight * (1 - leastShare / (1 - sideWidth / liveWidth));
  const depth = Math.max(shallowestStrip, Math.min(deepestStrip, most));
  return {
    width, height, landscape, live,
    area: { x0: live.x0 + sideWidth, y0: live.y0, x1: live.x1, y1: live.y1 - depth },
    strip: { x0: live.x0, y0: live.y1 - depth, x1: live.x1, y1: live.y1 },
    side: { x0: live.x0, y0: live.y0, x1: live.x0 + sideWidth, y1: live.y1 - depth },
  };
};

/** The live area must hold both bars of the least length and the strip under the y-bar. */
const refuseSmall = (
  paper: Paper, margins: SheetWishes['margins'], live: { liveWidth: number; liveHeight: number; units: Units },
): void => {
  const needWidth = leastBar(live.units) + barOverhang;
  const needHeight = leastBar(live.units) + barOverhang + shallowestStrip;
  if (live.liveWidth >= needWidth && live.liveHeight >= needHeight) return;
  const said = (mm: number): string => lengthLabel(mm, live.units);
  const given = Object.entries(margins).map(([side, m]) => `${side} ${said(m)}`).join(', ');
  const marginsAreLarge = Math.max(...Object.values(margins)) > 20;
  throw new UserError(undefined, [{
    code: marginsAreLarge ? 'margins-too-large' : 'paper-too-small',
    path: marginsAreLarge ? 'sheets.margins' : 'paper',
    message: marginsAreLarge
      ? 'the margins leave too little of the paper for the bars that prove the scale'
      : 'the paper is too small for the bars that prove the scale',
    got: `${paper.name}, ${said(paper.width)} × ${said(paper.height)}, margins ${given}: live area ${said(live.liveWidth)} × ${said(live.liveHeight)}`,
    allowed: `a live area of at least ${atLeast(needWidth, live.units)} × ${atLeast(needHeight, live.units)}`,
    nearest: `letter or a4 with margins of ${said(10)}`,
  }]);
};
