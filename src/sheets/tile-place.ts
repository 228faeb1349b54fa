import type { GridTile } from './tile-grid.js';
import type { CodeOf } from './tile-marks.js';

/** The numbers of a drawing’s sheets in the set, in their order, from that of the first. */
export const numberedFrom = (tiles: readonly GridTile[], first: number): CodeOf => {
  const numbers = new Map(tiles.map((tile, i) => [tile, String(first + i)]));
  return (tile) => numbers.get(tile)!;
};
