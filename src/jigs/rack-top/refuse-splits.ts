import type { RackTop } from './rack-top.js';
import type { TopFinding, Say } from './report.js';
import { holeRegion } from './hole.js';
import { leastOver } from './convex.js';
import { cureLength } from '../kit/report.js';
import { edgeStart, landLimits } from './board.js';
import { mouthHalfWidth } from './slot.js';
import { recessBounds } from './solve-recesses.js';

/** Wood between a joint and what is cut nearest to it, along the board; negative where it cuts through. */
export const woodBesideSplit = (top: Pick<RackTop, 'board' | 'slots' | 'holes' | 'recesses'>, station: number): { readonly wood: number; readonly what: string } => {
  const { board, slots, holes, recesses } = top;
  const end = Math.min(station, board.length - station) - edgeStart(board);
  const found = [
    { wood: end, what: 'the end of the board' },
    ...slots.map((s) => ({ wood: Math.abs(s.at - station) - mouthHalfWidth(s), what: `slot ${s.number}` })),
    ...holes.map((h) => ({ wood: Math.max(leastOver(holeRegion(h), (p) => p.x - station), leastOver(holeRegion(h), (p) => station - p.x)), what: `hole ${h.number}` })),
    ...recesses.map((r) => {
      const { x0, x1 } = recessBounds(r);
      return { wood: Math.max(x0 - station, station - x1), what: `recess ${r.number}` };
    }),
  ];
  return found.reduce((least, each) => (each.wood < least.wood ? each : least));
};

/** Why the board cannot be joined where asked; nothing where it can. */
export const refuseSplits = (top: Pick<RackTop, 'board' | 'slots' | 'holes' | 'recesses' | 'splits' | 'spline'>, say: Say): TopFinding[] => [
  ...top.splits.flatMap((station): TopFinding[] => {
    const { wood, what } = woodBesideSplit(top, station);
    return wood > 0 ? [] : [{
      code: 'split-through', severity: 'stop', measured: wood, limit: 0,
      message: `The joint at ${say(station)} runs through ${what}.`, remedy: `Move it at least ${say.least(landLimits(top.board).sound - wood)} away, into the middle of a land.`, about: ['joint'],
    }];
  }),
  ...(top.splits.length > 0 && top.spline.thickness >= top.board.thickness ? [{
    about: ['joint' as const], code: 'spline-thick', severity: 'stop' as const, measured: top.spline.thickness, limit: top.board.thickness,
    message: `A spline of ${say(top.spline.thickness)} does not go into a board of ${say(top.board.thickness)}.`,
    remedy: `At most a third of the board: ${say.most(top.board.thickness / 3)}.`, would: [cureLength('spline.thickness', say.down(top.board.thickness / 3))],
  }] : []),
];
