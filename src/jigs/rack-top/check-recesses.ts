import { holeName, holeRegion } from './hole.js';
import { between } from '../../geometry/point.js';
import type { RackTop } from './rack-top.js';
import type { Recess } from './recess.js';
import { leastCutter, radiusToSpare } from '../../shop/router.js';
import { recessWall as wall } from '../../shop/walls.js';
import { cureLength } from '../kit/report.js';
import { cutterInto, deepestRecess, depthCure, shallowest } from './router-cures.js';
import { woodBetweenRecesses, woodToRecess } from './recess-webs.js';
import { below, reportsAbout, type TopFinding, type Say } from './report.js';
import { seatCentre, slotRegion } from './slot.js';
import { woodAround } from './solve-recesses.js';

const checkFloor = (recess: Recess, { board }: RackTop, say: Say): TopFinding[] => {
  const floor = board.thickness - recess.depth;
  const deepest = deepestRecess(board);
  return below({ measured: floor, ...wall }, (limit) => ({
    code: 'recess-floor-thin', message: `Recess ${recess.number} leaves a floor of ${say(floor)}, less than ${say(limit)}.`,
    remedy: deepest === undefined ? 'A thicker board.' : `A depth of at most ${say.most(deepest)}.`, would: depthCure(recess.number, deepest, say),
  }));
};

/** Where on the board the tightest bend is; empty where all corners are alike. */
const placeOf = ({ tightestAt }: Recess, { width }: RackTop['board'], say: Say): string =>
  (tightestAt === undefined ? '' : ` (along ${say(tightestAt.x)}, across ${say(width - tightestAt.y)})`);

const checkCorners = (recess: Recess, { cutter, board }: RackTop, say: Say): TopFinding[] => {
  const radius = cutter.diameter / 2;
  const { insideRadius: inside, number } = recess;
  const corner = { code: 'recess-corner', severity: 'warn', measured: inside, limit: radius } as const;
  const where = placeOf(recess, board, say);
  const sound = say.least(radius + radiusToSpare);
  // Of a box the corners are one field; of path data they are in the drawing.
  const would = recess.sort === 'box' && radius + radiusToSpare <= Math.min(recess.width, recess.height) / 2 ? [cureLength(`recesses.${number - 1}.box.radius`, say.up(radius + radiusToSpare))] : [];
  if (inside < leastCutter / 2) {
    return [{
      ...corner, message: `Recess ${number} has a sharp inside corner${where}, which no router bit cuts: it is left with the cutter’s radius, ${say(radius)} (dashed).`,
      remedy: `Round it in the data to a radius of at least ${sound}, or square it with a chisel.`, would,
    }];
  }
  if (inside < radius - 1e-9) {
    const thinner = cutterInto(2 * inside);
    return [{
      ...corner,
      message: `The tightest corner of recess ${number}${where} has a radius of ${say(inside)}, and the cutter reaches ${say(radius)} at best: the dashed line is what it leaves.`,
      remedy: `Corners of at least ${sound}, ${thinner === undefined ? '' : `a cutter of at most ${say.most(thinner)}, `}or a chisel.`, would,
    }];
  }
  return inside >= radius + radiusToSpare - 1e-9 ? [] : [{
    code: 'recess-tight-for-cutter', severity: 'warn', measured: inside, limit: radius + radiusToSpare,
    message: `The tightest corner of recess ${number}${where} has a radius of ${say(inside)}, hardly more than the cutter’s ${say(radius)}: it fills the corner and burns.`,
    remedy: `Corners of at least ${sound}.`, would,
  }];
};

const checkBeside = (recess: Recess, { board, slots, holes }: RackTop, say: Say): TopFinding[] => {
  const edge = woodAround(recess.outline, board);
  const beside = [
    ...slots.map((s) => ({ code: 'recess-near-slot', what: `slot ${s.number}`, part: `slot-${s.number}` as const, region: slotRegion(board, s), middle: seatCentre(board, s) })),
    ...holes.map((h) => ({ code: 'recess-near-hole', what: holeName(h), part: `hole-${h.number}` as const, region: holeRegion(h), middle: between(h.top, h.under, 0.5) })),
  ];
  return [
    ...below({ measured: edge, ...wall }, (limit) => ({
      code: 'recess-near-edge', message: `Recess ${recess.number} leaves ${say(edge)} of wood to the board’s outline, less than ${say(limit)}.`, remedy: `Move it ${say.least(wall.sound - edge)} inwards.`,
    })),
    ...beside.flatMap(({ code, what, part, region, middle }) => {
      const wood = woodToRecess(recess, region, middle, wall.sound);
      return reportsAbout([part], below({ measured: wood, ...wall }, (limit) => ({
        code, message: `Between recess ${recess.number} and ${what} there is ${say(wood)} of wood, less than ${say(limit)}.`,
        remedy: `Move one of them by ${say.least(wall.sound - wood)}.`,
      })));
    }),
  ];
};

const checkPairs = ({ board, recesses }: RackTop, say: Say): TopFinding[] => recesses.flatMap((a, i) => recesses.slice(i + 1).flatMap((b) => {
  const apart = woodBetweenRecesses(a, b, wall.sound);
  const about = [`recess-${a.number}`, `recess-${b.number}`] as const;
  if (a.face === b.face || apart > 0) {
    return reportsAbout(about, below({ measured: apart, ...wall }, (limit) => ({
      code: 'recess-near-recess', remedy: `Move them ${say.least(wall.sound - apart)} farther apart.`,
      message: apart > 0 ? `Between recesses ${a.number} and ${b.number} there is ${say(apart)} of wood, less than ${say(limit)}.` : `Recesses ${a.number} and ${b.number} run into each other.`,
    })));
  }
  const floor = board.thickness - a.depth - b.depth;
  return reportsAbout(about, below({ measured: floor, ...wall }, (limit) => ({
    code: 'recess-floor-thin', message: `Recesses ${a.number} and ${b.number} lie over each other and leave ${say(floor)} between them, less than ${say(limit)}.`,
    remedy: board.thickness - wall.sound >= 2 * shallowest ? `Depths of ${say.most(board.thickness - wall.sound)} together at most.` : 'A thicker board.',
  })));
}));

/** What is weak or out of reach about the recesses. */
export const checkRecesses = (top: RackTop, say: Say): TopFinding[] => [
  ...top.recesses.flatMap((recess) => reportsAbout([`recess-${recess.number}`], [checkFloor, checkCorners, checkBeside].flatMap((check) => check(recess, top, say)))),
  ...checkPairs(top, say),
];
