import { between } from '../../geometry/point.js';
import { recessWall } from '../../shop/walls.js';
import type { RackTop } from './rack-top.js';
import { holeName, holeRegion } from './hole.js';
import { woodToRecess } from './recess-webs.js';
import type { TopFinding, Say } from './report.js';
import { mouthCentre, mouthRegion, seatCentre, slotRegion } from './slot.js';

const stop = { severity: 'stop', limit: 0 } as const;
/** What is farther apart than this, mm, does not meet. */
const touch = 1;

const moved = (wood: number, say: Say): string => `Move one of them by at least ${say.least(recessWall.sound - Math.min(wood, 0))}, which leaves ${say(recessWall.sound)} of wood.`;

/** Slots and holes go right through, so that a recess in either face that meets one runs out into it. */
export const refuseCrossedRecesses = ({ recesses, slots, holes, board }: Pick<RackTop, 'recesses' | 'slots' | 'holes' | 'board'>, say: Say): TopFinding[] =>
  recesses.flatMap((recess) => {
    const cuts = [
      ...slots.map((s) => ({
        code: 'recess-meets-slot', what: `slot ${s.number}`,
        wood: Math.min(woodToRecess(recess, slotRegion(board, s), seatCentre(board, s), touch), woodToRecess(recess, mouthRegion(board, s), mouthCentre(board, s), touch)),
      })),
      ...holes.map((h) => ({ code: 'recess-meets-hole', what: holeName(h), wood: woodToRecess(recess, holeRegion(h), between(h.top, h.under, 0.5), touch) })),
    ];
    return cuts.flatMap(({ code, what, wood }) => (wood > 0 ? [] : [{
      ...stop, code, measured: wood, message: `Recess ${recess.number} and ${what} run into each other.`, remedy: moved(wood, say),
    }]));
  });
