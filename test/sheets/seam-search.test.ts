import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shape } from '../../src/drawing/items.js';
import { point } from '../../src/geometry/point.js';
import { circle, line } from '../../src/geometry/shapes.js';
import type { Grid } from '../../src/sheets/tile-grid.js';
import { indexInk } from '../../src/sheets/ink-index.js';
import { inkIn, inkMap, type InkMap } from '../../src/sheets/ink-map.js';
import { searchAxis, seamCosts, type AxisSearch } from '../../src/sheets/seam-search.js';
import { seamTally, seamWishes, type SeamWishes } from '../../src/sheets/seam-zones.js';
import { testFont } from '../support/font.js';

const none: SeamWishes = { keepClear: [], near: [], lettering: [], lands: [] };
const zone = (x0: number, y0: number, x1: number, y1: number) => ({ box: { x0, y0, x1, y1 }, why: 'test' });

describe('seamWishes', () => {
  const zones = { keepClear: [zone(10, 100, 30, 140)], lettering: [zone(50, 7, 60, 9)], lands: [zone(70, 1, 80, 3)], spine: 200 };
  it('are the zones of one coordinate, with 8 mm of room about what must stay whole; the spine’s on y alone', () => {
    expect(seamWishes(zones, 'x')).toEqual({ keepClear: [{ from: 10, to: 30 }], near: [{ from: 2, to: 38 }], lettering: [{ from: 50, to: 60 }], lands: [{ from: 70, to: 80 }] });
    expect(seamWishes(zones, 'y')).toEqual({ keepClear: [{ from: 100, to: 140 }, { from: 192, to: 208 }], near: [{ from: 92, to: 148 }], lettering: [{ from: 7, to: 9 }], lands: [{ from: 1, to: 3 }] });
    const { spine: _, ...bare } = zones;
    expect(seamWishes(bare, 'y').keepClear).toEqual([{ from: 100, to: 140 }]);
  });
});

describe('seamTally', () => {
  const grid = (x: readonly number[], y: readonly number[]): Grid => ({ x: { window: 1, overlap: 0, extent: { from: 0, to: 1 }, seams: x }, y: { window: 1, overlap: 0, extent: { from: 0, to: 1 }, seams: y } });
  const wishes = { x: { keepClear: [{ from: 10, to: 20 }, { from: 15, to: 40 }], near: [{ from: 2, to: 28 }], lettering: [{ from: 18, to: 19 }], lands: [{ from: 50, to: 60 }] }, y: none };
  const tally = (x: readonly number[], y: readonly number[] = []) => seamTally(grid(x, y), wishes);

  it('counts each zone once for every seam that runs in it, not along its border', () => {
    expect(tally([15.5])).toMatchObject({ cuts: 2, closeSeams: 1, letteringCuts: 0 });
    expect(tally([10, 20, 40])).toMatchObject({ cuts: 1, closeSeams: 2, letteringCuts: 0 });
    expect(tally([18.5, 16, 5])).toMatchObject({ cuts: 4, closeSeams: 3, letteringCuts: 1 });
    expect(tally([], [15, 18.5])).toEqual({ cuts: 0, closeSeams: 0, letteringCuts: 0, seamsOutsideLands: 0 });
  });
  it('counts seams outside all lands, where there are any; their borders are within', () => {
    expect([tally([49, 50, 55, 60, 61]).seamsOutsideLands, tally([26]).seamsOutsideLands, tally([100]).seamsOutsideLands]).toEqual([2, 1, 1]);
    expect(seamTally(grid([], [1, 2]), wishes).seamsOutsideLands).toBe(0);
  });
});

describe('seamCosts', () => {
  const at = (wishes: Partial<SeamWishes>): number[] => [...seamCosts({ ...none, ...wishes }, 100, 5, 8)];
  const spread = (value: number, from: number, to: number): number[] => Array.from({ length: 9 }, (_, k) => 1 + (k >= from && k <= to ? value : 0));
  it('weigh a cut, a near seam and lettering at the cell borders strictly inside', () => {
    // Borders at 100, 105 … 140.
    expect(at({})).toEqual(spread(0, 0, 8));
    expect(at({ keepClear: [{ from: 105, to: 120 }] })).toEqual(spread(1e6, 2, 3));
    expect(at({ keepClear: [{ from: 104, to: 121 }] })).toEqual(spread(1e6, 1, 4));
    expect(at({ near: [{ from: 0, to: 112 }] })).toEqual(spread(2e4, 0, 2));
    expect(at({ lettering: [{ from: 131, to: 900 }] })).toEqual(spread(1e4, 7, 8));
    expect(at({ keepClear: [{ from: 111, to: 114 }, { from: 0, to: 50 }] })).toEqual(spread(0, 0, 8));
    expect(at({ keepClear: [{ from: 104, to: 106 }, { from: 103, to: 107 }] })).toEqual(spread(2e6, 1, 1));
  });
  it('weigh what lies outside all lands, whose borders are within', () => {
    expect(at({ lands: [{ from: 105, to: 120 }] })).toEqual([21, 1, 1, 1, 1, 21, 21, 21, 21]);
    expect(at({ lands: [{ from: 0, to: 99 }] })).toEqual(spread(20, 0, 8));
  });
});

/** The cost of one core and of the seam at its end as the search counts it; Infinity where no sheet holds it. From the rules alone. */
const coreCost = ({ map, along, across, costs, reach, lean }: AxisSearch, count: number, a: number, b: number): number => {
  const [cell, cellAcross] = along === 'x' ? [map.cell.x, map.cell.y] : [map.cell.y, map.cell.x];
  const seen = lean ? Math.floor(reach.overlap / 2 / cell + 1e-9) : 0;
  const seenAcross = lean ? Math.floor(reach.overlap / 2 / cellAcross + 1e-9) : 0;
  const inner = Math.floor((reach.window - reach.overlap) / cell + 1e-9);
  const seams = Number(a > 0) + Number(b < count);
  const length = b === count ? map.extent[along] - a * cell : (b - a) * cell;
  if (length > reach.window - (seams * reach.overlap) / 2 + 1e-6 || (seams > 0 && (b - a) * cell < reach.overlap + 20 - 1e-6)) return Infinity;
  let sheets = 0;
  for (let j = 1; j < across.length; j++) {
    const [c, d] = [across[j - 1]! + (j === 1 ? 0 : seenAcross), across[j]! - (j === across.length - 1 ? 0 : seenAcross)];
    const [p, q] = [a + (a === 0 ? 0 : seen), b - (b === count ? 0 : seen)];
    if (d > c && q > p && (along === 'x' ? inkIn(map, p, q, c, d) : inkIn(map, c, d, p, q)) > 0) sheets += 1;
  }
  return 1e10 * sheets + (seams > 0 ? 0.01 * ((b - a) / inner) ** 2 : 0) + (b < count ? costs[b]! : 0);
};

const costOf = (search: AxisSearch, borders: readonly number[]): number =>
  borders.slice(1).reduce((sum, b, i) => sum + coreCost(search, borders.at(-1)!, borders[i]!, b), 0);

/** The least cost of any seams from border `a` on, each core tried that a sheet holds. */
const leastFrom = (search: AxisSearch, count: number, a: number): number => {
  if (a === count) return 0;
  let least = Infinity;
  for (let b = a + 1; b <= count; b++) {
    const own = coreCost(search, count, a, b);
    if (own < Infinity) least = Math.min(least, own + leastFrom(search, count, b));
  }
  return least;
};

const mapWith = (seed: readonly number[], cell: number): InkMap => inkMap(indexInk([
  shape('edge', line(point(0, 0), point(6, 4))), shape('edge', line(point(240, 150), point(238, 149))),
  ...seed.map((value, i) => shape('edge', circle(point(15 + ((value * 37 + i * 53) % 210), 15 + ((value * 91 + i * 29) % 120)), 4 + (value % 9)))),
], testFont), point(cell, cell));

describe('searchAxis', () => {
  const any = fc.record({
    seed: fc.array(fc.nat(1000), { minLength: 1, maxLength: 5 }), along: fc.constantFrom('x' as const, 'y' as const), lean: fc.boolean(),
    window: fc.constantFrom(70, 95, 130, 300), overlap: fc.constantFrom(10, 24), bands: fc.constantFrom([0.4], [], [0.3, 0.7]), dear: fc.array(fc.nat(400), { minLength: 0, maxLength: 4 }),
  });

  it('finds seams that cost no more than any others, by trying them all', () => {
    let several = 0;
    fc.assert(fc.property(any, ({ seed, along, lean, window, overlap, bands, dear }) => {
      // On so coarse a raster a core must have some length at all.
      fc.pre(Math.ceil((overlap + 20) / 12) <= Math.floor((window - overlap) / 12));
      const map = mapWith(seed, 12);
      const [count, far] = along === 'x' ? [map.columns, map.rows] : [map.rows, map.columns];
      const wishes = { ...none, keepClear: dear.map((from) => ({ from: from % 250, to: (from % 250) + 20 })) };
      const search: AxisSearch = { map, along, lean, reach: { window, overlap }, across: [0, ...bands.map((part) => Math.round(part * far)), far], costs: seamCosts(wishes, map.origin[along], 12, count) };
      const found = searchAxis(search);
      expect(Math.abs(found.cost - costOf(search, found.borders))).toBeLessThan(1e-4);
      const least = leastFrom(search, count, 0);
      if (Number.isFinite(least)) expect(found.cost).toBeLessThanOrEqual(least + 1e-4);
      if (found.borders.length > 2) several++;
    }), { numRuns: 400, seed: 11 });
    expect(several).toBeGreaterThan(20);
  });
});
