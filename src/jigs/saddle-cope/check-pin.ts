import { depthLeaving, farWallInRound } from '../../geometry/far-wall.js';
import { holeAllowance } from '../../shop/bit-length.js';
import { leastDrillAngle } from '../../shop/tools.js';
import { farWall, skin as skinLimits } from '../../shop/walls.js';
import { angleOf, diameterOf, lengthOf, words } from '../../units/quantity.js';
import { degrees } from '../../units/units.js';
import type { Context } from '../jig.js';
import { isSquareAngle } from '../kit/angle-figures.js';
import { checkBit } from '../kit/check-bit.js';
import { checkStroke, checkTableTilt } from '../kit/reach.js';
import { below, cureLength, remediesIn, type Concern, type Report } from '../kit/report.js';
import { holeOf, leastInBranch, type Pin } from './pin.js';
import type { SaddleEnd } from './solve.js';

/** Sizes equal to a limit within this are sound, mm: a pin bought to a round size. */
const slack = 0.05;
/** Less wood than this round a hole is none: it splits as it is drilled. Common practice, mm. */
const leastShell = 2;

/** A pin with the end that it is of, and how that is said. */
interface Checked {
  readonly pin: Pin;
  readonly end: SaddleEnd;
  readonly where: string;
  readonly about: Concern;
  readonly context: Context;
}

const sizeFinding = ({ pin: { diameter }, end, where, about, context }: Checked): readonly Report[] => {
  const branch = 2 * end.joint.branch;
  const { atLeast, atMost } = remediesIn(context.units);
  const [low, high] = [atLeast(branch / 3), atMost(branch / 2)];
  const remedy = words`A pin of ${diameterOf(low)} to ${diameterOf(high)}.`;
  if (diameter > branch - 2 * leastShell) {
    return [{
      code: 'pin-over-branch', severity: 'stop', measured: diameter, limit: branch - 2 * leastShell, about, remedy, would: [cureLength('pin.diameter', high)],
      message: words`A pin of ${diameterOf(diameter)} leaves less than ${lengthOf(leastShell)} of wood round it in a branch of ${diameterOf(branch)}${where}.`,
    }];
  }
  if (diameter >= branch / 3 - slack && diameter <= branch / 2 + slack) return [];
  const thick = diameter > branch / 2;
  return [{
    code: thick ? 'pin-thick' : 'pin-thin', severity: 'warn', measured: diameter, limit: thick ? branch / 2 : branch / 3, about, remedy,
    would: [cureLength('pin.diameter', thick ? high : low)],
    message: words`The pin of ${diameterOf(diameter)}${where} is ${thick ? 'more than half' : 'less than a third'} of the branch.`,
  }];
};

const lengthFinding = ({ pin, where, about, context }: Checked): readonly Report[] => {
  const least = leastInBranch(pin.diameter);
  if (pin.intoBranch >= least - slack) return [];
  const enough = remediesIn(context.units).atLeast(least);
  return [{
    code: 'pin-short', severity: 'warn', measured: pin.intoBranch, limit: least, about, would: [cureLength('pin.intoBranch', enough)],
    message: words`The pin holds ${lengthOf(pin.intoBranch)} in the branch${where}, in end grain.`,
    remedy: words`At least ${lengthOf(enough)}: three pin diameters, and no less than 30 mm.`,
  }];
};

const wallFinding = ({ pin, end, where, about, context }: Checked): readonly Report[] => {
  const hole = holeOf(end.joint, pin);
  const most = depthLeaving(farWall.sound, pin.holeInMain, (depth) => farWallInRound(hole, depth));
  const depth = most === undefined ? 0 : remediesIn(context.units).atMost(most - holeAllowance);
  const out = pin.wall <= 0;
  return below(pin.wall, farWall, () => ({
    code: out ? 'pin-breaks-out' : 'pin-wall-thin', about, would: depth > 0 ? [cureLength('pin.intoMain', depth)] : [],
    message: out
      ? words`The hole for the pin${where}, ${lengthOf(pin.holeInMain)} deep along its axis and the bit’s point ${lengthOf(pin.point)} beyond, comes out on the far side of the main.`
      : words`Beyond the hole for the pin${where} ${lengthOf(pin.wall)} of the main is left, the bit’s point of ${lengthOf(pin.point)} counted.`,
    remedy: depth > 0 ? words`Into the main no more than ${lengthOf(depth)}, or a thinner pin.` : ['A thinner pin, or a thicker main.'],
  }));
};

/** A pin thinner than its branch never breaks out sideways: the branch itself lies within the main. */
const skinFinding = ({ pin, end, where, about, context }: Checked): readonly Report[] => {
  const most = remediesIn(context.units).atMost(2 * (end.joint.main - Math.abs(end.joint.offset) - skinLimits.sound));
  const sound = most >= (2 * end.joint.branch) / 3;
  return below(pin.skin, skinLimits, () => ({
    code: 'pin-skin-thin', about, would: sound ? [cureLength('pin.diameter', most)] : [],
    message: words`Beside the hole for the pin${where} ${lengthOf(pin.skin)} of the main is left.`,
    remedy: words`${sound ? words`A pin of up to ${diameterOf(most)}` : 'A thinner pin'}, a smaller offset, or a thicker main.`,
  }));
};

const pressFindings = ({ pin, end, where, about, context }: Checked): readonly Report[] => {
  const { angle } = end.joint;
  const tilt = isSquareAngle(angle) ? [] : checkTableTilt(Math.PI / 2 - angle, {
    about, what: [`The hole for the pin in the main${where}`],
    remedy: [`Drill it by hand in a guide block made from this cope: kind drill-guide, from: ${context.name}${end.name === 'far' ? ', end: far' : ''}.`],
  }, context);
  const raised = 'Drill to the end of the stroke, raise the table without moving the work, and go on';
  const strokes = [
    { travel: pin.holeInBranch + end.firstCut.toeBeyondHorn, what: `The hole for the pin in the branch${where}, from the end of a blank cut at the toe,`, remedy: [`${raised}.`] },
    { travel: pin.travelInMain, what: `The hole for the pin in the main${where}`, remedy: [`${raised}; or by hand in a guide block.`] },
  ].flatMap(({ travel, what, remedy }) => checkStroke(travel, { about, what: [what], remedy }, context));
  return [...tilt, ...strokes];
};

const bitFindings = ({ pin, end, where, about, context }: Checked): readonly Report[] => checkBit({
  diameter: pin.diameter, reach: Math.max(pin.holeInBranch + end.firstCut.toeBeyondHorn, pin.travelInMain), about,
  forWhat: [`for the pin${where}`], otherwise: ['drill the branch’s hole in two steps, the end sawn off square nearer to the horn between them'],
}, context);

/** A main that no bit enters: the end is drawn without a pin, and its page says so. */
const tooFlat = ({ name, joint: { angle } }: SaddleEnd, where: string): Report => ({
  code: 'pin-too-flat', severity: 'warn', measured: degrees(angle), limit: degrees(leastDrillAngle),
  about: { operation: 'hollow', end: name }, would: [cureLength('pin.diameter', 0)],
  message: words`No pin is laid out${where}: at ${angleOf(angle)} to the main’s axis a bit rides along the surface and does not enter.`,
  remedy: ['Hold the joint by a pin square through branch and main, drilled once they are fitted; pin: { diameter: 0 } says that none is wanted.'],
});

/** What the pin of one end asks for. Limits are common practice; the walls are the hole's, not the pin's. */
export const checkPin = (end: SaddleEnd, where: string, context: Context): readonly Report[] => {
  const { pin } = end;
  if (end.noPin === 'too-flat') return [tooFlat(end, where)];
  if (pin === undefined) return [];
  const checked: Checked = { pin, end, where, about: { operation: 'drill-pin', end: end.name }, context };
  return [sizeFinding, lengthFinding, wallFinding, skinFinding, bitFindings, pressFindings].flatMap((find) => find(checked));
};
