import { fitText } from '../../drawing/fit-text.js';
import type { JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { shortCautionsAt } from '../../shop/cautions.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { drawFaces, isSawn } from './draw-faces.js';
import { drawOpening } from './draw-opening.js';
import { drawSection } from './draw-section.js';
import { drawTop } from './draw-top.js';
import { blockSetUp } from './set-up-block.js';
import { drillingSetUp } from './set-up-drilling.js';
import type { DrillGuideSolution } from './solve.js';
import type { Page } from './words.js';

/** A jig's name takes no more of a pattern's title, mm in 3.5 mm lettering: the sheet's own strip has it whole. */
const longestName = 90;

/** The block's faces, top and sole at true size, and the two set-ups: making the block and drilling with it. */
export const draw = (s: DrillGuideSolution, { name, units, drawingArea, shop }: Context, font: Font): JigDrawing => {
  const page: Page = { s, name: fitText(name, longestName, 3.5, font), units, font };
  const { work } = s;
  return {
    jig: name, kind: 'drill-guide', title: `${name}: drill guide`,
    patterns: [...drawFaces(page, Math.max(drawingArea.width, drawingArea.height)), drawTop(page), drawOpening(page), ...(work.kind === 'round' ? [drawSection(page, work)] : [])],
    setUps: [blockSetUp(page, shop), drillingSetUp(page)],
    assumed: [
      `drill Ø ${lengthLabel(s.drill, units)}`,
      ...(work.kind === 'round' ? [`${work.round.unnamed === true ? '' : `${work.round.name} `}Ø ${lengthLabel(2 * work.radius, units)}`]
        : work.thickness === undefined ? [] : [`work ${lengthLabel(work.thickness, units)} thick`]),
    ],
    cautions: shortCautionsAt(['hand-drill', ...(isSawn(s) ? ['saw-a-block' as const] : [])], units),
  };
};
