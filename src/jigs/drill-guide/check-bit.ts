import { lengthLabel } from '../../units/format.js';
import type { Context, Report } from '../jig.js';
import { ownedBits } from './bit.js';
import type { DrillGuideSolution } from './solve.js';

const ownedFinding = ({ drill }: DrillGuideSolution, context: Context): readonly Report[] => {
  const { bits } = context.shop;
  if (bits === undefined || bits.length === 0 || ownedBits(drill, context).length > 0) return [];
  const nearest = bits.map((b) => b.diameter).sort((a, b) => Math.abs(a - drill) - Math.abs(b - drill))[0]!;
  return [{
    code: 'bit-not-owned', severity: 'warn', measured: drill, limit: nearest,
    message: `No bit of ${lengthLabel(drill, context.units)} is among the shop's bits.`,
    remedy: `The nearest owned is ${lengthLabel(nearest, context.units)}.`,
  }];
};

const lengthFinding = ({ bit: { usableLength: usable }, budget, block }: DrillGuideSolution, label: (mm: number) => string): readonly Report[] => {
  if (usable === undefined) return [];
  // Usable length ends at the lips; the point reaches on beyond them.
  const toLips = budget.needed - budget.point;
  const short = toLips - usable;
  return [
    ...(short <= 0 ? [] : [{
      code: 'bit-too-short', severity: 'warn' as const, measured: usable, limit: toLips,
      message: `The bit reaches ${label(usable)} from the jaws to its lips; block and hole need ${label(toLips)}.`,
      remedy: `A longer bit, or ${label(short)} less of bore or depth; or drill as deep as the block lets you, take it off and finish in the hole.`,
    }]),
    ...(usable >= block.height ? [] : [{
      code: 'bore-from-both-ends', severity: 'note' as const, measured: usable, limit: block.height,
      message: `The blank is ${label(block.height)} high: the bit, ${label(usable)}, does not bore it from one end.`,
      remedy: 'Carry the centre lines round the blank and bore from both ends to meet; or saw the sole first, 3 mm off the line.',
    }]),
  ];
};

const strokeFinding = ({ block }: DrillGuideSolution, { shop, units }: Context): readonly Report[] => {
  const stroke = shop.drillPress?.stroke;
  if (stroke === undefined || stroke >= block.height) return [];
  return [{
    code: 'stroke-short', severity: 'warn', measured: stroke, limit: block.height,
    message: `The drill press goes down ${lengthLabel(stroke, units)}; the blank is ${lengthLabel(block.height, units)} high.`,
    remedy: 'Bore to the end of the stroke, raise the table without shifting the blank, and go on; or bore from both ends to meet.',
  }];
};

/** The bit against block and hole, and the drill press against the block. */
export const checkBit = (s: DrillGuideSolution, context: Context): readonly Report[] => {
  const label = (mm: number): string => lengthLabel(mm, context.units);
  return [...ownedFinding(s, context), ...lengthFinding(s, label), ...strokeFinding(s, context)];
};
