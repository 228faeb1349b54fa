import { blockWall } from '../../shop/walls.js';
import { lengthOf, words, type Words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { below, cureLength, remediesIn, type Report } from '../kit/report.js';
import { leastBore, leastShortEnd } from './block.js';
import type { DrillGuideSolution } from './solve.js';
import { offsetOf } from './work.js';

const about = { operation: 'make-block' } as const;

const boreFinding = ({ block, drill }: DrillGuideSolution, { units }: Context): readonly Report[] => {
  const least = leastBore(drill);
  const height = remediesIn(units).atLeast(block.height + least - block.boreLength);
  return below(block.boreLength, { sound: least, least }, () => ({
    code: 'bore-short', about, would: [cureLength('block.height', height)],
    message: words`The bore guides the bit over ${lengthOf(block.boreLength)} only.`,
    remedy: words`A blank ${lengthOf(height)} high: ${lengthOf(least)} of bore, 38 mm and three drill diameters at least.`,
  }));
};

const wallFinding = ({ block, drill, work }: DrillGuideSolution, { units }: Context): readonly Report[] => {
  const { atLeast } = remediesIn(units);
  const [length, width] = [atLeast(drill + 2 * blockWall.sound), atLeast(2 * Math.abs(offsetOf(work)) + drill + 2 * blockWall.sound)];
  const [short, narrow] = [block.length < length - 1e-9, block.width < width - 1e-9];
  const sizes: Words = short && narrow ? words`${lengthOf(length)} long and ${lengthOf(width)} wide`
    : short ? words`${lengthOf(length)} long` : words`${lengthOf(width)} wide`;
  return below(block.wall, blockWall, (limit) => ({
    code: 'bore-wall-thin', about, would: short && narrow ? [] : [short ? cureLength('block.length', length) : cureLength('block.width', width)],
    message: words`Beside the bore ${lengthOf(block.wall)} of the block is left, less than ${lengthOf(limit)}.`,
    remedy: words`A block at least ${sizes}.`,
  }));
};

const shapeFindings = ({ block, sole }: DrillGuideSolution, { units }: Context): readonly Report[] => {
  const { atLeast } = remediesIn(units);
  const beside = block.width / 2 - sole.mouth;
  const [height, width] = [atLeast(block.height + leastShortEnd - block.shortEnd), atLeast(2 * sole.mouth + 2 * blockWall.sound)];
  return [
    ...below(block.shortEnd, { sound: leastShortEnd, least: leastShortEnd }, () => ({
      code: 'short-end-thin', about, would: [cureLength('block.height', height)],
      message: words`The sole leaves ${lengthOf(block.shortEnd)} of the block at its acute end, less than ${lengthOf(leastShortEnd)}.`,
      remedy: words`A blank ${lengthOf(height)} high, or a shorter block.`,
    })),
    ...(sole.mouth === 0 ? [] : below(beside, blockWall, (limit) => ({
      code: 'groove-wall-thin', about, would: [cureLength('block.width', width)],
      message: words`Beside the groove in the sole ${lengthOf(beside)} of the block is left, less than ${lengthOf(limit)}.`,
      remedy: words`A block ${lengthOf(width)} wide.`,
    }))),
  ];
};

const seatFinding = ({ sole, work }: DrillGuideSolution): readonly Report[] =>
  sole.form !== 'flat' || work.kind === 'flat' ? [] : [{
    code: 'sole-rocks', severity: 'warn', measured: 0, limit: 1, about,
    message: ['A flat sole touches a round along one line and rocks.'],
    remedy: ['A v or cove sole; or screw a cheek to each side of the block that reaches down past the round.'],
  }];

/** A bit goes this many of its diameters free between sole and work before it wanders. Common practice. */
const freeDiameters = 2;

const standoffFinding = ({ budget, drill }: DrillGuideSolution): readonly Report[] =>
  budget.standoff <= freeDiameters * drill + 1e-9 ? [] : [{
    code: 'standoff-long', severity: 'note', measured: budget.standoff, limit: freeDiameters * drill, about,
    message: words`Between the V of the sole and the work the bit goes ${lengthOf(budget.standoff)} on its own.`,
    remedy: ['A cove sole leaves nothing between block and work.'],
  }];

/** The block: bore, walls and seat. */
export const checkBlock = (s: DrillGuideSolution, context: Context): readonly Report[] =>
  [...boreFinding(s, context), ...wallFinding(s, context), ...shapeFindings(s, context), ...seatFinding(s), ...standoffFinding(s)];
