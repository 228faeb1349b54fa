import { leastCore, longestCores, type Reach, type Span } from './axis.js';
import type { InkMap } from './ink-map.js';
import type { SeamWishes } from './seam-zones.js';

/**
 * In this order and hardly traded against each other: sheets, cuts through what must stay whole, seams near it, cuts through
 * lettering, seams outside lands, seams.
 */
const weight = { sheet: 1e10, cut: 1e6, near: 2e4, lettering: 1e4, outsideLand: 20, seam: 1, uneven: 0.01 } as const;

/** Adds one to every border strictly inside, or with `edges` in or on the ends of, each span. */
const covered = (spans: readonly Span[], origin: number, cell: number, of: { count: number; edges: boolean }): Int32Array => {
  const hits = new Int32Array(of.count + 1);
  for (const { from, to } of spans) {
    const [low, high] = [(from - origin) / cell, (to - origin) / cell];
    const first = Math.max(0, of.edges ? Math.ceil(low - 1e-9) : Math.floor(low + 1e-9) + 1);
    const last = Math.min(of.count, of.edges ? Math.floor(high + 1e-9) : Math.ceil(high - 1e-9) - 1);
    for (let k = first; k <= last; k++) hits[k]!++;
  }
  return hits;
};

/** Cost of a seam at each cell border of one axis, of `count` cells. */
export const seamCosts = (wishes: SeamWishes, origin: number, cell: number, count: number): Float64Array => {
  const cuts = covered(wishes.keepClear, origin, cell, { count, edges: false });
  const near = covered(wishes.near, origin, cell, { count, edges: false });
  const letters = covered(wishes.lettering, origin, cell, { count, edges: false });
  const inLand = covered(wishes.lands, origin, cell, { count, edges: true });
  return Float64Array.from(cuts, (cut, k) => weight.seam + cut * weight.cut + letters[k]! * weight.lettering + near[k]! * weight.near
    + (wishes.lands.length > 0 && inLand[k] === 0 ? weight.outsideLand : 0));
};

/** What the search along one axis needs to know. */
export interface AxisSearch {
  readonly map: InkMap;
  /** The direction cut by the seams that are sought. */
  readonly along: 'x' | 'y';
  /** Cell borders of the other direction, ends among them. */
  readonly across: readonly number[];
  readonly costs: Float64Array;
  readonly reach: Reach;
  /** Count a sheet only for ink that no neighbour's overlap shows; a guess, since the neighbour may not be printed. */
  readonly lean: boolean;
}

/** Seams as cell borders, ends among them, and what they cost together. */
export interface SeamsFound {
  readonly borders: readonly number[];
  readonly cost: number;
}

/** Half an overlap in whole cells: so far into a core the neighbour beyond an inner border sees too. */
const seenCells = ({ map, reach, lean }: AxisSearch, side: 'x' | 'y'): number =>
  (lean ? Math.floor(reach.overlap / 2 / map.cell[side] + 1e-9) : 0);

/** Inked cells before each border along x, between rows c and d; or along y, between columns c and d. */
const runningInk = ({ map, along }: AxisSearch, c: number, d: number, count: number): Int32Array => {
  const { sums } = map;
  const wide = map.columns + 1;
  const ink = new Int32Array(count + 1);
  if (d <= c) return ink;
  const [step, low, high] = along === 'x' ? [1, c * wide, d * wide] : [wide, c, d];
  for (let k = 1; k <= count; k++) ink[k] = sums[high + k * step]! - sums[low + k * step]!;
  return ink;
};

/** For each band across, less what its neighbours see, the inked cells before each cell border along. */
const bandSums = (search: AxisSearch, count: number): Int32Array[] => {
  const { along, across } = search;
  const seen = seenCells(search, along === 'x' ? 'y' : 'x');
  return across.slice(1).map((to, j) =>
    runningInk(search, j === 0 ? 0 : across[j]! + seen, j === across.length - 2 ? to : to - seen, count));
};

/** Core lengths in cells: the last seam may stand no earlier than `lastFrom`. */
interface Limits { readonly first: number; readonly inner: number; readonly lastFrom: number; readonly least: number }

const limits = ({ map, along, reach }: AxisSearch): Limits => {
  const cell = map.cell[along];
  const most = longestCores(reach);
  return {
    first: Math.floor(most.outer / cell + 1e-9),
    inner: Math.floor(most.inner / cell + 1e-9),
    lastFrom: Math.ceil((map.extent[along] - most.outer) / cell - 1e-9),
    least: Math.ceil(leastCore(reach) / cell),
  };
};

/** The borders that a core ending at `b` may start from, the first and the last of them. */
const starts = (b: number, count: number, limit: Limits): [number, number] => {
  if (b === count) return [Math.max(1, limit.lastFrom), b - limit.least];
  return [b <= limit.first ? 0 : b - limit.inner, b - limit.least];
};

/**
 * The seams along one axis of least cost for given seams across it, by dynamic programming over all cell borders: exact on
 * the raster. Cores may be of any length up to the step.
 */
export const searchAxis = (search: AxisSearch): SeamsFound => {
  const count = search.along === 'x' ? search.map.columns : search.map.rows;
  const bands = bandSums(search, count);
  const seen = seenCells(search, search.along);
  const sheets = (a: number, b: number): number => {
    const [from, to] = [a === 0 ? a : a + seen, b === count ? b : b - seen];
    let n = 0;
    for (const band of bands) if (band[to]! > band[from]!) n++;
    return n;
  };
  if (search.map.extent[search.along] <= search.reach.window) return { borders: [0, count], cost: sheets(0, count) * weight.sheet };
  const limit = limits(search);
  const best = new Float64Array(count + 1).fill(Infinity);
  const cameFrom = new Int32Array(count + 1).fill(-1);
  best[0] = 0;
  for (let b = 1; b <= count; b++) {
    const at = b < count ? search.costs[b]! : 0;
    const [from, to] = starts(b, count, limit);
    for (let a = from; a <= to; a++) {
      if (a > 0 && b < count && b - a > limit.inner) continue;
      const length = (b - a) / limit.inner;
      const before = best[a]! + at + length * length * weight.uneven;
      if (before >= best[b]!) continue;
      const cost = before + sheets(a, b) * weight.sheet;
      if (cost < best[b]!) { best[b] = cost; cameFrom[b] = a; }
    }
  }
  return { borders: trace(cameFrom, count), cost: best[count]! };
};

const trace = (cameFrom: Int32Array, count: number): number[] => {
  const borders = [count];
  while (borders[0]! > 0) borders.unshift(cameFrom[borders[0]!]!);
  return borders;
};
