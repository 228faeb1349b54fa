import { lengthLabel } from '../../units/format.js';
import type { Context, Report } from '../jig.js';
import { holeExtra, type Pin } from './pin.js';
import type { SaddleEnd } from './solve.js';

type Label = (mm: number) => string;

/** Common practice: at least this much wood beyond the end of the hole; beside it, and below that very thin; mm. */
const wallLimit = 6;
const skinLimit = 5;
/** Less wood than this round a hole is none: it splits as it is drilled. Common practice, mm. */
const leastShell = 2;

const sizeFinding = (pin: Pin, branch: number, where: string, label: Label): readonly Report[] => {
  const low = branch / 3;
  const high = branch / 2;
  if (pin.diameter > branch - 2 * leastShell) {
    return [{
      code: 'pin-over-branch', severity: 'stop', measured: pin.diameter, limit: high,
      message: `A pin of Ø ${label(pin.diameter)} leaves less than ${label(leastShell)} of wood round it in a branch of Ø ${label(branch)}${where}.`,
      remedy: `A pin of ${label(low)} to ${label(high)}.`,
    }];
  }
  if (pin.diameter >= low - 0.05 && pin.diameter <= high + 0.05) return [];
  const thick = pin.diameter > high;
  return [{
    code: thick ? 'pin-thick' : 'pin-thin', severity: 'warn', measured: pin.diameter, limit: thick ? high : low,
    message: `The pin of Ø ${label(pin.diameter)}${where} is ${thick ? 'more than half' : 'less than a third'} of the branch.`,
    remedy: `A pin of ${label(low)} to ${label(high)}.`,
  }];
};

const lengthFinding = (pin: Pin, where: string, label: Label): readonly Report[] => {
  const least = Math.max(3 * pin.diameter, 30);
  if (pin.intoBranch >= least - 0.05) return [];
  return [{
    code: 'pin-short', severity: 'warn', measured: pin.intoBranch, limit: least,
    message: `The pin holds ${label(pin.intoBranch)} in the branch${where}, in end grain.`,
    remedy: `At least ${label(least)}: three pin diameters, and no less than 30 mm.`,
  }];
};

const wallFinding = (pin: Pin, where: string, label: Label): readonly Report[] => {
  if (pin.wall >= wallLimit) return [];
  const out = pin.wall <= 0;
  const shorter = Math.max(0, pin.intoMain - (wallLimit - pin.wall));
  return [{
    code: out ? 'pin-breaks-out' : 'pin-wall-thin', severity: 'warn', measured: pin.wall, limit: wallLimit,
    message: out
      ? `The hole for the pin${where}, ${label(pin.intoMain + holeExtra)} deep along its axis, comes out on the far side of the main.`
      : `Beyond the hole for the pin${where} ${label(pin.wall)} of the main is left.`,
    remedy: `Into the main no more than about ${label(shorter)}, or a thinner pin.`,
  }];
};

/** A pin thinner than its branch never breaks out sideways: the branch itself lies within the main. */
const skinFinding = (pin: Pin, where: string, label: Label): readonly Report[] => {
  if (pin.skin >= skinLimit) return [];
  return [{
    code: 'pin-skin-thin', severity: 'warn', measured: pin.skin, limit: skinLimit,
    message: `Beside the hole for the pin${where} ${label(pin.skin)} of the main is left.`,
    remedy: 'A thinner pin, a smaller offset, or a thicker main.',
  }];
};

const bitFinding = (pin: Pin, where: string, { shop, units }: Context): readonly Report[] => {
  if (shop.bits === undefined) return [];
  const needed = Math.max(pin.hornToHollow + pin.intoBranch, pin.intoMain) + holeExtra;
  const bits = shop.bits.filter((bit) => Math.abs(bit.diameter - pin.diameter) < 0.05);
  const longest = Math.max(0, ...bits.map((bit) => bit.usableLength));
  if (longest >= needed) return [];
  return [{
    code: bits.length === 0 ? 'pin-bit-not-owned' : 'pin-bit-short', severity: 'warn', measured: longest, limit: needed,
    message: bits.length === 0
      ? `No bit of Ø ${lengthLabel(pin.diameter, units)} is among the shop's bits.`
      : `The shop's bit of Ø ${lengthLabel(pin.diameter, units)} reaches ${lengthLabel(longest, units)}${where}.`,
    remedy: `A bit of that diameter with ${lengthLabel(needed, units)} of usable length.`,
  }];
};

/** What the pin of one end asks for. Limits are common practice; the walls are the hole's, not the pin's. */
export const checkPin = (end: SaddleEnd, where: string, context: Context): readonly Report[] => {
  const { pin } = end;
  if (pin === undefined) return [];
  const label: Label = (mm) => lengthLabel(mm, context.units);
  return [
    ...sizeFinding(pin, 2 * end.joint.branch, where, label), ...lengthFinding(pin, where, label),
    ...wallFinding(pin, where, label), ...skinFinding(pin, where, label), ...bitFinding(pin, where, context),
  ];
};
