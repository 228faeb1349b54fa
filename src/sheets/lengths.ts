import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds, shownBounds } from '../drawing/item-bounds.js';
import { moveItems, turnItems } from '../drawing/items.js';
import { textBlock } from '../drawing/text-block.js';
import { boxesMeet, boxHeight, boxWidth, emptyBox, growBox, type Box } from '../geometry/box.js';
import { point, type Point } from '../geometry/point.js';
import { lengthLabel } from '../units/format.js';
import { closingDistances, closingWords } from './closing-distances.js';
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

/** What a tape shows once all is joined. The marks of a strip lie too near to each other for a diagonal to say anything. */
const wholeWords = (tiled: TiledDrawing, { units }: LayoutRequest): string[] =>
  closingDistances(tiled).slice(0, 1).map((distance) => `Once taped, check with a steel tape: ${closingWords(distance, units)}.`);

/** What a length says of itself: what it is, where it begins, what it joins. */
const wordsOf = (tiled: TiledDrawing, tile: GridTile, request: LayoutRequest): string[] => {
  const { jig, plan, codeOf, tiles } = tiled;
  return [
    `${patternWords(jig, plan.drawing)}, length ${codeOf(tile)} of ${plan.tiles.length}`,
    `${(isUpright(plan) ? topWords : leftWords)(plan, tile, request.units)}; overlap ${lengthLabel(request.wishes.overlap, request.units)}.`,
    seamWords(seamsOf(plan, tiles, tile), tile, { codeOf, called: 'length' }),
  ];
};

/** How the words of a strip are set. */
interface Hand {
  readonly font: Font;
  readonly upright: boolean;
}

/** Where words may stand: their items about a first corner, and their box there. */
interface Caption {
  readonly items: readonly Item[];
  readonly box: Box;
}

/** The words of a length in lines of a width, upwards beside a strip that runs up and down. */
const captionOf = (paragraphs: readonly string[], width: number, of: Hand): Caption => {
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

/** Words on a length itself, on no ink, off its seams and off other words; none where there is no such place. */
const onLength = (tile: GridTile, plan: TilePlan, paragraphs: readonly string[], of: Hand & { readonly taken: readonly Item[] }): Item[] => {
  const overlap = of.upright ? { x: 0, y: plan.grid.y.overlap } : { x: plan.grid.x.overlap, y: 0 };
  const { core } = tile;
  const room = { x0: core.x0 + overlap.x, x1: core.x1 - overlap.x, y0: core.y0 + overlap.y, y1: core.y1 - overlap.y };
  const taken = of.taken.length === 0 ? emptyBox : itemsBounds(of.taken, of.font);
  for (const width of [160, 110, 80, 60]) {
    const { items, box } = captionOf(paragraphs, width, of);
    for (const at of cornersIn(room, box)) {
      const there = { x0: at.x, y0: at.y, x1: at.x + boxWidth(box), y1: at.y + boxHeight(box) };
      if (!boxesMeet(there, taken) && isClear(plan.map, there)) return moveItems(items, at.x - box.x0, at.y - box.y0);
    }
  }
  return [];
};

/** Words beside a length: over it, or at the left of one that runs up and down. */
const besideLength = (window: Box, ink: Box, paragraphs: readonly string[], of: Hand): Item[] => {
  const { items, box } = captionOf(paragraphs, of.upright ? boxHeight(window) : boxWidth(window), of);
  return of.upright ? moveItems(items, ink.x0 - box.x1, ink.y1 - box.y1) : moveItems(items, ink.x0 - box.x0, ink.y0 - box.y1);
};

/** The words of each length; what a tape shows over the whole stands on the first of them with the room, else with the last one's own. */
const captionsOf = (tiled: TiledDrawing, inks: readonly Box[], request: LayoutRequest, hand: Hand): Item[][] => {
  const { plan } = tiled;
  const words = plan.tiles.map((tile) => wordsOf(tiled, tile, request));
  const own = plan.tiles.map((tile, i) => onLength(tile, plan, words[i]!, { ...hand, taken: [] }));
  const whole = wholeWords(tiled, request);
  const places = plan.tiles.map((tile, i) => onLength(tile, plan, whole, { ...hand, taken: own[i]! }));
  const first = whole.length === 0 ? -1 : places.findIndex((items) => items.length > 0);
  return plan.tiles.map((tile, i) => {
    const more = first < 0 && i === plan.tiles.length - 1 ? whole : [];
    const caption = own[i]!.length > 0 && more.length === 0 ? own[i]! : besideLength(tile.window, inks[i]!, [...words[i]!, ...more], hand);
    return [...caption, ...(i === first ? places[i]! : [])];
  });
};

/** What a length shows of the strip, with all that joins it to the others. The marks carry the strip’s name: several strips may share a sheet. */
const drawnOn = (tiled: TiledDrawing, tile: GridTile, font: Font): Item[] => {
  const { plan, codeOf, tiles } = tiled;
  const marks = seamItems(seamsOf(plan, tiles, tile), tile, plan, { codeOf, called: 'length', font }).map((item) =>
    (item.part?.startsWith('registration-') === true ? { ...item, part: item.part.replace('registration-', `registration-${plan.drawing.name}-`) } : item));
  return [...cutItems(plan.cut, tile.ink, tile.window), ...marks, ...datumMark(plan, tile, font)];
};

/** The lengths of a cut strip as patterns to be packed. */
const piecesOf = (tiled: TiledDrawing, request: LayoutRequest, font: Font): SmallPattern[] => {
  const { jig, plan, codeOf } = tiled;
  const drawn = plan.tiles.map((tile) => drawnOn(tiled, tile, font));
  const captions = captionsOf(tiled, drawn.map((items) => shownBounds(items, font)), request, { font, upright: isUpright(plan) });
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
export const cutIntoLengths = ({ jig, drawing }: LargePattern, frames: readonly PageFrame[], request: LayoutRequest, font: Font): CutStrip | undefined => {
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
