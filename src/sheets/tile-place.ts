import type { Item } from '../drawing/drawing.js';
import { moveItems } from '../drawing/items.js';
import { rowLetters } from './row-letters.js';
import type { GridTile } from './tile-grid.js';
import type { CodeOf } from './tile-marks.js';

/** Moves items, the windows that clip lettering along with them. */
export const carry = (items: readonly Item[], x: number, y: number): Item[] => moveItems(items, x, y).map((item) =>
  (item.kind === 'lettering' && item.clip !== undefined
    ? { ...item, clip: { x0: item.clip.x0 + x, y0: item.clip.y0 + y, x1: item.clip.x1 + x, y1: item.clip.y1 + y } }
    : item));

/** Codes of row letter and column number, counted from the first printed row and column. */
export const rowAndColumn = (tiles: readonly GridTile[], prefix = ''): CodeOf => {
  const row = tiles.reduce((least, t) => Math.min(least, t.row), Infinity);
  const column = tiles.reduce((least, t) => Math.min(least, t.column), Infinity);
  return (t) => `${prefix}${rowLetters(t.row - row)}${t.column - column + 1}`;
};
