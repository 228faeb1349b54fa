import type { Item } from '../drawing/drawing.js';
import { moveItems } from '../drawing/items.js';
import type { GridTile } from './tile-grid.js';
import type { CodeOf } from './tile-marks.js';

/** Moves items, the windows that clip lettering along with them. */
export const carry = (items: readonly Item[], x: number, y: number): Item[] => moveItems(items, x, y).map((item) =>
  (item.kind === 'lettering' && item.clip !== undefined
    ? { ...item, clip: { x0: item.clip.x0 + x, y0: item.clip.y0 + y, x1: item.clip.x1 + x, y1: item.clip.y1 + y } }
    : item));

/** The numbers of a drawing’s sheets in the set, in their order, from that of the first. */
export const numberedFrom = (tiles: readonly GridTile[], first: number): CodeOf => {
  const numbers = new Map(tiles.map((tile, i) => [tile, String(first + i)]));
  return (tile) => numbers.get(tile)!;
};
