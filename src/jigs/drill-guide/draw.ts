import { fitText } from '../../drawing/fit-text.js';
import type { JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Finding } from '../../errors/finding.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { drawFaces } from './draw-faces.js';
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
export const draw = (s: DrillGuideSolution, { name, units, drawingArea }: Context, font: Font, findings: readonly Finding[]): JigDrawing => {
  const page: Page = { s, name: fitText(name, longestName, 3.5, font), units, font };
  const { work } = s;
  return {
    jig: name, kind: 'drill-guide', title: `${name}: drill guide`,
    patterns: [...drawFaces(page, Math.max(drawingArea.width, drawingArea.height)), drawTop(page), drawOpening(page), ...(work.kind === 'round' ? [drawSection(page, work)] : [])],
    setUps: [blockSetUp(page), drillingSetUp(page, findings)],
    assumed: [
      `drill Ø ${lengthLabel(s.drill, units)}`,
      ...(work.kind === 'round' ? [`${work.round.name} Ø ${lengthLabel(2 * work.radius, units)}`]
        : work.thickness === undefined ? [] : [`work ${lengthLabel(work.thickness, units)} thick`]),
    ],
    cautions: [
      'Clamp block and work; brace for breakthrough.',
      'Bore the block square first, then saw its sole.',
      'No gloves or sleeves near a turning bit; key out of the chuck.',
    ],
  };
};
