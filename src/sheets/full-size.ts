import type { Drawing, Item, JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds, shownBounds } from '../drawing/item-bounds.js';
import { letter, moveItems } from '../drawing/items.js';
import { readingMark, readingMarkSize } from '../drawing/reading-mark.js';
import { ruleBar, ruleDepth } from '../drawing/rule-bar.js';
import { textBlock } from '../drawing/text-block.js';
import { boxHeight, boxWidth, type Box } from '../geometry/box.js';
import { point } from '../geometry/point.js';
import { mmPerInch, type Units } from '../units/units.js';
import { leastBar } from './page-frame.js';
import type { LayoutRequest } from './layout-request.js';
import type { Sheet } from './sheet.js';
import { splitPattern } from './split-pattern.js';
import { distinct, lineRule } from './strip-words.js';
import { withSpine } from './spine.js';

/** ISO 32000-1, annex C: 14 400 pt. */
export const longestPage = 5080;

const margin = 10;
const gap = 12;
const left = margin + 2 * ruleDepth + 4;
const bottom = margin + 2 * ruleDepth + 5;

/** A part of the canvas: a title and a pattern where it stands in its drawing. */
interface Part {
  readonly title: string;
  readonly items: readonly Item[];
  readonly bounds: Box;
  readonly width: number;
  readonly height: number;
}

const titleHeight = 3.5;
/** From the top of a part to the top of its pattern: the title and a gap. */
const headRoom = 8;

const patternPart = (title: string, items: readonly Item[], bounds: Box, font: Font): Part => ({
  title, items, bounds,
  width: Math.max(boxWidth(bounds), font.width(title, titleHeight)), height: boxHeight(bounds) + headRoom,
});

const placePart = (part: Part, x: number, y: number): Item[] => [
  letter(point(x, y + titleHeight), part.title, { height: titleHeight, part: 'pattern-title' }),
  ...moveItems(part.items, x - part.bounds.x0, y + headRoom - part.bounds.y0),
];

/** A pattern longer than a page goes on several, each with the marks that join it to the next. */
const partsOf = (drawing: Drawing, request: LayoutRequest, font: Font): Part[] => {
  const items = withSpine(drawing, request.units, font);
  const bounds = itemsBounds(items, font);
  const room = { width: longestPage - left - margin, height: longestPage - 400 };
  if (boxWidth(bounds) <= room.width && boxHeight(bounds) <= room.height) return [patternPart(drawing.title, items, bounds, font)];
  const pieces = splitPattern({ ...drawing, items }, room, font);
  return pieces.map((piece) => patternPart(`${drawing.title}, ${piece.name}: longer than a page can be, so join the pages at their marks`, piece.items, shownBounds(piece.items, font), font));
};

const headWords = (jig: JigDrawing, request: LayoutRequest): string[] => {
  const revision = request.revision === '' ? '' : ` · rev. ${request.revision}`;
  return [
    `${request.title}${revision} · ${request.digest} · full size: print at 100 %, the bars must measure true`,
    ...(jig.assumed.length === 0 ? [] : [`Assumed, as measured: ${distinct(jig.assumed).join('; ')}`]),
    lineRule,
    ...(jig.cautions.length === 0 ? [] : [distinct(jig.cautions).join(' · ')]),
  ];
};

/** Bars of round length: a foot or 300 mm, less where the canvas is smaller. */
const canvasBar = (room: number, units: Units): number => {
  const step = units === 'inch' ? mmPerInch : 10;
  const most = units === 'inch' ? 12 * mmPerInch : 300;
  return Math.max(leastBar(units), Math.min(most, Math.floor(room / step) * step));
};

/** The least height that the head of a canvas leaves its y-bar. */
const canvas = (jig: JigDrawing, parts: readonly Part[], of: { request: LayoutRequest; font: Font }): Omit<Sheet, 'code'> => {
  const { request, font } = of;
  const width = Math.max(leastBar(request.units), ...parts.map((p) => p.width));
  const beside = width - readingMarkSize.width - 6;
  const title = textBlock({ at: point(left, margin + 1), width: beside, paragraphs: [jig.title], height: 5 }, font);
  const wordsTop = margin + 1 + title.height + 2.25;
  const words = textBlock({ at: point(left, wordsTop), width: beside, paragraphs: headWords(jig, request), height: 2.5 }, font);
  let y = Math.max(wordsTop + words.height, margin + readingMarkSize.height) + gap;
  const first = y;
  const placed = parts.flatMap((part) => {
    const items = placePart(part, left, y);
    y += part.height + gap;
    return items;
  });
  const end = Math.max(y - gap, first + leastBar(request.units));
  const bars = { x: canvasBar(width, request.units), y: canvasBar(end - margin - 4, request.units) };
  const barY = end + 4 + ruleDepth;
  return {
    title: jig.title, width: left + width + margin, height: end + bottom,
    items: [
      ...title.items.map((item) => ({ ...item, part: 'sheet-title' })), ...words.items, ...readingMark(point(left + width - readingMarkSize.width, margin + readingMarkSize.height), font),
      ...placed,
      ...ruleBar(point(left, barY), { axis: 'x', length: bars.x }),
      ...ruleBar(point(margin + ruleDepth, end), { axis: 'y', length: bars.y }),
    ],
  };
};

/** Shares parts out to pages no longer than a page can be. */
const shareOut = (parts: readonly Part[]): Part[][] => {
  const pages: Part[][] = [];
  let height = Infinity;
  for (const part of parts) {
    if (height + part.height + gap > longestPage - 200) {
      pages.push([]);
      height = 0;
    }
    pages.at(-1)!.push(part);
    height += part.height + gap;
  }
  return pages.length === 0 ? [[]] : pages;
};

/**
 * A jig's patterns on one canvas in true size, one under the other, with bars, reading mark and cautions; for a copy shop
 * and for other programs. mm, absolute, uncorrected. Where a page would pass 5 080 mm there are several, and they say so.
 */
export const fullSize = (jig: JigDrawing, request: LayoutRequest, font: Font): Sheet[] => {
  const pages = shareOut(jig.patterns.flatMap((drawing) => partsOf(drawing, request, font)));
  return pages.map((parts, i) => {
    const more = pages.length === 1 ? '' : `, page ${i + 1} of ${pages.length}`;
    const sheet = canvas({ ...jig, title: `${jig.title}${more}` }, parts, { request, font });
    return { ...sheet, code: String(i + 1), ...(i === 0 && { bookmark: jig.title }) };
  });
};
