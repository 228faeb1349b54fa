import { handsFromBlade, usualReach } from '../../shop/tools.js';
import { blockFloor } from '../../shop/walls.js';
import { angleRoundedDown } from '../../units/round-safe.js';
import { angleOf, lengthOf, words } from '../../units/quantity.js';
import { degrees } from '../../units/units.js';
import { leastLengthOf, type Carrier } from './carrier.js';
import type { Context } from '../jig.js';
import { checkSawDepth, checkSawReading } from '../kit/reach.js';
import { cureAngle, cureLength, remediesIn, type Report } from '../kit/report.js';
import { leastSeat, leastSideA, leastTurn } from './limits.js';
import type { VCradleSolution } from './solve.js';

const about = { operation: 'carrier' } as const;
/** What concerns the carrier as it is made is said where it is made. */
const making = { operation: 'saw-carrier-v' } as const;

const checkHands = (c: Carrier, { units }: Context): readonly Report[] => {
  const least = leastLengthOf(c);
  if (c.length >= least * (1 - 1e-9)) return [];
  const length = remediesIn(units).atLeast(least);
  const [near, sideA] = [c.handDistance, c.length - c.seatSide / Math.tan(c.turn)];
  const tooNear = near < handsFromBlade * (1 - 1e-9);
  return [{
    code: 'carrier-short', severity: 'stop', about, would: [cureLength('carrier.length', length)],
    measured: tooNear ? near : sideA, limit: tooNear ? handsFromBlade : leastSideA,
    message: tooNear ? words`A carrier ${lengthOf(c.length)} long at ${angleOf(c.sharpAngle)} to the blade brings the near corner of its far end within ${lengthOf(near)} of the blade; hands stay ${lengthOf(handsFromBlade)} away.`
      : words`A carrier ${lengthOf(c.length)} long, turned ${angleOf(c.turn)}, has ${lengthOf(sideA)} left of its short side beside the oblique end.`,
    remedy: words`Make the carrier at least ${lengthOf(length)} long, or leave its length out.`,
  }];
};

const checkSeat = (c: Carrier, { units }: Context): readonly Report[] => {
  if (c.seat >= leastSeat - 1e-9) return [];
  const width = remediesIn(units).atLeast(c.width + (leastSeat - c.seat) * Math.sin(c.turn));
  return [{
    code: 'carrier-seat-short', severity: c.seat > 0 ? 'warn' : 'stop', measured: c.seat, limit: leastSeat, about, would: [cureLength('carrier.width', width)],
    message: c.seat > 0
      ? words`Once the blade has gone through, ${lengthOf(c.seat)} of the carrier’s end is left against the fence: it rocks.`
      : ['The blade takes away all of the carrier’s end that stands against the fence.'],
    remedy: words`Make the carrier at least ${lengthOf(width)} wide.`,
  }];
};

const checkTurn = (c: Carrier): readonly Report[] => {
  if (c.turn >= leastTurn - 1e-9) return [];
  const reading = angleRoundedDown(c.turn + c.sawReading - leastTurn);
  const lower = reading >= 0;
  return [{
    code: 'turn-small', severity: 'warn', measured: degrees(c.turn), limit: degrees(leastTurn), about: making, would: lower ? [cureAngle('carrier.sawReading', reading)] : [],
    message: words`The carrier is turned only ${angleOf(c.turn)} from the fence: its end, ${angleOf(c.endCut)} from square, is long and thin.`,
    remedy: lower ? words`Set sawReading to at most ${angleOf(reading)}.` : words`Cut it without a carrier, the saw at ${angleOf(c.turn + c.sawReading)} from square.`,
  }];
};

const checkReadings = (c: Carrier, context: Context): readonly Report[] => {
  const most = context.shop.saw?.maxReading;
  const plain = Math.PI / 2 - c.sharpAngle;
  const reading = angleRoundedDown(most ?? usualReach);
  // At this reading the carrier's own end, square to its turn, is just within reach.
  const lower = angleRoundedDown(plain - (Math.PI / 2 - (most ?? usualReach)));
  return [
    ...checkSawReading(c.sawReading, {
      about, what: ['The cut'], would: [cureAngle('carrier.sawReading', reading)],
      remedy: words`Set sawReading to at most ${angleOf(reading)}: the carrier’s turn makes up the rest.`,
    }, context),
    ...(c.endCut <= (most ?? usualReach) + 1e-9 ? [] : [{
      code: 'end-cut-out-of-reach', severity: most === undefined ? 'note' as const : 'warn' as const, measured: degrees(c.endCut), limit: degrees(most ?? usualReach), about: making,
      would: lower >= 0 ? [cureAngle('carrier.sawReading', lower)] : [],
      message: words`The carrier’s own end is cut at ${angleOf(c.endCut)} from square; ${most === undefined ? 'many saws turn' : 'the shop’s saw turns'} to ${angleOf(most ?? usualReach)}.`,
      remedy: words`Saw that end at the band saw or by hand to the pattern${lower >= 0 ? words`, or set sawReading to at most ${angleOf(lower)}` : []}.`,
    }]),
    ...(most === undefined || plain > most + 1e-9 ? [] : [{
      code: 'carrier-not-needed', severity: 'note' as const, measured: degrees(plain), limit: degrees(most), about,
      message: words`The saw turns to ${angleOf(most)}: it makes this cut at ${angleOf(plain)} from square with the round along the fence.`,
      remedy: ['Leave the carrier out unless it holds the round better.'],
    }]),
  ];
};

/** Carrier and round together must pass under the saw, and the blade must reach from the fence to the heel. */
const checkSize = (s: VCradleSolution, c: Carrier, context: Context): readonly Report[] => {
  const held = s.held.find((h) => h.round.name === c.round.name)!;
  const height = s.block.height + Math.max(held.proud, 0);
  const lower = remediesIn(context.units).atMost(s.block.height - (height - (context.shop.saw?.maxDepth ?? Infinity)));
  const possible = lower >= s.groove.depth + blockFloor.sound;
  const reach = context.shop.saw?.reach;
  return [
    ...checkSawDepth(height, 0, {
      about, what: [`The carrier with ${c.round.name} in it`], would: possible ? [cureLength('block.height', lower)] : [],
      remedy: possible ? words`A carrier ${lengthOf(lower)} high; or finish the cut by hand in the kerf.` : ['Finish the cut by hand in the kerf.'],
    }, context),
    ...(reach === undefined || c.bladeReach <= reach + 1e-9 ? [] : [{
      code: 'saw-reach-short', severity: 'warn' as const, measured: c.bladeReach, limit: reach, about,
      message: words`From the fence to the heel the blade must reach ${lengthOf(c.bladeReach)}; the shop’s saw cuts ${lengthOf(reach)} across.`,
      remedy: ['Finish the cut by hand, the kerf in the carrier to guide the saw; or a saw that reaches further.'],
    }]),
  ];
};

/** Hands, seat on the fence, and the shop's saw. */
export const checkCarrier = (s: VCradleSolution, context: Context): readonly Report[] => {
  const c = s.carrier;
  return c === undefined ? [] : [
    ...checkHands(c, context), ...checkSeat(c, context), ...checkTurn(c), ...checkReadings(c, context), ...checkSize(s, c, context),
  ];
};
