import type { Bit, Shop } from '../spec/shop.js';

/** Two diameters to within this are one size of bit, mm: less than half the step between sizes that shops stock. */
const sameSize = 0.05;

/** How far a centre point stands out where nobody says, mm: brad-point and spur bits. Common practice. */
export const usualPoint = 3;

/** Whether two diameters are one size of bit. */
export function isSameBit(a: number, b: number): boolean {
  return Math.abs(a - b) <= sameSize + 1e-9;
}

/** The owned bits of a diameter, the longest first; empty where there is none, or no bits are listed. */
export function ownedBits(shop: Shop, diameter: number): readonly Bit[] {
  return (shop.bits ?? []).filter((bit) => isSameBit(bit.diameter, diameter)).sort((a, b) => b.usableLength - a.usableLength);
}

/** The owned diameter nearest to the one wanted, among those between `least` and `most`; undefined where there is none. mm. */
export function nearestBit(shop: Shop, wanted: number, least = 0, most = Infinity): number | undefined {
  return (shop.bits ?? []).map((bit) => bit.diameter).filter((d) => d >= least - 1e-9 && d <= most + 1e-9)
    .sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted) || a - b)[0];
}
