import { lengthLabel } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import type { Report } from '../jig.js';
import { bearingDiameters, leastBearing, leastFloor, leastWall, usualFloor, usualWall } from './limits.js';
import type { VCradleSolution } from './solve.js';

const checkWall = ({ block, groove }: VCradleSolution, units: Units): Report[] => {
  const say = (mm: number) => lengthLabel(mm, units);
  if (block.wall <= 0) return [{
    code: 'block-narrow', severity: 'stop', measured: block.width, limit: groove.width,
    message: `The block is ${say(block.width)} wide and the groove ${say(groove.width)}: nothing is left beside it.`,
    remedy: `Make the block ${say(groove.width + 2 * usualWall)} wide.`,
  }];
  if (block.wall < leastWall) return [{
    code: 'wall-thin', severity: 'warn', measured: block.wall, limit: leastWall,
    message: `Only ${say(block.wall)} of wood beside the groove at the top: it breaks away under a clamp.`,
    remedy: `Make the block at least ${say(groove.width + 2 * leastWall)} wide.`,
  }];
  return [];
};

const checkFloor = ({ block, groove }: VCradleSolution, units: Units): Report[] => {
  const say = (mm: number) => lengthLabel(mm, units);
  if (block.floor <= 0) return [{
    code: 'groove-through', severity: 'stop', measured: block.height, limit: groove.depth,
    message: `The block is ${say(block.height)} high and the groove ${say(groove.depth)} deep: the saw comes out below.`,
    remedy: `Make the block ${say(groove.depth + usualFloor)} high.`,
  }];
  if (block.floor < leastFloor) return [{
    code: 'floor-thin', severity: 'warn', measured: block.floor, limit: leastFloor,
    message: `Only ${say(block.floor)} of wood under the groove: too little to drill into.`,
    remedy: `Make the block at least ${say(groove.depth + leastFloor)} high, or screw it to a base before drilling.`,
  }];
  return [];
};

const checkLength = (s: VCradleSolution, units: Units): Report[] => {
  const say = (mm: number) => lengthLabel(mm, units);
  const { block, stop } = s;
  if (stop !== undefined && stop >= block.length) return [{
    code: 'stop-off-block', severity: 'stop', measured: stop, limit: block.length,
    message: `The stop stands ${say(stop)} from the left end of a block ${say(block.length)} long.`,
    remedy: `Put the stop within the block, or leave the block's length out.`,
  }];
  const thickest = s.held[0]!.round;
  const needed = Math.max(leastBearing, bearingDiameters * thickest.diameter);
  if (block.bearing < needed * (1 - 1e-9)) return [{
    code: 'block-short', severity: 'warn', measured: block.bearing, limit: needed,
    message: `${say(block.bearing)} of groove to hold ${thickest.name} (${say(thickest.diameter)}): it may rock along its length.`,
    remedy: `Make the block at least ${say(needed + (stop ?? 0))} long.`,
  }];
  return [];
};

/** Walls, floor, length and stop of the block. */
export const checkBlock = (s: VCradleSolution, units: Units): Report[] =>
  [...checkWall(s, units), ...checkFloor(s, units), ...checkLength(s, units)];
