import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds, shownBounds } from '../drawing/item-bounds.js';
import { boxHeight, boxWidth, type Box } from '../geometry/box.js';
import type { LayoutRequest } from './layout-request.js';
import { captionsOf, isUpright } from './length-captions.js';
import { areaInset, type PageFrame } from './page-frame.js';
import type { SmallPattern } from './packed-sheets.js';
import { planTiles } from './plan-tiles.js';
import { seamsOf } from './seam-lines.js';
import type { LargePattern } from './set-pages.js';
import type { GridTile } from './tile-grid.js';
import { cutItems } from './tile-ink.js';
import { datumMark, seamItems } from './tile-marks.js';
import { tiledDrawing, type TiledDrawing } from './tile-sheet.js';

// A narrow strip that is longer than a sheet would leave most of each of its sheets bare. It is cut into lengths instead, which are
// packed like other patterns: each with the seams, marks and stations that a sheet of its own would have.

/** A strip cut into lengths, numbered by themselves from 1. */
export interface CutStrip {
  readonly tiled: TiledDrawing;
  readonly pieces: readonly SmallPattern[];
}

/** A strip takes at most this share of a sheet's shorter side, so that two lengths lie beside each other. */
const mostShare = 0.5;
/** Two registration marks a seam need this much of it, mm. */
const leastSeam = 30;

/** Ink at a cut reaches half a pen's width over it on either side, mm. */
const penWidth = 1;

/** The room of all frames allowed, the shorter and the longer side, mm of the drawing: what a length may be whatever the paper's turn. */
const roomOf = (
  frames: readonly PageFrame[],
  { x, y }: LayoutRequest['correction'],
): { readonly short: number; readonly long: number } => {
  const sides = frames.map(
    ({ area }) =>
      [boxWidth(area) - 2 * areaInset, boxHeight(area) - 2 * areaInset].sort((a, b) => a - b) as [number, number],
  );
  const smaller = Math.min(x, y);
  // A pen's width more than the window is what a piece takes.
  return {
    short: smaller * Math.min(...sides.map(([short]) => short)),
    long: smaller * Math.min(...sides.map(([, long]) => long)) - penWidth,
  };
};

/** A frame that is nothing but room. */
const bareFrame = (width: number, height: number): PageFrame => {
  const area = { x0: -areaInset, y0: -areaInset, x1: width + areaInset, y1: height + areaInset };
  return { width, height, landscape: false, live: area, area, strip: area, side: area };
};

/** What a length shows of the strip, with all that joins it to the others. The marks carry the strip’s name: several strips may share a sheet. */
const drawnOn = (tiled: TiledDrawing, tile: GridTile, font: Font): Item[] => {
  const { plan, codeOf, tiles } = tiled;
  const marks = seamItems(seamsOf(plan, tiles, tile), tile, plan, { codeOf, called: 'length', font }).map((item) =>
    item.part?.startsWith('registration-') === true
      ? { ...item, part: item.part.replace('registration-', `registration-${plan.drawing.name}-`) }
      : item,
  );
  return [...cutItems(plan.cut, tile.ink, tile.window), ...marks, ...datumMark(plan, tile, font)];
};

/** The lengths of a cut strip as patterns to be packed. */
const piecesOf = (tiled: TiledDrawing, request: LayoutRequest, font: Font): SmallPattern[] => {
  const { jig, plan, codeOf } = tiled;
  const drawn = plan.tiles.map((tile) => drawnOn(tiled, tile, font));
  const captions = captionsOf(
    tiled,
    drawn.map((items) => shownBounds(items, font)),
    request,
    { font, upright: isUpright(plan) },
  );
  return plan.tiles.map((tile, i) => {
    const items = [...drawn[i]!, ...captions[i]!];
    const drawing = { ...plan.drawing, title: `${plan.drawing.title}, length ${codeOf(tile)}` };
    return { jig, drawing, of: plan.drawing.title, items, bounds: shownBounds(items, font) };
  });
};

/** Whether a drawing is a strip that two lengths of lie beside each other on a sheet; mm of the drawing. */
const isStrip = (bounds: Box, room: { readonly short: number; readonly long: number }): boolean => {
  const [narrow, long] = [boxWidth(bounds), boxHeight(bounds)].sort((a, b) => a - b) as [number, number];
  return narrow <= mostShare * room.short && long > room.long;
};

/**
 * Cuts a strip that no sheet holds into lengths, as long as every turn of the paper allowed holds; undefined where a drawing is no such strip, or should stay whole.
 * In true millimetres: they are corrected for the printer as they are packed.
 */
export const cutIntoLengths = (
  { jig, drawing }: LargePattern,
  frames: readonly PageFrame[],
  request: LayoutRequest,
  font: Font,
): CutStrip | undefined => {
  const bounds = itemsBounds(drawing.items, font);
  const room = roomOf(frames, request.correction);
  if (drawing.whole || !isStrip(bounds, room)) return undefined;
  const upright = boxHeight(bounds) > boxWidth(bounds);
  const across = Math.max(leastSeam, upright ? boxWidth(bounds) : boxHeight(bounds));
  const frame = upright ? bareFrame(across, room.long) : bareFrame(room.long, across);
  const plan = planTiles({ drawing, frame, correction: { x: 1, y: 1 }, overlap: request.wishes.overlap }, font);
  const tiled = tiledDrawing({ jig, plan }, 1);
  return { tiled, pieces: piecesOf(tiled, request, font) };
};
