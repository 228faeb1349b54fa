import { landBetween, mouthHalfWidth, type Slot } from './slot.js';
import type { Board } from './board.js';
import type { Land } from './rack-top.js';

/**
 * Calls `visit` with every pair of slots whose axes stand closer along the board than their own reaches together. Slots must be in
 * order of station; the work grows with the slots and the pairs in reach, not with the square of the slots.
 */
export const eachPairInReach = (slots: readonly Slot[], reach: (slot: Slot) => number, visit: (a: Slot, b: Slot) => void): void => {
  const farthest = slots.reduce((most, slot) => Math.max(most, reach(slot)), 0);
  slots.forEach((a, i) => {
    for (let j = i + 1; j < slots.length; j++) {
      const b = slots[j]!;
      if (b.at - a.at > reach(a) + farthest) break;
      if (b.at - a.at <= reach(a) + reach(b)) visit(a, b);
    }
  });
};

/**
 * The narrowest land of the board, any two slots and either edge: between outlines, or as `between` measures. Slots in order of
 * station; exact.
 */
export const narrowestLand = (board: Board, slots: readonly Slot[], between = landBetween): Land | undefined => {
  const widest = slots.reduce((most, slot) => Math.max(most, mouthHalfWidth(slot)), 0);
  let least: Land | undefined;
  slots.forEach((a, i) => {
    for (let j = i + 1; j < slots.length; j++) {
      const b = slots[j]!;
      // No later slot can come nearer than this one along the board alone.
      if (least !== undefined && b.at - a.at - mouthHalfWidth(a) - widest >= least.width) break;
      const width = between(board, a, b);
      if (least === undefined || width < least.width) least = { between: [a, b], width };
    }
  });
  return least;
};

/** The least distance between the axes of two slots, seen from above. Exact. */
export const axesApart = (board: Board, a: Slot, b: Slot): number =>
  Math.hypot(a.at - b.at, a.edge === b.edge ? a.depth - b.depth : board.width - a.depth - b.depth);
