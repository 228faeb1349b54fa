import type { Shop } from '../../spec/shop.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import { degrees, radians, type Units } from '../../units/units.js';
import type { Carrier } from './carrier.js';
import type { Report } from '../jig.js';
import { handsFromBlade, leastSeat, leastTurn } from './limits.js';
import type { VCradleSolution } from './solve.js';

const checkHands = (c: Carrier, units: Units): Report[] => {
  const say = (mm: number) => lengthLabel(mm, units);
  const needed = c.endToBlade + handsFromBlade / Math.sin(c.sharpAngle);
  return c.handDistance >= handsFromBlade * (1 - 1e-9) ? [] : [{
    code: 'carrier-short', severity: 'stop', measured: c.handDistance, limit: handsFromBlade,
    message: `A carrier ${say(c.length)} long at ${angleLabel(c.sharpAngle)} to the blade brings the hand that holds its far end within ${say(c.handDistance)} of the blade; hands stay ${say(handsFromBlade)} away.`,
    remedy: `Make the carrier at least ${say(needed)} long, or leave its length out.`,
  }];
};

const checkSeat = (c: Carrier, units: Units): Report[] => c.seat >= leastSeat ? [] : [{
  code: 'carrier-seat-short', severity: c.seat > 0 ? 'warn' : 'stop', measured: c.seat, limit: leastSeat,
  message: c.seat > 0
    ? `Once the blade has gone through, ${lengthLabel(c.seat, units)} of the carrier's end is left against the fence: it rocks.`
    : `The blade takes away all of the carrier's end that stands against the fence.`,
  remedy: `Make the carrier at least ${lengthLabel(c.width + (leastSeat - c.seat) * Math.sin(c.turn), units)} wide.`,
}];

const checkTurn = (c: Carrier): Report[] => c.turn >= radians(leastTurn) - 1e-9 ? [] : [{
  code: 'turn-small', severity: 'warn', measured: degrees(c.turn), limit: leastTurn,
  message: `The carrier is turned only ${angleLabel(c.turn)} from the fence: its end, ${angleLabel(c.endCut)} from square, is long and thin.`,
  remedy: c.turn + c.sawReading >= radians(leastTurn)
    ? `Set sawReading to at most ${angleLabel(c.turn + c.sawReading - radians(leastTurn))}.`
    : `Cut it without a carrier, the saw at ${angleLabel(c.turn + c.sawReading)} from square.`,
}];

const checkReadings = (c: Carrier, maxReading: number | undefined): Report[] => {
  if (maxReading === undefined) return [];
  const beyond = (code: string, angle: number, what: string, remedy: string): Report[] => angle <= maxReading + 1e-9 ? [] : [{
    code, severity: 'warn', measured: degrees(angle), limit: degrees(maxReading),
    message: `${what} ${angleLabel(angle)} from square; the saw turns to ${angleLabel(maxReading)}.`, remedy,
  }];
  const plain = Math.PI / 2 - c.sharpAngle;
  return [
    ...beyond('saw-reading-out-of-reach', c.sawReading, 'The cut needs the saw at', `Set sawReading to at most ${angleLabel(maxReading)}: the carrier's turn makes up the rest.`),
    ...beyond('end-cut-out-of-reach', c.endCut, 'The carrier’s own end is cut at', `Saw that end by hand or on a band saw to the pattern, or lower sawReading.`),
    ...(plain > maxReading + 1e-9 ? [] : [{
      code: 'carrier-not-needed', severity: 'note', measured: degrees(plain), limit: degrees(maxReading),
      message: `The saw turns to ${angleLabel(maxReading)}: it makes this cut at ${angleLabel(plain)} from square with the round along the fence.`,
      remedy: `Leave the carrier out unless it holds the round better.`,
    } as const]),
  ];
};

/** Codes that belong on the carrier's own page. */
export const carrierCodes: readonly string[] = [
  'carrier-short', 'carrier-seat-short', 'turn-small', 'saw-reading-out-of-reach', 'end-cut-out-of-reach', 'carrier-not-needed', 'saw-depth-short',
];

/** Carrier and round together must pass under the saw. */
const checkHeight = (s: VCradleSolution, c: Carrier, maxDepth: number | undefined, units: Units): Report[] => {
  const held = s.held.find((h) => h.round.name === c.round.name)!;
  const height = s.block.height + Math.max(held.proud, 0);
  return maxDepth === undefined || height <= maxDepth + 1e-9 ? [] : [{
    code: 'saw-depth-short', severity: 'warn', measured: height, limit: maxDepth,
    message: `Carrier and ${c.round.name} stand ${lengthLabel(height, units)} high; the saw cuts ${lengthLabel(maxDepth, units)} deep.`,
    remedy: `Lower the block by ${lengthLabel(height - maxDepth, units)} if its floor allows, or finish the cut by hand.`,
  }];
};

/** Hands, seat on the fence, and the shop's saw; what the shop does not say is not checked. */
export const checkCarrier = (s: VCradleSolution, shop: Shop, units: Units): Report[] => {
  const c = s.carrier;
  return c === undefined ? [] : [
    ...checkHands(c, units), ...checkSeat(c, units), ...checkTurn(c),
    ...checkReadings(c, shop.saw?.maxReading), ...checkHeight(s, c, shop.saw?.maxDepth, units),
  ];
};
