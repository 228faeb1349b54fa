import type { JigDrawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Finding } from '../../errors/finding.js';
import type { Context } from '../jig.js';
import { shortCarrierCaution, shortCautions } from './cautions.js';
import { drawCarrier } from './draw-carrier.js';
import { drawEndSection } from './draw-end-section.js';
import { drawFinishedEnd } from './draw-finished-end.js';
import { drawPlan } from './draw-plan.js';
import { drawRounds } from './draw-rounds.js';
import { setUps } from './set-ups.js';
import type { VCradleSolution } from './solve.js';
import { wordsFor } from './words.js';

/** Patterns: block's end, rounds in place, plan; carrier and finished end where there is one. Set-ups: a page a machine. */
export const draw = (s: VCradleSolution, context: Context, font: Font, findings: readonly Finding[]): JigDrawing => {
  const { name, units } = context;
  const say = wordsFor(units);
  const { carrier } = s;
  return {
    jig: name, kind: 'v-cradle', title: `${name}: V-cradle`,
    patterns: [
      drawEndSection(s, name, say, font), drawRounds(s, name, say, font), drawPlan(s, name, say, font),
      ...(carrier === undefined ? [] : [
        drawCarrier(carrier, s.groove, name, { say, font }), drawFinishedEnd(carrier, name, { say, font }),
      ]),
    ],
    setUps: setUps({ solution: s, findings, say, font }),
    assumed: s.held.map((h) => say.round(h.round)),
    cautions: [...shortCautions, ...(carrier === undefined ? [] : [shortCarrierCaution])],
  };
};
