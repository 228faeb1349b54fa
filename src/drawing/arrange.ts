import { moveItems } from './items.js';
import { itemsBounds } from './item-bounds.js';
import type { Drawing, Item } from './drawing.js';
import type { Font } from './font.js';
import { point } from '../geometry/point.js';

/** Views of one picture in a row, tops level, `gap` mm apart; empty ones take no room. */
export function besideEachOther(views: readonly (readonly Item[])[], gap: number, font: Font): readonly Item[] {
  let x = 0;
  return views.filter((view) => view.length > 0).flatMap((view) => {
    const box = itemsBounds(view, font);
    const moved = moveItems(view, x - box.x0, -box.y0);
    x += box.x1 - box.x0 + gap;
    return moved;
  });
}

/** Rows of views under each other, left edges in line, `gap` mm apart; empty ones take no room. */
export function underEachOther(rows: readonly (readonly Item[])[], gap: number, font: Font): readonly Item[] {
  let y = 0;
  return rows.filter((row) => row.length > 0).flatMap((row) => {
    const box = itemsBounds(row, font);
    const moved = moveItems(row, -box.x0, y - box.y0);
    y += box.y1 - box.y0 + gap;
    return moved;
  });
}

/** Items as a picture for a set-up page: no datum, nothing to keep clear, never cut. */
export function pictureOf(name: string, title: string, items: readonly Item[]): Drawing {
  return { name, title, items, whole: true, spine: false, datum: point(0, 0), keepClear: [], lands: [] };
}
