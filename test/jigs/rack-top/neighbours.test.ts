import fc from 'fast-check';
import { expect, test } from 'vitest';
import { axesApart, eachPairInReach, narrowestLand } from '../../../src/jigs/rack-top/neighbours.js';
import { throatsApart, type Slot } from '../../../src/jigs/rack-top/slot.js';
import type { Board } from '../../../src/jigs/rack-top/board.js';

const board: Board = { length: 2000, width: 200, thickness: 27, endRadius: undefined, cornerRadius: 0 };
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anySlots = fc.array(fc.record({ at: size(0, 400), radius: size(5, 40), depth: size(10, 150), run: size(0, 30), flare: size(0, 0.4), ease: size(0, 20), edge: fc.constantFrom('front' as const, 'rear' as const) }), { minLength: 0, maxLength: 9 })
  .map((all) => all.sort((a, b) => a.at - b.at).map(({ run, flare, ease, ...slot }, i) => ({ ...slot, number: i + 1, mouth: { run, flare, ease } }) as unknown as Slot));

/** Half the opening along the edge: radius, flare over its run, and the reach of the eased corner, ease · tan((90° − flare)/2). */
const half = ({ radius, mouth: { run, flare, ease } }: Slot): number => radius + run * Math.tan(flare) + ease * Math.tan((Math.PI / 2 - flare) / 2);
/** Wood between two slots: seats and throats as capsules seen from above; on one edge their mouths too. */
const wood = (a: Slot, b: Slot): number => {
  const along = Math.abs(a.at - b.at);
  if (a.edge === b.edge) return Math.min(along - a.radius - b.radius, along - half(a) - half(b));
  return Math.hypot(along, Math.max(0, 200 - a.depth - b.depth)) - a.radius - b.radius;
};
const pairsOf = (slots: readonly Slot[]): (readonly [Slot, Slot])[] => slots.flatMap((a, i) => slots.slice(i + 1).map((b) => [a, b] as const));

test('the narrowest land is the least of all pairs', () => {
  fc.assert(fc.property(anySlots, (slots) => {
    const least = Math.min(...pairsOf(slots).map(([a, b]) => wood(a, b)));
    const found = narrowestLand(board, slots);
    if (found === undefined) expect(slots.length).toBeLessThan(2);
    else {
      expect(found.width).toBeCloseTo(least, 9);
      expect(wood(...found.between as [Slot, Slot])).toBeCloseTo(least, 9);
    }
    const throats = narrowestLand(board, slots, throatsApart);
    if (throats !== undefined) expect(throats.width).toBeCloseTo(Math.min(...pairsOf(slots).map(([a, b]) => throatsApart(board, a, b))), 9);
  }), { numRuns: 500 });
});

test('every pair in reach of each other is visited once, and no other', () => {
  fc.assert(fc.property(anySlots, size(0.2, 4), (slots, factor) => {
    const reach = (slot: Slot): number => factor * slot.radius;
    const seen: string[] = [];
    eachPairInReach(slots, reach, (a, b) => seen.push(`${a.number}-${b.number}`));
    expect(seen.sort()).toEqual(pairsOf(slots).filter(([a, b]) => b.at - a.at <= reach(a) + reach(b)).map(([a, b]) => `${a.number}-${b.number}`).sort());
  }), { numRuns: 300 });
});

test('axes run from their edges in: the nearest points of two of them', () => {
  const slot = (at: number, depth: number, edge: 'front' | 'rear') => ({ at, depth, edge }) as unknown as Slot;
  // Two seats on one edge, 30 along and 40 deeper; from both edges 60 and 70 in leave 70 of 200 between their ends.
  expect(axesApart(board, slot(100, 60, 'front'), slot(130, 100, 'front'))).toBe(50);
  expect(axesApart(board, slot(100, 60, 'front'), slot(124, 70, 'rear'))).toBe(Math.hypot(24, 70));
});
