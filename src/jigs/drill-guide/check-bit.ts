import { lengthOf, words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { checkBit as checkOwned } from '../kit/check-bit.js';
import { checkStroke } from '../kit/reach.js';
import { cureLength, remediesIn, type Report } from '../kit/report.js';
import type { DrillGuideSolution } from './solve.js';

const atBlock = { operation: 'make-block' } as const;
const inUse = { operation: 'drill' } as const;
const inSteps = ['drill as deep as the block lets you, take it off and finish in the hole'];

/** A bit whose length the spec gives is held against that; else the shop's own are. Usable length ends at the lips. */
const lengthFinding = (s: DrillGuideSolution, context: Context): readonly Report[] => {
  const { bit, budget } = s;
  if (!s.bitGiven) {
    return checkOwned({ diameter: s.drill, reach: budget.neededToLips, about: inUse, forWhat: [], otherwise: inSteps }, context);
  }
  const usable = bit.usableLength ?? Infinity;
  if (usable >= budget.neededToLips - 1e-9) return [];
  const least = remediesIn(context.units).atLeast(budget.neededToLips);
  return [{
    code: 'bit-too-short', severity: 'warn', measured: usable, limit: budget.neededToLips, about: inUse,
    message: words`The bit reaches ${lengthOf(usable)} from the jaws to its lips; block and hole need ${lengthOf(budget.neededToLips)}.`,
    remedy: words`A bit that reaches ${lengthOf(least)}; or ${inSteps}.`, would: [cureLength('bit.usableLength', least)],
  }];
};

const boreFinding = ({ bit: { usableLength: usable }, block }: DrillGuideSolution, { units }: Context): readonly Report[] => {
  if (usable === undefined || usable >= block.height - 1e-9) return [];
  const least = remediesIn(units).atLeast(block.height);
  return [{
    code: 'bore-from-both-ends', severity: 'note', measured: usable, limit: block.height, about: atBlock,
    message: words`The blank is ${lengthOf(block.height)} high: the bit, ${lengthOf(usable)}, does not bore it from one end.`,
    remedy: words`Carry the centre lines round the blank and bore from both ends to meet; or a bit that reaches ${lengthOf(least)}.`,
  }];
};

/** The bit against block and hole, and the drill press against the block. */
export const checkBit = (s: DrillGuideSolution, context: Context): readonly Report[] => [
  ...lengthFinding(s, context), ...boreFinding(s, context),
  ...checkStroke(s.block.height, {
    about: atBlock, what: ['The bore through the blank'],
    remedy: ['Bore to the end of the stroke, raise the table without shifting the blank, and go on; or bore from both ends to meet.'],
  }, context),
];
