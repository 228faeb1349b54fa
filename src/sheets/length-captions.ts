import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds } from '../drawing/item-bounds.js';
import { moveItems, turnItems } from '../drawing/items.js';
import { textBlock } from '../drawing/text-block.js';
import { boxesMeet, boxHeight, boxWidth, emptyBox, growBox, type Box } from '../geometry/box.js';
import { point, type Point } from '../geometry/point.js';
import { lengthLabel } from '../units/format.js';
import { closingDistances, closingWords } from './closing-distances.js';
import { isClear } from './ink-map.js';
import type { LayoutRequest } from './layout-request.js';
import type { TilePlan } from './plan-tiles.js';
import { seamsOf } from './seam-lines.js';
import { patternWords } from './strip-words.js';
import type { GridTile } from './tile-grid.js';
import { leftWords, seamWords, topWords, type TiledDrawing } from './tile-sheet.js';

/** Whether a strip runs up and down. */
export const isUpright = ({ grid }: TilePlan): boolean => grid.x.seams.length === 0;

/** What a tape shows once all is joined. The marks of a strip lie too near to each other for a diagonal to say anything. */
const wholeWords = (tiled: TiledDrawing, { units }: LayoutRequest): string[] =>
  closingDistances(tiled)
    .slice(0, 1)
    .map((distance) => `Once taped, check with a steel tape: ${closingWords(distance, units)}.`);

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
export interface Hand {
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
const onLength = (
  tile: GridTile,
  plan: TilePlan,
  paragraphs: readonly string[],
  of: Hand & { readonly taken: readonly Item[] },
): Item[] => {
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
  return of.upright
    ? moveItems(items, ink.x0 - box.x1, ink.y1 - box.y1)
    : moveItems(items, ink.x0 - box.x0, ink.y0 - box.y1);
};

/** The words of each length; what a tape shows over the whole stands on the first of them with the room, else with the last one's own. */
export const captionsOf = (tiled: TiledDrawing, inks: readonly Box[], request: LayoutRequest, hand: Hand): Item[][] => {
  const { plan } = tiled;
  const words = plan.tiles.map((tile) => wordsOf(tiled, tile, request));
  const own = plan.tiles.map((tile, i) => onLength(tile, plan, words[i]!, { ...hand, taken: [] }));
  const whole = wholeWords(tiled, request);
  const places = plan.tiles.map((tile, i) => onLength(tile, plan, whole, { ...hand, taken: own[i]! }));
  const first = whole.length === 0 ? -1 : places.findIndex((items) => items.length > 0);
  return plan.tiles.map((tile, i) => {
    const more = first < 0 && i === plan.tiles.length - 1 ? whole : [];
    const caption =
      own[i]!.length > 0 && more.length === 0
        ? own[i]!
        : besideLength(tile.window, inks[i]!, [...words[i]!, ...more], hand);
    return [...caption, ...(i === first ? places[i]! : [])];
  });
};
