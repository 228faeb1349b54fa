import type { Shop } from '../../spec/shop.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import { degrees, type Units } from '../../units/units.js';
import type { Report } from '../jig.js';
import type { VCradleSolution } from './solve.js';

const checkTilt = ({ sawing }: VCradleSolution, maxTilt: number | undefined): Report[] =>
  maxTilt === undefined || sawing.tilt <= maxTilt + 1e-9 ? [] : [{
    code: 'tilt-out-of-reach', severity: 'warn', measured: degrees(sawing.tilt), limit: degrees(maxTilt),
    message: `The flanks need the blade tilted ${angleLabel(sawing.tilt)} from upright; the saw goes to ${angleLabel(maxTilt)}.`,
    remedy: `Make the included angle at most ${angleLabel(2 * maxTilt)}, or saw the V from a tilted carrier or with a tilted fence.`,
  }];

/** A tilted blade of reach `maxDepth` stands maxDepth·cos h above the table at most. */
const checkDepth = ({ sawing }: VCradleSolution, maxDepth: number | undefined, units: Units): Report[] => {
  const reach = maxDepth === undefined ? Infinity : maxDepth * Math.cos(sawing.tilt);
  return sawing.height <= reach + 1e-9 ? [] : [{
    code: 'depth-out-of-reach', severity: 'warn', measured: sawing.height, limit: reach,
    message: `The groove is ${lengthLabel(sawing.height, units)} deep; tilted ${angleLabel(sawing.tilt)} the saw cuts ${lengthLabel(reach, units)}.`,
    remedy: `Cut it at most ${lengthLabel(reach, units)} deep if the rounds allow, or glue the V up from two bevelled strips.`,
  }];
};

/** With a narrow angle the square top of a tooth cuts past the flank over against it. */
const checkTooth = ({ sawing, groove, held }: VCradleSolution, units: Units): Report[] => {
  if (sawing.toothPast === 0) return [];
  const lowest = Math.min(...held.map((h) => h.contactHeight)) - groove.flatHeight;
  const touched = sawing.toothPast >= lowest;
  return [{
    code: 'tooth-past-flank', severity: touched ? 'warn' : 'note', measured: groove.flat, limit: sawing.flatForTooth,
    message: `A square-topped tooth ${lengthLabel(sawing.kerf, units)} wide scores the flank over against it up to ${lengthLabel(sawing.toothPast, units)} above the bottom${touched ? ', where a round is to rest' : ', below where the rounds rest'}.`,
    remedy: `A flat of ${lengthLabel(sawing.flatForTooth, units)} or more keeps the tooth inside the groove.`,
  }];
};

/** The V's two passes against the shop's saw; what the shop does not say is not checked. */
export const checkSaw = (s: VCradleSolution, shop: Shop, units: Units): Report[] =>
  [...checkTilt(s, shop.saw?.maxTilt), ...checkDepth(s, shop.saw?.maxDepth, units), ...checkTooth(s, units)];
