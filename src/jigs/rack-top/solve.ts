import type { Context, Outcome } from '../jig.js';
import { arrangeSlots } from './arrange-slots.js';
import type { Board } from './board.js';
import { solveHole } from './hole.js';
import { narrowestLand } from './neighbours.js';
import type { Cutter, RackTop } from './rack-top.js';
import { cutterClearance, routerPractice } from '../../shop/router.js';
import { cureLength } from '../kit/report.js';
import { splineThickness } from './practice.js';
import { refuseBoard } from './refuse-board.js';
import { refuseHoles } from './refuse-holes.js';
import { refuseCrossedRecesses } from './refuse-recesses.js';
import { refuseRows, refuseSlots } from './refuse-slots.js';
import { refuseSplits } from './refuse-splits.js';
import { findingsOfTop, sayIn, type TopFinding, type Say } from './report.js';
import type { RackTopFields } from './schema.js';
import { solveRecesses } from './solve-recesses.js';

/** Bushing offset (bushing − cutter)/2 on each edge; none with a flush-trim bit. Exact. */
const cutterOf = ({ diameter, bushing, length, templateThickness }: RackTopFields['cutter'], { units }: Context): Cutter =>
  ({
    diameter, bushing, length, templateThickness: templateThickness ?? routerPractice(units).usualSheet,
    offset: bushing === undefined ? 0 : (bushing - diameter) / 2,
  });

const refuseCutter = ({ diameter, bushing }: Cutter, say: Say): TopFinding[] => (bushing === undefined || bushing > diameter ? [] : [{
  code: 'bushing-small', severity: 'stop', measured: bushing, limit: diameter,
  message: `A guide bushing of ${say(bushing)} does not let a cutter of ${say(diameter)} through.`,
  remedy: `A bushing of ${say.least(diameter + cutterClearance)} or more, or none for a flush-trim bit.`, would: [cureLength('cutter.bushing', say.up(diameter + cutterClearance))],
}]);

const boardOf = ({ length, width, thickness, endRadius, cornerRadius }: RackTopFields['board']): Board =>
  ({ length, width, thickness, endRadius, cornerRadius });

/** The numbers of a rack top, or why there can be none: every reason that can be told, not the first. */
export const solve = (fields: RackTopFields, context: Context): Outcome<RackTop> => {
  const say = sayIn(context);
  const refuse = (reports: readonly TopFinding[]) => ({ refused: findingsOfTop(reports, context) });
  const board = boardOf(fields.board);
  const cutter = cutterOf(fields.cutter, context);
  const rows = Array.isArray(fields.slots) ? fields.slots : [fields.slots];
  const early = [...refuseBoard(board, say), ...refuseCutter(cutter, say), ...refuseRows(rows)];
  if (early.length > 0) return refuse(early);
  const slots = arrangeSlots(rows, board, context.units);
  const holes = fields.holes.map((hole, i) => solveHole(hole, board, i + 1));
  const { recesses, refused } = solveRecesses(fields.recesses, board, cutter, say);
  const splits = [...fields.split].sort((a, b) => a - b);
  const spline = { ...fields.spline, thickness: fields.spline.thickness ?? splineThickness(board.thickness, context.units) };
  const parts = { board, slots, holes, recesses, splits, spline };
  const slotStops = refuseSlots(slots, board, cutter, say);
  // What runs into a slot that no board could hold only follows from that.
  const held = { ...parts, slots: slotStops.some(({ code }) => code === 'slot-too-wide') ? [] : slots };
  const late = [...slotStops, ...refuseHoles(holes, held.slots, board, say), ...refused, ...refuseCrossedRecesses(held, say), ...refuseSplits(held, say)];
  if (late.length > 0) return refuse(late);
  const pins = { diameter: fields.indexPins.diameter, spacing: fields.indexPins.spacing, step: context.units === 'inch' ? 25.4 / 4 : 5 };
  return { solution: { ...parts, oneRow: !Array.isArray(fields.slots), cutter, pins, land: narrowestLand(board, slots) } };
};
