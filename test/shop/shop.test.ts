import { describe, expect, test } from 'vitest';
import { holeAllowance, reachToLips, reachToTip, throughAllowance } from '../../src/shop/bit-length.js';
import { isSameBit, nearestBit, ownedBits, usualPoint } from '../../src/shop/bits.js';
import { cautionsAt, shortCautionsAt, type Machine } from '../../src/shop/cautions.js';
import { nextSize } from '../../src/shop/sizes.js';
import * as tools from '../../src/shop/tools.js';
import * as walls from '../../src/shop/walls.js';

const bit = (diameter: number, usableLength: number) => ({ diameter, usableLength, point: 2 });

describe('owned bits', () => {
  const shop = { bits: [bit(10, 80), bit(10.05, 120), bit(12, 100), bit(9.94, 200)] };

  test('one size is within 0.05 mm, for every kind of jig', () => {
    expect([isSameBit(10, 10.05), isSameBit(10.05, 10), isSameBit(10, 10.051), isSameBit(10, 9.94)]).toEqual([true, true, false, false]);
    // 9/16 in, and the same bit written to a tenth of a millimetre.
    expect(isSameBit(14.2875, 14.3)).toBe(true);
  });

  test('the longest of a size comes first, and none of another size', () => {
    expect(ownedBits(shop, 10).map((b) => b.usableLength)).toEqual([120, 80]);
    expect(ownedBits({}, 10)).toEqual([]);
  });

  test('the nearest is found among those allowed, the thinner of two as near', () => {
    expect(nearestBit(shop, 11)).toBe(10.05);
    expect(nearestBit(shop, 11, 11)).toBe(12);
    expect(nearestBit(shop, 11, 10.5, 11.5)).toBeUndefined();
    expect(nearestBit({ bits: [bit(12, 1), bit(10, 1)] }, 11)).toBe(10);
    expect(nearestBit({}, 11)).toBeUndefined();
  });
});

test('a sound 114 mm bit is long enough: the run on a slant lies inside the depth and is not counted again', () => {
  // Guide 60, stand-off 4, depth 50 along the axis: 114 to the lips, and a 3 mm point beyond. The run of a 12 mm bit at 60° would add 7.
  expect(reachToLips({ guide: 60, standoff: 4, depth: 50 })).toBe(114);
  expect(reachToTip({ guide: 60, standoff: 4, depth: 50 }, 3)).toBe(117);
  expect(reachToLips({ depth: 50 })).toBe(50);
  expect(reachToLips({ guide: 60, standoff: 4, depth: 50, overrun: 5 })).toBe(119);
});

test('sizes go up to what a rule shows and what stock is sawn to, and stay where they are on a step', () => {
  expect([nextSize(41, 'sawn', 'mm'), nextSize(40, 'sawn', 'mm'), nextSize(10.1, 'depth', 'mm')]).toEqual([45, 40, 10.5]);
  expect(nextSize(26, 'sawn', 'inch')).toBeCloseTo(31.75, 9);
  expect(nextSize(25.4, 'sawn', 'inch')).toBeCloseTo(25.4, 9);
  expect(nextSize(25.5, 'depth', 'inch')).toBeCloseTo(26.19375, 9);
});

test('walls, skins and allowances are those of the shop’s practice', () => {
  // Common practice, as the trade's page gives it: warn / strong warn.
  expect(walls.holeShare).toEqual({ sound: 0.4, least: 0.5 });
  expect(walls.sideWall).toEqual({ sound: 8, least: 6 });
  expect(walls.farWall).toEqual({ sound: 6, least: 4 });
  expect(walls.skin).toEqual({ sound: 5, least: 3 });
  expect(walls.recessWall).toEqual({ sound: 6, least: 4 });
  expect([walls.blockWall.sound, walls.usualBlockWall, walls.blockFloor.sound, walls.usualBlockFloor]).toEqual([6, 12, 10, 12]);
  expect([walls.alongGrain(8), walls.alongGrain(14)]).toEqual([{ sound: 10, least: 6 }, { sound: 14, least: 6 }]);
  expect([walls.holeToEnd(8), walls.holeToEnd(20)]).toEqual([{ sound: 25, least: 12 }, { sound: 40, least: 12 }]);
  expect([walls.land(12), walls.land(27)]).toEqual([{ sound: 19, least: 12 }, { sound: 27, least: 12 }]);
  expect([holeAllowance, throughAllowance, usualPoint]).toEqual([1.5, 3, 3]);
});

test('tools reach, and hands keep, what is common practice', () => {
  const degrees = (rad: number): number => (rad * 180) / Math.PI;
  expect([tools.usualReach, tools.leastDrillAngle, tools.settingError, tools.leastCarrierTurn].map((rad) => Number(degrees(rad).toFixed(9)))).toEqual([45, 15, 0.5, 3]);
  expect([tools.usualKerf, tools.handsFromBlade, tools.handsFromCutter, tools.leastSawBlank, tools.sawAllowance]).toEqual([3.175, 150, 100, 300, 1]);
});

describe('cautions', () => {
  const machines: readonly Machine[] = [
    'saw-a-round', 'carrier', 'saw-a-v', 'saw-a-block', 'drill-press', 'drill-a-round', 'hand-drill', 'hand-router', 'plunge-router', 'join',
  ];

  test.each(machines)('%s has three to five lines, the manual last', (machine) => {
    for (const units of ['inch', 'mm'] as const) {
      const lines = cautionsAt(machine, units);
      expect(lines.length).toBeGreaterThanOrEqual(3);
      expect(lines.length).toBeLessThanOrEqual(5);
      expect(lines.at(-1)).toMatch(/manual and local rules come first/);
    }
  });

  test('a hand-held plunge has no starting pin, a drill press no band saw', () => {
    expect(cautionsAt('plunge-router', 'mm').join(' ')).not.toMatch(/starting pin/);
    expect(cautionsAt('drill-press', 'mm').join(' ')).not.toMatch(/band saw/);
    expect(cautionsAt('drill-a-round', 'mm').join(' ')).not.toMatch(/band saw/);
  });

  test('hands are kept away by a distance in the units of the piece', () => {
    expect(cautionsAt('carrier', 'inch').join(' ')).toContain('Hands 6″ (150 mm)');
    expect(cautionsAt('carrier', 'mm').join(' ')).toContain('Hands 150 mm (6″)');
    expect(cautionsAt('join', 'mm').join(' ')).toContain('Hands 100 mm (4″)');
  });

  test('a machine that is named twice has its short line once', () => {
    expect(shortCautionsAt(['join', 'hand-router', 'join'], 'mm')).toHaveLength(2);
  });
});
