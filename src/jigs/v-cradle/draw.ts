import type { JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { shortCautionsAt, type Machine } from '../../shop/cautions.js';
import type { Context } from '../jig.js';
import { drawCarrier } from './draw-carrier.js';
import { drawEndSection } from './draw-end-section.js';
import { drawFinishedEnd } from './draw-finished-end.js';
import { drawPlan } from './draw-plan.js';
import { drawRounds } from './draw-rounds.js';
import { blockPiece, carrierPiece } from './saw-figures.js';
import { setUps } from './set-ups.js';
import type { VCradleSolution } from './solve.js';
import { sayIn } from './words.js';

/** Patterns: block's end, rounds in place, plan; carrier and finished end where there is one. Set-ups: a page an operation. */
export const draw = (s: VCradleSolution, context: Context, font: Font): JigDrawing => {
  const { name, units } = context;
  const say = sayIn(units);
  const { carrier, makesBlock } = s;
  const onCarrier = carrierPiece(s);
  const machines: readonly Machine[] = ['saw-a-v', ...(makesBlock ? ['drill-a-round' as const] : []), ...(carrier === undefined ? [] : ['carrier' as const])];
  return {
    jig: name, kind: 'v-cradle', title: `${name}: V-cradle`,
    patterns: [
      ...(makesBlock ? [drawEndSection(s, blockPiece(s), name, { say, font }), drawRounds(s, name, say, font), drawPlan(s, name, say, font)] : []),
      ...(onCarrier === undefined ? [] : [drawEndSection(s, onCarrier, name, { say, font })]),
      ...(carrier === undefined ? [] : [
        drawCarrier(carrier, s.groove, name, { say, font }), drawFinishedEnd(carrier, name, { say, font }),
      ]),
    ],
    setUps: setUps({ solution: s, units, say, font }),
    assumed: (makesBlock || carrier === undefined ? s.held : s.held.filter((h) => h.round.name === carrier.round.name)).map((h) => say.round(h.round)),
    cautions: shortCautionsAt(machines, units),
  };
};
