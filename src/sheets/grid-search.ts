import type { Reach } from './axis.js';
import type { InkMap } from './ink-map.js';
import { searchAxis, type SeamsFound } from './seam-search.js';

/** What the search of a grid needs to know. */
export interface GridSearch {
  readonly map: InkMap;
  readonly reach: { readonly x: Reach; readonly y: Reach };
  readonly costs: { readonly x: Float64Array; readonly y: Float64Array };
  readonly lean: boolean;
  /** Seams that are given, as cell borders with the ends; the search leaves them alone. */
  readonly fixed: { readonly x?: readonly number[]; readonly y?: readonly number[] };
}

/** Seams both ways as cell borders, ends among them, and their cost. */
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

/** Whether one sheet holds the drawing in a direction: then there are no seams to seek there, and one start does. */
const isSingle = (search: GridSearch, side: Side): boolean => search.map.extent[side] <= search.reach[side].window;

/** Seams across from which the search of one direction starts. */
const startsFor = (search: GridSearch, side: Side): (readonly number[])[] => {
  const across = other(side);
  const { count, step } = cellsOf(search, across);
  const given = search.fixed[across];
  if (given !== undefined) return [given];
  if (isSingle(search, across)) return [[0, count]];
  if (isSingle(search, side)) return [];
  return Array.from({ length: phases }, (_, p) => evenBorders(count, step, Math.round((p * step) / phases)));
};

/** So many of the best grids are handed on, for the raster only guesses how many sheets hold ink. */
const handedOn = 3;

/** The cheapest few, no two alike. */
const cheapest = (found: readonly GridFound[]): GridFound[] => {
  const distinct = new Map([...found].sort((a, b) => b.cost - a.cost).map((f) => [`${f.x.join(' ')}/${f.y.join(' ')}`, f]));
  return [...distinct.values()].reverse().slice(0, handedOn);
};

/**
 * Seams both ways of least cost, the best first: starts from the phases of the even grid in x and in y, and from each lets the seams of
 * one direction and the other find their best in turn. Exact along either axis, not over both at once.
 */
export const searchGrid = (search: GridSearch): GridFound[] => {
  const { x, y } = search.fixed;
  // Nothing to choose between.
  if (x !== undefined && y !== undefined) return [{ x, y, cost: 0 }];
  const improve = improver(search);
  const found = (['x', 'y'] as const).filter((side) => search.fixed[side] === undefined)
    .flatMap((side) => startsFor(search, side).map((start) => settle(search, improve, side, start)));
  return cheapest(found);
};
