import { registrationReach } from '../drawing/registration-mark.js';
import type { Point } from '../geometry/point.js';
import type { GridTile } from './tile-grid.js';
import type { TilePlan } from './plan-tiles.js';

/** A seam between two printed sheets, mm as printed. `first` (left or above) is trimmed along it and laid over `second`. */
export interface Seam {
  /** `x`: the seam runs up and down, at this x. */
  readonly along: 'x' | 'y';
  readonly at: number;
  readonly first: GridTile;
  readonly second: GridTile;
  /** Where both sheets see it. */
  readonly from: number;
  readonly to: number;
  readonly marks: readonly [Point, Point];
}

const clearance = 0.5;

/**
 * The two places on a seam furthest apart where a whole mark is on both sheets and outside every other overlap, so that
 * marks of different seams never meet where four sheets do.
 */
const markPlaces = (plan: TilePlan, along: 'x' | 'y', at: number, tile: GridTile): [Point, Point] => {
  const x = along === 'x';
  const axis = x ? plan.grid.y : plan.grid.x;
  const number = x ? tile.row : tile.column;
  const half = axis.overlap / 2;
  const off = registrationReach + clearance;
  const [low, high] = x ? [tile.window.y0, tile.window.y1] : [tile.window.x0, tile.window.x1];
  const from = number > 0 ? low + 2 * half + off : low + off;
  const to = number < axis.seams.length ? high - 2 * half - off : high - off;
  return x ? [{ x: at, y: from }, { x: at, y: to }] : [{ x: from, y: at }, { x: to, y: at }];
};

const seamOf = (plan: TilePlan, along: 'x' | 'y', first: GridTile, second: GridTile): Seam => {
  const at = along === 'x' ? first.core.x1 : first.core.y1;
  const [from, to] = along === 'x' ? [first.window.y0, first.window.y1] : [first.window.x0, first.window.x1];
  return { along, at, first, second, from, to, marks: markPlaces(plan, along, at, first) };
};

/** Place of a tile in its grid, as a key. */
export const placeKey = (row: number, column: number): string => `${row},${column}`;

/** Printed tiles by their place. */
export const tilesByPlace = (plan: TilePlan): ReadonlyMap<string, GridTile> =>
  new Map(plan.tiles.map((t) => [placeKey(t.row, t.column), t]));

/** The seams at a sheet's edges, in the order left, above, right, below. */
export const seamsOf = (plan: TilePlan, tiles: ReadonlyMap<string, GridTile>, tile: GridTile): Seam[] => {
  const at = (row: number, column: number): GridTile | undefined => tiles.get(placeKey(row, column));
  const [left, above] = [at(tile.row, tile.column - 1), at(tile.row - 1, tile.column)];
  const [right, below] = [at(tile.row, tile.column + 1), at(tile.row + 1, tile.column)];
  return [
    ...(left === undefined ? [] : [seamOf(plan, 'x', left, tile)]),
    ...(above === undefined ? [] : [seamOf(plan, 'y', above, tile)]),
    ...(right === undefined ? [] : [seamOf(plan, 'x', tile, right)]),
    ...(below === undefined ? [] : [seamOf(plan, 'y', tile, below)]),
  ];
};
