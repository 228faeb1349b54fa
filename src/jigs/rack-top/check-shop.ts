import { angleLabel } from '../../units/format.js';
import { degrees } from '../../units/units.js';
import type { Shop } from '../../spec/shop.js';
import { bitLength, bitsOf } from './bits.js';
import { holeName, type LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';
import { reportsAbout, type Report, type Say } from './report.js';

const warn = { severity: 'warn' } as const;

const checkBit = (hole: LegHole, shop: Shop, say: Say): Report[] => {
  if (shop.bits === undefined) return [];
  const owned = bitsOf(shop, hole.bit);
  const longest = owned.reduce((most, bit) => Math.max(most, bit.usableLength), 0);
  const needed = bitLength(hole);
  if (owned.length === 0) {
    const near = shop.bits.reduce((best, { diameter }) => (Math.abs(diameter - hole.bit) < Math.abs(best - hole.bit) ? diameter : best), Infinity);
    return [{
      ...warn, code: 'no-bit', measured: hole.bit, limit: Number.isFinite(near) ? near : 0,
      message: `The shop has no bit of ${say(hole.bit)} for ${holeName(hole)}.`,
      remedy: Number.isFinite(near) ? `The nearest is ${say(near)}: fit the leg to it, or get the bit.` : 'Get the bit, or list it under bits.',
    }];
  }
  return longest >= needed ? [] : [{
    ...warn, code: 'bit-short', measured: longest, limit: needed,
    message: `The bit for ${holeName(hole)} reaches ${say(longest)} and has to reach ${say(needed)} at this lean.`, remedy: 'An extension or a longer bit; never from both faces, the two holes do not meet.',
  }];
};

const checkPress = (hole: LegHole, { drillPress }: Shop, say: Say): Report[] => [
  ...(drillPress?.maxTableTilt === undefined || hole.lean <= drillPress.maxTableTilt + 1e-9 ? [] : [{
    ...warn, code: 'tilt-beyond-press', measured: degrees(hole.lean), limit: degrees(drillPress.maxTableTilt),
    message: `${holeName(hole)} leans ${angleLabel(hole.lean)} and the drill press table tilts ${angleLabel(drillPress.maxTableTilt)}.`,
    remedy: 'A wedge under the board on the level table, or a guide block for the hand drill.',
  }]),
  ...(drillPress?.stroke === undefined || bitLength(hole) <= drillPress.stroke ? [] : [{
    ...warn, code: 'stroke-short', measured: drillPress.stroke, limit: bitLength(hole),
    message: `${holeName(hole)} takes ${say(bitLength(hole))} of travel and the quill has ${say(drillPress.stroke)}.`, remedy: 'Raise the table in the middle of the hole, or use a guide block.',
  }]),
];

/** What the shop, as far as it is described, cannot do. */
export const checkShop = ({ holes, cutter, slots, recesses }: RackTop, shop: Shop, say: Say): Report[] => {
  const most = shop.router?.maxBitDiameter;
  const routed = slots.length + recesses.length > 0;
  return [
    ...holes.flatMap((hole) => reportsAbout([`hole-${hole.number}`], [...checkBit(hole, shop, say), ...checkPress(hole, shop, say)])),
    ...(most === undefined || !routed || cutter.diameter <= most ? [] : [{
      ...warn, about: [...slots.map((s) => `slot-${s.number}` as const), ...recesses.map((r) => `recess-${r.number}` as const)], code: 'cutter-beyond-router', measured: cutter.diameter, limit: most,
      message: `The router takes cutters up to ${say(most)} and this one is ${say(cutter.diameter)}.`, remedy: `A cutter of at most ${say(most)}.`,
    }]),
  ];
};
