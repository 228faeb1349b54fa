import { webBetween } from '../../geometry/web.js';
import { vector3 } from '../../geometry/vector3.js';
import type { Board } from './board.js';
import { gapBetween } from './convex.js';
import { openingRegion, type LegHole } from './hole.js';

const axisOf = (hole: LegHole, { thickness }: Board) => ({
  a: vector3(hole.top.x, hole.top.y, 0), b: vector3(hole.under.x, hole.under.y, -thickness),
});

/**
 * Wood between two holes at its narrowest, mm; negative where they meet: the axes' distance within the board less the radii, and the
 * gap between the openings on each face, which is less where canted holes come near each other at a face.
 */
export const woodBetweenHoles = (a: LegHole, b: LegHole, board: Board): number => Math.min(
  webBetween({ axis: axisOf(a, board), diameter: a.bit }, { axis: axisOf(b, board), diameter: b.bit }),
  gapBetween(openingRegion(a, 'top'), openingRegion(b, 'top')),
  gapBetween(openingRegion(a, 'under'), openingRegion(b, 'under')),
);

/** Calls `visit` with each pair of holes whose openings come within `reach` of each other along the board. */
export const eachHolePair = (holes: readonly LegHole[], reach: number, visit: (a: LegHole, b: LegHole) => void): void => {
  const sorted = holes.map((hole) => ({
    hole, low: Math.min(hole.top.x, hole.under.x) - hole.halfLong, high: Math.max(hole.top.x, hole.under.x) + hole.halfLong,
  })).sort((a, b) => a.low - b.low);
  sorted.forEach((a, i) => {
    for (let j = i + 1; j < sorted.length && sorted[j]!.low - a.high <= reach; j++) {
      const b = sorted[j]!;
      if (a.hole.number < b.hole.number) visit(a.hole, b.hole);
      else visit(b.hole, a.hole);
    }
  });
};
