import { angleLabel, lengthLabel } from '../../units/format.js';
import { degrees } from '../../units/units.js';
import type { Context, Report } from '../jig.js';
import { leastBore, leastShortEnd, leastWall } from './block.js';
import type { DrillGuideSolution } from './solve.js';

type Label = (mm: number) => string;
/** Lengths that came out of sums are equal to a limit within this, mm. */
const rounding = 1e-9;

const boreFindings = ({ block, drill }: DrillGuideSolution, label: Label): readonly Report[] => [
  ...(block.boreLength >= leastBore(drill) - rounding ? [] : [{
    code: 'bore-short', severity: 'warn' as const, measured: block.boreLength, limit: leastBore(drill),
    message: `The bore guides the bit over ${label(block.boreLength)} only.`,
    remedy: `At least ${label(leastBore(drill))}: 38 mm, and three drill diameters. A blank ${label(block.height + leastBore(drill) - block.boreLength)} high.`,
  }]),
  ...(block.wall >= leastWall - rounding ? [] : [{
    code: 'bore-wall-thin', severity: 'warn' as const, measured: block.wall, limit: leastWall,
    message: `Beside the bore ${label(block.wall)} of the block is left.`,
    remedy: `At least ${label(leastWall)}: a block ${label(2 * (leastWall - block.wall))} longer or wider.`,
  }]),
];

const shapeFindings = ({ block, sole }: DrillGuideSolution, label: Label): readonly Report[] => {
  const beside = block.width / 2 - sole.mouth;
  return [
    ...(block.shortEnd >= leastShortEnd - rounding ? [] : [{
      code: 'short-end-thin', severity: 'warn' as const, measured: block.shortEnd, limit: leastShortEnd,
      message: `The sole leaves ${label(block.shortEnd)} of the block at its acute end.`,
      remedy: `At least ${label(leastShortEnd)}: a blank ${label(leastShortEnd - block.shortEnd)} higher, or a shorter block.`,
    }]),
    ...(sole.mouth === 0 || beside >= leastWall - rounding ? [] : [{
      code: 'groove-wall-thin', severity: 'warn' as const, measured: beside, limit: leastWall,
      message: `Beside the groove in the sole ${label(beside)} of the block is left.`,
      remedy: `At least ${label(leastWall)} on each side: a block ${label(2 * (leastWall - beside))} wider.`,
    }]),
  ];
};

const seatFinding = ({ sole, work }: DrillGuideSolution): readonly Report[] =>
  sole.form !== 'flat' || work.kind === 'flat' ? [] : [{
    code: 'sole-rocks', severity: 'warn', measured: 0, limit: 1,
    message: 'A flat sole touches a round along one line and rocks.',
    remedy: 'A v or cove sole; or screw a cheek to each side of the block that reaches down past the round.',
  }];

/** A bit goes this many of its diameters free between sole and work before it wanders. Common practice. */
const freeDiameters = 2;

const standoffFinding = ({ budget, drill }: DrillGuideSolution, label: Label): readonly Report[] =>
  budget.standoff <= freeDiameters * drill + rounding ? [] : [{
    code: 'standoff-long', severity: 'note', measured: budget.standoff, limit: freeDiameters * drill,
    message: `Between the V of the sole and the work the bit goes ${label(budget.standoff)} on its own.`,
    remedy: 'A cove sole leaves nothing between block and work.',
  }];

const sawFinding = ({ angle }: DrillGuideSolution, { shop }: Context): readonly Report[] => {
  const most = shop.saw?.maxReading;
  const tilt = Math.PI / 2 - angle;
  if (most === undefined || tilt <= most) return [];
  return [{
    code: 'sole-past-saw', severity: 'note', measured: degrees(tilt), limit: degrees(most),
    message: `The sole is ${angleLabel(tilt)} off square; the saw turns to ${angleLabel(most)}.`,
    remedy: angle <= most ? `Saw it on the band saw to the line, or stand the blank on end and set the saw to ${angleLabel(angle)}.`
      : 'Saw it on the band saw to the line.',
  }];
};

/** The block: bore, walls, seat, and how its sole is sawn. */
export const checkBlock = (s: DrillGuideSolution, context: Context): readonly Report[] => {
  const label: Label = (mm) => lengthLabel(mm, context.units);
  return [...boreFindings(s, label), ...shapeFindings(s, label), ...seatFinding(s), ...standoffFinding(s, label), ...sawFinding(s, context)];
};
