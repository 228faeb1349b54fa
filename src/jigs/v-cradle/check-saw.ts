import { angleRoundedDown } from '../../units/round-safe.js';
import { angleOf, lengthOf, words } from '../../units/quantity.js';
import { usualReach } from '../../shop/tools.js';
import { blockWall } from '../../shop/walls.js';
import type { Context } from '../jig.js';
import { checkBladeTilt, checkSawDepth, sawDepth } from '../kit/reach.js';
import { cureAngle, cureLength, remediesIn, type Concern, type Report } from '../kit/report.js';
import type { VCradleSolution } from './solve.js';

const checkReach = ({ sawing }: VCradleSolution, about: Concern, context: Context): readonly Report[] => {
  const included = angleRoundedDown(2 * (context.shop.saw?.maxTilt ?? usualReach));
  const depth = remediesIn(context.units).atMost(sawDepth(context, sawing.tilt) ?? Infinity);
  return [
    ...checkBladeTilt(sawing.tilt, {
      about, what: ['Each flank'], would: [cureAngle('includedAngle', included)],
      remedy: words`An included angle of at most ${angleOf(included)}, or saw the V at the band saw or by hand to the end pattern.`,
    }, context),
    ...checkSawDepth(sawing.height, sawing.tilt, {
      about, what: ['The groove'], would: [],
      remedy: words`At most ${lengthOf(depth)} deep if the rounds allow; or the band saw, or glue the V up from two bevelled strips.`,
    }, context),
  ];
};

/** With a narrow angle the square top of a tooth cuts past the flank over against it. */
const checkTooth = ({ sawing, groove, held, block }: VCradleSolution, about: Concern, { units }: Context): readonly Report[] => {
  if (sawing.toothPast === 0) return [];
  const lowest = Math.min(...held.map((h) => h.contactHeight)) - groove.flatHeight;
  const touched = sawing.toothPast >= lowest;
  const { atLeast } = remediesIn(units);
  const flat = atLeast(sawing.flatForTooth);
  // The groove grows by as much as its flat, and may leave too little beside it.
  const grown = groove.width + flat - groove.flat + 2 * blockWall.sound;
  const fits = grown <= block.width + 1e-9;
  return [{
    code: 'tooth-past-flank', severity: touched ? 'warn' : 'note', measured: groove.flat, limit: sawing.flatForTooth, about, would: fits ? [cureLength('flat', flat)] : [],
    message: words`A square-topped tooth ${lengthOf(sawing.kerf)} wide scores the flank over against it up to ${lengthOf(sawing.toothPast)} above the bottom${touched ? ', where a round is to rest' : ', below where the rounds rest'}.`,
    remedy: words`A flat of ${lengthOf(flat)} or more keeps the tooth inside the groove${fits ? '' : words`, in a block at least ${lengthOf(atLeast(grown))} wide`}.`,
  }];
};

/** The V's two passes against the shop's saw. */
export const checkSaw = (s: VCradleSolution, context: Context): readonly Report[] => {
  const about: Concern = { operation: s.makesBlock ? 'saw-v' : 'saw-carrier-v' };
  return [...checkReach(s, about, context), ...checkTooth(s, about, context)];
};
