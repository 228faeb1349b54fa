import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds, shownBounds } from '../drawing/item-bounds.js';
import { moveItems, turnItems } from '../drawing/items.js';
import { textBlock } from '../drawing/text-block.js';
import { boxHeight, boxWidth, growBox, type Box } from '../geometry/box.js';
import { point, type Point } from '../geometry/point.js';
import { lengthLabel } from '../units/format.js';
import { isClear } from './ink-map.js';
import type { LayoutRequest } from './layout-request.js';
import { areaInset, type PageFrame } from './page-frame.js';
import type { SmallPattern } from './packed-sheets.js';
import { planTiles, type TilePlan } from './plan-tiles.js';
import { seamsOf } from './seam-lines.js';
import type { LargePattern } from './set-pages.js';
import { patternWords } from './strip-words.js';
import type { GridTile } from './tile-grid.js';
import { cutItems } from './tile-ink.js';
import { datumMark, seamItems } from './tile-marks.js';
import { leftWords, seamWords, tiledDrawing, topWords, type TiledDrawing } from './tile-sheet.js';

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
const roomOf = (frames: readonly PageFrame[], { x, y }: LayoutRequest['correction']): { readonly short: number; readonly long: number } => {
  const sides = frames.map(({ area }) => [boxWidth(area) - 2 * areaInset, boxHeight(area) - 2 * areaInset].sort((a, b) => a - b) as [number, number]);
  const smaller = Math.min(x, y);
  // A pen's width more than the window is what a piece takes.
  return { short: smaller * Math.min(...sides.map(([short]) => short)), long: smaller * Math.min(...sides.map(([, long]) => long)) - penWidth };
};

/** A frame that is nothing but room. */
const bareFrame = (width: number, height: number): PageFrame => {
  const area = { x0: -areaInset, y0: -areaInset, x1: width + areaInset, y1: height + areaInset };
  return { width, height, landscape: false, live: area, area, strip: area, side: area };
};

/** Whether a strip runs up and down. */
const isUpright = ({ grid }: TilePlan): boolean => grid.x.seams.length === 0;

/** What a length says of itself: what it is, where it begins, what it joins. */
const wordsOf = (tiled: TiledDrawing, tile: GridTile, request: LayoutRequest): string[] => {
  const { jig, plan, codeOf, tiles } = tiled;
  return [
    `${patternWords(jig, plan.drawing)}, length ${codeOf(tile)} of ${plan.tiles.length}`,
    `${(isUpright(plan) ? topWords : leftWords)(plan, tile, request.units)}; overlap ${lengthLabel(request.wishes.overlap, request.units)}.`,
    seamWords(seamsOf(plan, tiles, tile), tile, { codeOf, called: 'length' }),
  ];
};

/** Where words may stand: their items about a first corner, and their box there. */
interface Caption {
  readonly items: readonly Item[];
  readonly box: Box;
}

/** The words of a length in lines of a width, upwards beside a strip that runs up and down. */
const captionOf = (paragraphs: readonly string[], width: number, of: { font: Font; upright: boolean }): Caption => {
  const { items } = textBlock({ at: point(0, 0), width, paragraphs, between: 0 }, of.font);
  const set = turnItems(items, of.upright ? -Math.PI / 2 : 0).map((item) => ({ ...item, part: 'length-words' }));
  return { items: set, box: growBox(itemsBounds(set, of.font), captionGap) };
};

/** Clear paper round a length's words, and how finely a place is sought for them; mm. */
const captionGap = 0.5;
const captionStep = 1;

/** Corners where a box fits into a room, row by row. */
function* cornersIn(room: Box, box: Box): Iterable<Point> {
  for (let y = room.y0; y + boxHeight(box) <= room.y1; y += captionStep) {
    for (let x = room.x0; x + boxWidth(box) <= room.x1; x += captionStep) yield point(x, y);
  }
}

/** The words where they lie on no ink and on no mark: on the length itself where it has the room, else beside it. */
const placedCaption = (tile: GridTile, plan: TilePlan, paragraphs: readonly string[], of: { font: Font; upright: boolean; ink: Box }): Item[] => {
  const [alongX, alongY] = of.upright ? [0, -plan.grid.y.overlap] : [-plan.grid.x.overlap, 0];
  const { core, window } = tile;
  const room = { x0: core.x0 - alongX, x1: core.x1 + alongX, y0: core.y0 - alongY, y1: core.y1 + alongY };
  for (const width of [160, 110, 80, 60]) {
    const { items, box } = captionOf(paragraphs, width, of);
    for (const at of cornersIn(room, box)) {
      const there = { x0: at.x, y0: at.y, x1: at.x + boxWidth(box), y1: at.y + boxHeight(box) };
      if (isClear(plan.map, there)) return moveItems(items, at.x - box.x0, at.y - box.y0);
    }
  }
  const { items, box } = captionOf(paragraphs, of.upright ? boxHeight(window) : boxWidth(window), of);
  return of.upright ? moveItems(items, of.ink.x0 - box.x1, of.ink.y1 - box.y1) : moveItems(items, of.ink.x0 - box.x0, of.ink.y0 - box.y1);
};

/** A length with all that joins it to the others. The marks carry the strip’s name: several strips may share a sheet. */
const pieceOf = (tiled: TiledDrawing, tile: GridTile, request: LayoutRequest, font: Font): SmallPattern => {
  const { jig, plan, codeOf, tiles } = tiled;
  const upright = isUpright(plan);
  const drawn = [
    ...cutItems(plan.cut, tile.ink, tile.window),
    ...seamItems(seamsOf(plan, tiles, tile), tile, plan, { codeOf, called: 'length', font }),
    ...datumMark(plan, tile, font),
  ].map((item) => (item.part?.startsWith('registration-') === true ? { ...item, part: item.part.replace('registration-', `registration-${plan.drawing.name}-`) } : item));
  const ink = shownBounds(drawn, font);
  const items = [...drawn, ...placedCaption(tile, plan, wordsOf(tiled, tile, request), { font, upright, ink })];
  const title = `${plan.drawing.title}, length ${codeOf(tile)}`;
  return { jig, drawing: { ...plan.drawing, title }, of: plan.drawing.title, items, bounds: shownBounds(items, font) };
};

/** Whether a drawing is a strip that two lengths of lie beside each other on a sheet; mm of the drawing. */
const isStrip = (bounds: Box, room: { readonly short: number; readonly long: number }): boolean => {
  const [narrow, long] = [boxWidth(bounds), boxHeight(bounds)].sort((a, b) => a - b) as [number, number];
  return narrow <= mostShare * room.short && long > room.long;
};

/**
 * Cuts a strip that no sheet holds into lengths, as long as every turn of the paper allowed holds; undefined where a drawing is no such strip.
 * In true millimetres: they are corrected for the printer as they are packed.
 */
export const cutIntoLengths = ({ jig, drawing }: LargePattern, frames: readonly PageFrame[], request: LayoutRequest, font: Font): CutStrip | undefined => {
  const bounds = itemsBounds(drawing.items, font);
  const room = roomOf(frames, request.correction);
  if (!isStrip(bounds, room)) return undefined;
  const upright = boxHeight(bounds) > boxWidth(bounds);
  const across = Math.max(leastSeam, upright ? boxWidth(bounds) : boxHeight(bounds));
  const frame = upright ? bareFrame(across, room.long) : bareFrame(room.long, across);
  const plan = planTiles({ drawing, frame, correction: { x: 1, y: 1 }, overlap: request.wishes.overlap }, font);
  const tiled = tiledDrawing({ jig, plan }, 1);
  return { tiled, pieces: plan.tiles.map((tile) => pieceOf(tiled, tile, request, font)) };
};
