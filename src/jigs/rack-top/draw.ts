import type { JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { shortCautionsAt, type Machine } from '../../shop/cautions.js';
import type { Context } from '../jig.js';
import { drawTop } from './draw-board.js';
import { drawJoint } from './draw-joint.js';
import { drawPlug, plugGroups } from './draw-plug.js';
import { drawRecessTemplate } from './draw-recess-template.js';
import { drawStick } from './draw-stick.js';
import { drawTemplate } from './draw-template.js';
import { drawUnderside } from './draw-underside.js';
import { undersidePatches } from './underside-patches.js';
import { templateGroups } from './pins.js';
import type { RackTop } from './rack-top.js';
import { setUps } from './set-ups.js';
import { assumedDiameters } from './words.js';

/** The machines that the board goes to, for the short cautions of its pattern sheets. */
const machinesOf = ({ slots, recesses, holes }: RackTop): readonly Machine[] => [
  ...(slots.length > 0 ? ['hand-router' as const] : []), ...(recesses.length > 0 ? ['plunge-router' as const] : []), ...(holes.length > 0 ? ['drill-press' as const] : []), 'join',
];

/** The whole top; patches of the underside where it differs; a template for each kind of slot with its pitch sticks; test discs, recesses, joints. */
export const draw = (top: RackTop, context: Context, font: Font): JigDrawing => {
  const groups = templateGroups(top);
  const walked = (['front', 'rear'] as const).filter((edge) => top.slots.filter((s) => s.edge === edge).length > 1);
  return {
    jig: context.name, kind: 'rack-top', title: `${context.name}: rack top`,
    patterns: [
      drawTop(top, context, font), ...undersidePatches(top).map((patch, i) => drawUnderside(patch, i + 1, top, context, font)),
      ...groups.map((group) => drawTemplate(group, top, { context, font, as: 'pattern' })), ...walked.map((edge) => drawStick(edge, groups, top, context, font)),
      ...plugGroups(top.holes).map((holes, i) => drawPlug(holes, i + 1, context)), ...top.recesses.map((recess) => drawRecessTemplate(recess, top, context, font)),
      ...top.splits.map((station, i) => drawJoint(station, i + 1, top, context, font)),
    ],
    setUps: setUps(top, context, font), assumed: assumedDiameters(top, context.units),
    cautions: shortCautionsAt(machinesOf(top), context.units),
  };
};
