import type { Reach } from './axis.js';
import type { InkMap } from './ink-map.js';
import { searchAxis, type SeamsFound } from './seam-search.js';

export interface GridSearch {
  readonly map: InkMap;
  readonly reach: { readonly x: Reach; readonly y: Reach };
  readonly costs: { readonly x: Float64Array; readonly y: Float64Array };
  readonly lean: boolean;
  /** Seams that are given, as cell borders with the ends; the search leaves them alone. */
  readonly fixed: { readonly x?: readonly number[]; readonly y?: readonly number[] };
}

export interface GridFound {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly cost: number;
}

type Side = 'x' | 'y';
const other = (side: Side): Side => (side === 'x' ? 'y' : 'x');

type Improve = (along: Side, across: readonly number[]) => SeamsFound;

/** Several starts settle on the same seams: each set is searched from once. */
const improver = (search: GridSearch): Improve => {
  const known = new Map<string, SeamsFound>();
  return (along, across) => {
    const key = `${along} ${across.join(' ')}`;
    const found = known.get(key)
      ?? searchAxis({ map: search.map, lean: search.lean, along, across, costs: search.costs[along], reach: search.reach[along] });
    known.set(key, found);
    return found;
  };
};

const costOf = (costs: Float64Array, borders: readonly number[]): number =>
  borders.slice(1, -1).reduce((sum, b) => sum + costs[b]!, 0);

/** Borders a step apart, the first after `phase` cells. */
const evenBorders = (count: number, step: number, phase: number): number[] => {
  const inner: number[] = [];
  for (let k = phase; k < count; k += step) if (k > 0) inner.push(k);
  return [0, ...inner, count];
};

const cellsOf = (search: GridSearch, side: Side): { count: number; step: number } => ({
  count: side === 'x' ? search.map.columns : search.map.rows,
  step: Math.floor((search.reach[side].window - search.reach[side].overlap) / search.map.cell[side] + 1e-9),
});

/** From seams across, finds seams along, then across again, for as long as it gets better. */
const settle = (search: GridSearch, improve: Improve, side: Side, start: readonly number[]): GridFound => {
  let across = start;
  let best: GridFound | undefined;
  for (let along: Side = side; ; along = other(along)) {
    const given = search.fixed[along];
    const found = given === undefined ? improve(along, across) : { borders: given, cost: Infinity };
    const cost = found.cost + costOf(search.costs[other(along)], across);
    if (best !== undefined && !(cost < best.cost)) return best;
    best = { x: along === 'x' ? found.borders : across, y: along === 'y' ? found.borders : across, cost };
    if (search.fixed[other(along)] !== undefined) return best;
    across = found.borders;
  }
};

const phases = 4;

/**
 * Seams both ways of least cost: starts from the phases of the even grid in x and in y, and from each lets the seams of
 * one direction and the other find their best in turn. Exact along either axis, not over both at once.
 */
export const searchGrid = (search: GridSearch): GridFound => {
  const starts: GridFound[] = [];
  const improve = improver(search);
  const { x, y } = search.fixed;
  if (x !== undefined && y !== undefined) return { x, y, cost: costOf(search.costs.x, x) + costOf(search.costs.y, y) };
  for (const side of ['x', 'y'] as const) {
    const across = other(side);
    const { count, step } = cellsOf(search, across);
    const given = search.fixed[across];
    if (search.fixed[side] !== undefined) continue;
    if (given !== undefined) starts.push(settle(search, improve, side, given));
    else for (let p = 0; p < phases; p++) starts.push(settle(search, improve, side, evenBorders(count, step, Math.round((p * step) / phases))));
  }
  return starts.reduce((a, b) => (b.cost < a.cost ? b : a));
};
