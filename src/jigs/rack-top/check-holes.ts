import type { Cure } from '../../errors/finding.js';
import { alongGrain, holeToEnd, sideWall as side } from '../../shop/walls.js';
import { cureLength } from '../kit/report.js';
import { capsule, gapBetween } from './convex.js';
import { eachHolePair, woodBetweenHoles } from './hole-webs.js';
import { holeName, holeRegion, legRegion, type LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';
import { woodBeside, woodToSlot } from './refuse-holes.js';
import { below, reportsAbout, type TopFinding, type Say } from './report.js';
import { mouthCentre, mouthRegion, seatCentre } from './slot.js';

/** Room wanted between a leg and what is lifted in and out beside it, mm. */
const legRoom = 12;

/** A hole moved towards the middle of the board, as the remedy's figure says. */
const inwards = (hole: LegHole, way: 'along' | 'across', by: number, board: RackTop['board'], say: Say): readonly Cure[] => {
  const [from, size] = way === 'along' ? [hole.along, board.length] : [hole.across, board.width];
  return [cureLength(`holes.${hole.number - 1}.at.${way === 'along' ? 0 : 1}`, from + (from < size / 2 ? 1 : -1) * say.up(by))];
};

const checkOutline = (hole: LegHole, { board }: RackTop, say: Say): TopFinding[] => {
  const { edge, end } = woodBeside(hole, board);
  return [
    ...below({ measured: edge, ...side }, (limit) => ({
      code: 'hole-near-edge', message: `${holeName(hole)} leaves ${say(edge)} of wood to the edge of the board, less than ${say(limit)}.`,
      remedy: `Move it ${say.least(side.sound - edge)} inwards.`, would: inwards(hole, 'across', side.sound - edge, board, say),
    })),
    ...below({ measured: end, ...holeToEnd(hole.bit) }, (limit) => ({
      code: 'hole-near-end', message: `${holeName(hole)} leaves ${say(end)} of wood to the end of the board, less than ${say(limit)}: the end splits out.`,
      remedy: `Move it ${say.least(holeToEnd(hole.bit).sound - end)} inwards.`, would: inwards(hole, 'along', holeToEnd(hole.bit).sound - end, board, say),
    })),
  ];
};

const checkSlotsBeside = (hole: LegHole, { board, slots }: RackTop, say: Say): TopFinding[] =>
  slots.flatMap((slot) => {
    const wood = Math.min(woodToSlot(hole, slot, board), gapBetween(mouthRegion(board, slot), holeRegion(hole)));
    return reportsAbout([`slot-${slot.number}`], below({ measured: wood, ...side }, (limit) => ({
      code: 'hole-near-slot', message: `Between ${holeName(hole)} and slot ${slot.number} there is ${say(wood)} of wood, less than ${say(limit)}.`,
      remedy: `Move one of them by ${say.least(side.sound - wood)}.`,
    })));
  });

/** A leg that leans over a slot keeps what belongs there from going in. */
const checkUnderLeg = (hole: LegHole, { board, slots }: RackTop, say: Say): TopFinding[] => {
  const leg = legRegion(hole);
  return slots.flatMap((slot) => {
    const way = capsule(mouthCentre(board, slot), seatCentre(board, slot), slot.item / 2);
    const room = gapBetween(leg, way);
    return room >= legRoom - 1e-9 ? [] : [{
      code: 'slot-under-leg', severity: 'warn' as const, measured: room, limit: legRoom,
      message: room < 0
        ? `The leg of ${holeName(hole)} stands in the way of what goes into slot ${slot.number}, by ${say(-room)} seen from above.`
        : `The leg of ${holeName(hole)} passes ${say(room)} beside what goes into slot ${slot.number}, less than ${say(legRoom)}.`,
      remedy: `Move one of them by ${say.least(legRoom - room)}, or let the leg lean the other way.`,
    }];
  });
};

const checkPairs = ({ board, holes }: RackTop, say: Say): TopFinding[] => {
  const reports: TopFinding[] = [];
  eachHolePair(holes, alongGrain(Math.max(...holes.map(({ bit }) => bit))).sound, (a, b) => {
    const wood = woodBetweenHoles(a, b, board);
    reports.push(...reportsAbout([`hole-${a.number}`, `hole-${b.number}`], below({ measured: wood, ...alongGrain(Math.max(a.bit, b.bit)) }, (limit) => ({
      code: 'hole-near-hole', message: `Between ${holeName(a)} and ${holeName(b)} there is ${say(wood)} of wood, less than ${say(limit)}.`,
      remedy: `Move them ${say.least(alongGrain(Math.max(a.bit, b.bit)).sound - wood)} farther apart.`,
    }))));
  });
  return reports;
};

/** What is weak or in the way about the holes. */
export const checkHoles = (top: RackTop, say: Say): TopFinding[] => [
  ...top.holes.flatMap((hole) =>
    reportsAbout([`hole-${hole.number}`], [...checkOutline(hole, top, say), ...checkSlotsBeside(hole, top, say), ...checkUnderLeg(hole, top, say)])),
  ...checkPairs(top, say),
];
