import { reachToLips, reachToTip, throughAllowance, type BitWay } from '../../shop/bit-length.js';
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
  readonly depth: number;
  /** Of a through hole, until it is open all round and clear; 0 of a blind one. */
  readonly overrun: number;
  readonly point: number;
  readonly needed: number;
  readonly neededToLips: number;
  /** How far the bit goes, inside the depth, until it is buried all round: worth knowing, not added. */
  readonly run: number;
  /** From the sole, at the bore's axis, to the bit's tip when the hole is deep enough. */
  readonly tipStop: number;
}

/** Adds up the bit's length; exact but for the overrun of a through hole in a round, to 1e-9 mm. */
export const budgetOf = (drilling: Drilling, hole: Hole, block: Block, sole: Sole): Budget => {
  const { work, angle, point } = drilling;
  const across = offsetOf(work);
  const way: Required<BitWay> = {
    guide: block.boreLength,
    standoff: (soleHeight(sole, across) - surfaceHeight(work, across)) / Math.sin(angle),
    depth: hole.depth,
    overrun: hole.through ? overrunOf(drilling) + throughAllowance : 0,
  };
  return {
    bore: way.guide, standoff: way.standoff, depth: way.depth, overrun: way.overrun, point,
    needed: reachToTip(way, point), neededToLips: reachToLips(way),
    run: runOf(drilling), tipStop: reachToTip({ ...way, guide: 0 }, point),
  };
};
