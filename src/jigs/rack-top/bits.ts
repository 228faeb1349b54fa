import type { Units } from '../../units/units.js';
import type { Shop } from '../../spec/shop.js';
import { reachToLips, throughAllowance } from '../../shop/bit-length.js';
import { routerPractice } from '../../shop/router.js';
import type { LegHole } from './hole.js';
import type { Slot } from './slot.js';

/** From the jaws to the lips, mm: the bore on its axis, on until the exit is open all round, and clear. Exact. */
export const bitLength = ({ boreLength, bit, lean }: LegHole): number =>
  reachToLips({ depth: boreLength, overrun: (bit / 2) * Math.tan(lean) + throughAllowance });

/** What the quill goes down, mm: the same from where the rim first touches, on the uphill side. Exact. */
export const quillTravel = (hole: LegHole): number => bitLength(hole) + (hole.bit / 2) * Math.tan(hole.lean);

/** The bit that drills the bottom of a slot and leaves 0.5 to 1.5 mm to trim: one owned, else the next size down to 1/16 in or 1 mm. */
export const bottomBit = (slot: Slot, shop: Shop, units: Units): number => {
  const { offLine, leastOffLine } = routerPractice(units);
  const most = 2 * (slot.radius - leastOffLine);
  const owned = (shop.bits ?? []).map((b) => b.diameter).filter((d) => d <= most && d >= 2 * (slot.radius - offLine));
  if (owned.length > 0) return Math.max(...owned);
  const step = units === 'inch' ? 25.4 / 16 : 1;
  return Math.floor(most / step + 1e-9) * step;
};
