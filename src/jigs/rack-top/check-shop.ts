import { angleOf, sayWords, words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { checkBit } from '../kit/check-bit.js';
import { checkStroke, checkTableTilt } from '../kit/reach.js';
import { cureLength, type Report } from '../kit/report.js';
import { bitLength, quillTravel } from './bits.js';
import { holeName, type LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';
import { reportsAbout, sayIn, type TopFinding } from './report.js';

/** What the kit reports, as a finding of the top. */
const fromKit = (reports: readonly Report[], { units }: Context): TopFinding[] => reports.map(({ about: _, message, remedy, ...report }) =>
  ({ ...report, message: sayWords(message, units), remedy: sayWords(remedy, units) }));

const checkHole = (hole: LegHole, context: Context): TopFinding[] => {
  const about = { operation: 'drill-holes' };
  return fromKit([
    ...checkBit({
      diameter: hole.bit, reach: bitLength(hole), about, forWhat: [`for ${holeName(hole)}`], otherwise: ['an extension; never from both faces, the two holes do not meet'],
    }, context),
    ...checkTableTilt(hole.lean, {
      about, what: [holeName(hole)],
      remedy: words`A wedge of ${angleOf(hole.lean)} under the board on the level table, or a guide block for the hand drill.`,
    }, context),
    ...checkStroke(quillTravel(hole), { about, what: [holeName(hole)], remedy: ['Raise the table in the middle of the hole without moving the board, or use a guide block.'] }, context),
  ], context);
};

const checkCutter = ({ cutter, slots, recesses }: RackTop, { shop, units }: Context): TopFinding[] => {
  const most = shop.router?.maxBitDiameter;
  if (most === undefined || slots.length + recesses.length === 0 || cutter.diameter <= most) return [];
  const say = sayIn({ units });
  return [{
    severity: 'warn', about: [...slots.map((s) => `slot-${s.number}` as const), ...recesses.map((r) => `recess-${r.number}` as const)],
    code: 'cutter-beyond-router', measured: cutter.diameter, limit: most,
    message: `The router takes cutters up to ${say(most)} and this one is ${say(cutter.diameter)}.`, remedy: `A cutter of at most ${say.most(most)}.`,
    would: cutter.bushing === undefined ? [cureLength('cutter.diameter', say.down(most))] : [],
  }];
};

/** Bearing on the shank: until the cut is as deep as the edges are longer than the template is thick, the bearing rides on nothing. */
const checkFirstPass = ({ cutter, recesses }: RackTop, context: Context): TopFinding[] => {
  if (cutter.bushing !== undefined || cutter.length === undefined) return [];
  const say = sayIn(context);
  const { length, templateThickness } = cutter;
  const first = length - templateThickness;
  return recesses.filter((recess) => recess.depth < first - 1e-9).map((recess): TopFinding => ({
    about: [`recess-${recess.number}`], severity: 'warn', code: 'bearing-over-template', measured: length, limit: templateThickness + recess.depth,
    message: `Recess ${recess.number} is ${say(recess.depth)} deep: with edges of ${say(length)} the bearing stays above a template of ${say(templateThickness)} and rides on nothing.`,
    remedy: `A template at least ${say.least(length - recess.depth)} thick, or edges of at most ${say.most(templateThickness + recess.depth)}.`,
    would: [cureLength('cutter.templateThickness', say.up(length - recess.depth)), cureLength('cutter.length', say.down(templateThickness + recess.depth))],
  }));
};

/** What the shop, as far as it is described, cannot do, and what the cutter cannot. */
export const checkShop = (top: RackTop, context: Context): TopFinding[] => [
  ...top.holes.flatMap((hole) => reportsAbout([`hole-${hole.number}`], checkHole(hole, context))),
  ...checkCutter(top, context), ...checkFirstPass(top, context),
];
