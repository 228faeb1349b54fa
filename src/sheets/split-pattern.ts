import type { Drawing, Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import type { PageFrame } from './page-frame.js';
import { planTiles } from './plan-tiles.js';
import { numberedFrom } from './tile-place.js';
import { seamsOf, tilesByPlace } from './seam-lines.js';
import { cutItems } from './tile-ink.js';
import { seamItems } from './tile-marks.js';

/** A piece of a pattern, in the pattern's own millimetres. */
export interface PatternPiece {
  readonly name: string;
  readonly items: readonly Item[];
}

/** Cuts a pattern that no page can hold into pieces of at most `room`, with seams and marks as between sheets. */
export const splitPattern = (drawing: Drawing, room: { readonly width: number; readonly height: number }, font: Font): PatternPiece[] => {
  const area = { x0: 0, y0: 0, x1: room.width, y1: room.height };
  const frame: PageFrame = { ...room, landscape: false, live: area, area, strip: area, side: area };
  const plan = planTiles({ drawing, frame, correction: { x: 1, y: 1 }, overlap: 12 }, font);
  const tiles = tilesByPlace(plan);
  const codeOf = numberedFrom(plan.tiles, 1);
  return plan.tiles.map((tile) => ({
    name: `part ${codeOf(tile)}`,
    items: [...cutItems(plan.cut, tile.ink, tile.window), ...seamItems(seamsOf(plan, tiles, tile), tile, plan, { codeOf, called: 'part', font })],
  }));
};
