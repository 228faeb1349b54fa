import { degrees } from '../../units/units.js';
import type { Value, Values } from '../jig.js';
import type { Carrier } from './carrier.js';
import type { HeldRound } from './held-round.js';
import type { VCradleSolution } from './solve.js';

/** What `check --json` prints of the carrier: mm and degrees. */
const carrierValues = (c: Carrier): Value => ({
  turn: degrees(c.turn),
  endCut: degrees(c.endCut),
  faceLength: c.faceLength,
  heelToToe: c.heelToToe,
  toeShift: c.toeShift,
  length: c.length,
  blankLength: c.blankLength,
  width: c.width,
  seat: c.seat,
  handDistance: c.handDistance,
});

/**
 * What `check --json` prints: mm and degrees. `grooveDepth` is the depth of cut, from the block's top to the flat;
 * `apexDepth` goes on to the virtual apex, from which axis and contact heights are measured.
 */
export const values = (s: VCradleSolution): Values => {
  const byRound = (figure: (h: HeldRound) => number): Value =>
    Object.fromEntries(s.held.map((h) => [h.round.name, figure(h)]));
  return {
    grooveDepth: s.groove.depth,
    grooveWidth: s.groove.width,
    apexDepth: s.groove.apexDepth,
    sawTilt: degrees(s.sawing.tilt),
    fence: s.sawing.fence.a,
    blockLength: s.block.length,
    blockWidth: s.block.width,
    blockHeight: s.block.height,
    floor: s.block.floor,
    wall: s.block.wall,
    axisHeight: byRound((h) => h.axisHeight),
    contactHeight: byRound((h) => h.contactHeight),
    contactHalfWidth: byRound((h) => h.contactHalfWidth),
    proud: byRound((h) => h.proud),
    gap: byRound((h) => h.gap),
    ...(s.carrier === undefined ? {} : { carrier: carrierValues(s.carrier) }),
  };
};
