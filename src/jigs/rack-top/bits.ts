import type { Units } from '../../units/units.js';
import type { Bit, Shop } from '../../spec/shop.js';
import type { LegHole } from './hole.js';
import type { Slot } from './slot.js';

/** Waste left for the flush-trim pass when the slot's bottom is drilled first, mm on the radius: most and least. */
export const wasteLimits = { most: 1.5, least: 0.5 } as const;

/** Length of bit that drills a canted hole right through, mm: the bore, the run until the whole edge is out, and 3 mm. */
export const bitLength = (hole: LegHole): number => hole.boreLength + hole.bit * Math.tan(hole.lean) + 3;

/** The shop's bits of a diameter, to a tenth of a millimetre. */
export const bitsOf = (shop: Shop, diameter: number): readonly Bit[] => (shop.bits ?? []).filter((bit) => Math.abs(bit.diameter - diameter) <= 0.1);

/** The bit that drills the bottom of a slot and leaves 0.5 to 1.5 mm to trim: one owned, else the next size down to 1/16 in or 1 mm. */
export const bottomBit = (slot: Slot, shop: Shop, units: Units): number => {
  const most = 2 * (slot.radius - wasteLimits.least);
  const owned = (shop.bits ?? []).map((b) => b.diameter).filter((d) => d <= most && d >= 2 * (slot.radius - wasteLimits.most));
  if (owned.length > 0) return Math.max(...owned);
  const step = units === 'inch' ? 25.4 / 16 : 1;
  return Math.floor(most / step + 1e-9) * step;
};
