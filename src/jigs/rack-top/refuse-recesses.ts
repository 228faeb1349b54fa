import { between } from '../../geometry/point.js';
import { recessWall } from '../../shop/walls.js';
import type { RackTop } from './rack-top.js';
import { holeName, holeRegion } from './hole.js';
import { woodToRecess } from './recess-webs.js';
import type { TopFinding, Say } from './report.js';
import { mouthHalfWidth, mouthRegion, seatCentre, slotRegion } from './slot.js';
import { recessBounds } from './solve-recesses.js';

const stop = { severity: 'stop', limit: 0 } as const;
const moved = (wood: number, say: Say): string => `Move one of them by at least ${say.least(recessWall.sound - Math.min(wood, 0))}, which leaves ${say(recessWall.sound)} of wood.`;

/** Slots and holes go right through, so that a recess in either face that meets one runs out into it. */
export const refuseCrossedRecesses = ({ recesses, slots, holes, board }: Pick<RackTop, 'recesses' | 'slots' | 'holes' | 'board'>, say: Say): TopFinding[] =>
  recesses.flatMap((recess) => {
    const { x0, x1 } = recessBounds(recess);
    const near = slots.filter((s) => s.at + mouthHalfWidth(s) > x0 && s.at - mouthHalfWidth(s) < x1);
    const cuts = [
      ...near.map((s) => ({
        code: 'recess-meets-slot', what: `slot ${s.number}`,
        wood: Math.min(...[slotRegion(board, s), mouthRegion(board, s)].map((region) => woodToRecess(recess, region, seatCentre(board, s)))),
      })),
      ...holes.map((h) => ({ code: 'recess-meets-hole', what: holeName(h), wood: woodToRecess(recess, holeRegion(h), between(h.top, h.under, 0.5)) })),
    ];
    return cuts.flatMap(({ code, what, wood }) => (wood > 0 ? [] : [{
      ...stop, code, measured: wood, message: `Recess ${recess.number} and ${what} run into each other.`, remedy: moved(wood, say),
    }]));
  });
