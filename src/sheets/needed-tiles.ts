import type { Font } from '../drawing/font.js';
import { hasInk, inkedTiles, ownBox, type Grid, type GridTile, type Shared } from './tile-grid.js';
import type { Cutter } from './tile-ink.js';

const key = (row: number, column: number): string => `${row},${column}`;

const beside = ({ row, column }: { row: number; column: number }): string[] =>
  [key(row, column - 1), key(row, column + 1), key(row - 1, column), key(row + 1, column)];

/** How many groups of sheets there are that no seam joins to the others. */
export const groupCount = (tiles: readonly { readonly row: number; readonly column: number }[]): number => {
  const left = new Map(tiles.map((t) => [key(t.row, t.column), t]));
  let groups = 0;
  for (const start of tiles) {
    if (!left.delete(key(start.row, start.column))) continue;
    groups++;
    const open = [start];
    for (let t = open.pop(); t !== undefined; t = open.pop()) {
      for (const at of beside(t)) {
        const next = left.get(at);
        if (next === undefined) continue;
        left.delete(at);
        open.push(next);
      }
    }
  }
  return groups;
};

/** What the printed neighbours of a sheet also see of its own part. */
const seenBy = (printed: ReadonlyMap<string, GridTile>, { row, column }: GridTile, grid: Grid): Shared => {
  const [halfX, halfY] = [grid.x.overlap / 2, grid.y.overlap / 2];
  const share = (r: number, c: number, half: number): number => (printed.has(key(r, c)) ? half : 0);
  return {
    left: share(row, column - 1, halfX), right: share(row, column + 1, halfX),
    above: share(row - 1, column, halfY), below: share(row + 1, column, halfY),
  };
};

/**
 * As few of the sheets of a grid as show all the ink and hang together by seams no worse than all those with ink do: one
 * whose ink also lies in the overlaps that its printed neighbours show is left out. Nothing is cut off at a seam to a sheet
 * that is not printed, so that ink stays. Exact: by clipping.
 */
export const neededTiles = (cut: Cutter, grid: Grid, font: Font): GridTile[] => {
  const inked = inkedTiles(cut, grid, font);
  const printed = new Map(inked.map((t) => [key(t.row, t.column), t]));
  const dropped = new Map<string, GridTile>();
  const isBare = (tile: GridTile): boolean => hasInk(cut, tile, ownBox(tile, seenBy(printed, tile, grid)), font);
  let groups = groupCount(inked);
  for (const tile of inked) {
    const at = key(tile.row, tile.column);
    if (isBare(tile)) continue;
    printed.delete(at);
    const leaning = beside(tile).flatMap((k) => dropped.get(k) ?? []);
    const now = groupCount([...printed.values()]);
    if (now > groups || [tile, ...leaning].some(isBare)) printed.set(at, tile);
    else {
      dropped.set(at, tile);
      groups = now;
    }
  }
  return inked.filter((t) => printed.has(key(t.row, t.column)));
};
