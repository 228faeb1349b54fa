import { alongGrain, holeToEnd, sideWall } from '../../shop/walls.js';
import { leastOver, gapBetween } from './convex.js';
import { edgeDistance, endDistance, type Board } from './board.js';
import { holeName, holeRegion, type LegHole } from './hole.js';
import { slotRegion, type Slot } from './slot.js';
import { eachHolePair, woodBetweenHoles } from './hole-webs.js';
import type { TopFinding, Say } from './report.js';

const stop = { severity: 'stop' } as const;

/** Wood between a hole and the long edges and the ends, at its narrowest on either face; negative where it breaks out. To 1e-9 mm. */
export const woodBeside = (hole: LegHole, board: Board): { readonly edge: number; readonly end: number } => ({
  edge: leastOver(holeRegion(hole), (p) => edgeDistance(board, p)), end: leastOver(holeRegion(hole), (p) => endDistance(board, p)),
});

/** Wood between a hole and a slot's throat and seat, at any height of the board; negative where they meet. To 1e-9 mm. */
export const woodToSlot = (hole: LegHole, slot: Slot, board: Board): number => gapBetween(holeRegion(hole), slotRegion(board, slot));

const refuseHole = (hole: LegHole, board: Board, say: Say): TopFinding[] => {
  const { edge, end } = woodBeside(hole, board);
  if (edge > 0 && end > 0) return [];
  const across = Math.abs(hole.way.y) * Math.hypot(hole.top.x - hole.under.x, hole.top.y - hole.under.y);
  const room = board.width - across - 2 * Math.hypot(hole.halfLong * hole.way.y, (hole.bit / 2) * hole.way.x);
  if (room <= 0) {
    return [{
      ...stop, code: 'hole-too-large', measured: board.width - room, limit: board.width,
      message: `${holeName(hole)} takes ${say(board.width - room)} across from face to face, and the board is ${say(board.width)} wide.`,
      remedy: 'A wider board, a thinner leg or less lean across it.',
    }];
  }
  return [{
    ...stop, code: 'hole-off-board', measured: Math.min(edge, end), limit: 0,
    message: `${holeName(hole)} breaks out of the ${edge <= end ? 'edge' : 'end'} of the board by ${say(-Math.min(edge, end))}, on one face at least.`,
    remedy: `Move it at least ${say.least((edge <= end ? sideWall.sound : holeToEnd(hole.bit).sound) - Math.min(edge, end))} inwards, which leaves ${say(edge <= end ? sideWall.sound : holeToEnd(hole.bit).sound)} of wood.`,
  }];
};

/** Why the holes cannot be drilled as asked; nothing where they can. */
export const refuseHoles = (holes: readonly LegHole[], slots: readonly Slot[], board: Board, say: Say): TopFinding[] => {
  const off = holes.flatMap((hole) => refuseHole(hole, board, say));
  if (off.length > 0) return off;
  return [...refuseCrossing(holes, board, say), ...refuseInSlots(holes, slots, board, say)];
};

const refuseCrossing = (holes: readonly LegHole[], board: Board, say: Say): TopFinding[] => {
  const reports: TopFinding[] = [];
  eachHolePair(holes, 0, (a, b) => {
    const wood = woodBetweenHoles(a, b, board);
    if (wood > 0) return;
    reports.push({
      ...stop, code: 'holes-meet', measured: wood, limit: 0, message: `${holeName(a)} and ${holeName(b)} run ${say(-wood)} into each other.`,
      remedy: `Move them at least ${say.least(alongGrain(Math.max(a.bit, b.bit)).sound - wood)} farther apart, which leaves ${say(alongGrain(Math.max(a.bit, b.bit)).sound)} of wood.`,
    });
  });
  return reports;
};

const refuseInSlots = (holes: readonly LegHole[], slots: readonly Slot[], board: Board, say: Say): TopFinding[] =>
  holes.flatMap((hole) => slots.flatMap((slot) => {
    const wood = woodToSlot(hole, slot, board);
    return wood > 0 ? [] : [{
      ...stop, code: 'hole-meets-slot', measured: wood, limit: 0,
      message: `${holeName(hole)} runs ${say(-wood)} into slot ${slot.number} between the top and the underside.`,
      remedy: `Move one of them by at least ${say.least(sideWall.sound - wood)}, which leaves ${say(sideWall.sound)} of wood.`,
    }];
  }));
