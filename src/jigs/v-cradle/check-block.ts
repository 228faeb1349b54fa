import { blockFloor, blockWall, usualBlockFloor, usualBlockWall } from '../../shop/walls.js';
import { diameterOf, lengthOf, words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { below, cureLength, remediesIn, type Report } from '../kit/report.js';
import { bearingDiameters, leastBearing } from './limits.js';
import type { VCradleSolution } from './solve.js';

const about = { operation: 'saw-v' } as const;

const checkWall = ({ block, groove }: VCradleSolution, { units }: Context): readonly Report[] => {
  const { atLeast } = remediesIn(units);
  const usual = atLeast(groove.width + 2 * usualBlockWall);
  if (block.wall <= 0) return [{
    code: 'block-narrow', severity: 'stop', measured: block.width, limit: groove.width, about, would: [cureLength('block.width', usual)],
    message: words`The block is ${lengthOf(block.width)} wide and the groove ${lengthOf(groove.width)}: nothing is left beside it.`,
    remedy: words`Make the block ${lengthOf(usual)} wide.`,
  }];
  const width = atLeast(groove.width + 2 * blockWall.sound);
  return below(block.wall, blockWall, () => ({
    code: 'wall-thin', about, would: [cureLength('block.width', width)],
    message: words`Only ${lengthOf(block.wall)} of wood beside the groove at the top: it breaks away under a clamp.`,
    remedy: words`Make the block at least ${lengthOf(width)} wide.`,
  }));
};

/** The floor counts for the carrier too: both have one height. */
const checkFloor = ({ block, groove, makesBlock }: VCradleSolution, { units }: Context): readonly Report[] => {
  const { atLeast } = remediesIn(units);
  const usual = atLeast(groove.depth + usualBlockFloor);
  const here = { operation: makesBlock ? 'saw-v' : 'saw-carrier-v' };
  if (block.floor <= 0) return [{
    code: 'groove-through', severity: 'stop', measured: block.height, limit: groove.depth, about: here, would: [cureLength('block.height', usual)],
    message: words`The block is ${lengthOf(block.height)} high and the groove ${lengthOf(groove.depth)} deep: the saw comes out below.`,
    remedy: words`Make the block ${lengthOf(usual)} high.`,
  }];
  const height = atLeast(groove.depth + blockFloor.sound);
  return below(block.floor, blockFloor, () => ({
    code: 'floor-thin', about: here, would: [cureLength('block.height', height)],
    message: words`Only ${lengthOf(block.floor)} of wood under the groove: too little to drill into.`,
    remedy: words`Make the block at least ${lengthOf(height)} high, or screw it to a base before drilling.`,
  }));
};

const checkLength = (s: VCradleSolution, { units }: Context): readonly Report[] => {
  const { block, stop } = s;
  const { atLeast } = remediesIn(units);
  const thickest = s.held[0]!.round;
  const needed = Math.max(leastBearing, bearingDiameters * thickest.diameter);
  const length = atLeast(needed + (stop ?? 0));
  if (stop !== undefined && stop >= block.length) return [{
    code: 'stop-off-block', severity: 'stop', measured: stop, limit: block.length, about, would: [cureLength('block.length', length)],
    message: words`The stop stands ${lengthOf(stop)} from the left end of a block ${lengthOf(block.length)} long.`,
    remedy: words`A block ${lengthOf(length)} long, or leave its length out.`,
  }];
  if (block.bearing >= needed * (1 - 1e-9)) return [];
  return [{
    code: 'block-short', severity: 'warn', measured: block.bearing, limit: needed, about, would: [cureLength('block.length', length)],
    message: words`${lengthOf(block.bearing)} of groove to hold ${thickest.name} (${diameterOf(thickest.diameter)}): it may rock along its length.`,
    remedy: words`Make the block at least ${lengthOf(length)} long.`,
  }];
};

/** Walls, floor, length and stop of the block; of a carrier alone, the floor. */
export const checkBlock = (s: VCradleSolution, context: Context): readonly Report[] =>
  [...(s.makesBlock ? [...checkWall(s, context), ...checkLength(s, context)] : []), ...checkFloor(s, context)];
