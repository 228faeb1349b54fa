import type { Block } from './block.js';
import { type Drilling, overrunOf, runOf } from './hole.js';
import { type Sole, soleHeight } from './sole.js';
import type { Hole } from './solve.js';
import { offsetOf, surfaceHeight } from './work.js';

/** What the bit must be long enough for, mm, in the order added up. */
export interface Budget {
  readonly bore: number;
  /** Along the bit from the sole, at the bore's axis, to the work. */
  readonly standoff: number;
  readonly run: number;
  readonly depth: number;
  readonly point: number;
  readonly needed: number;
  /** From the sole, at the bore's axis, to the bit's tip when the hole is deep enough. */
  readonly tipStop: number;
}

/** Adds up the bit's length; exact but for the overrun of a through hole in a round, to 1e-9 mm. */
export const budgetOf = (drilling: Drilling, hole: Hole, block: Block, sole: Sole): Budget => {
  const { work, angle, point } = drilling;
  const across = offsetOf(work);
  const standoff = (soleHeight(sole, across) - surfaceHeight(work, across)) / Math.sin(angle);
  const run = runOf(drilling);
  const { boreLength: bore } = block;
  return {
    bore, standoff, run, depth: hole.depth, point,
    needed: bore + standoff + run + hole.depth + point,
    tipStop: standoff + hole.depth + (hole.through ? overrunOf(drilling) : 0) + point,
  };
};
