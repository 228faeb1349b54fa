import type { Drawing, Item, JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { shownBounds } from '../drawing/item-bounds.js';
import { moveItems, placeItems } from '../drawing/items.js';
import { boxHeight, boxWidth, type Box } from '../geometry/box.js';
import { after, rotation, scaling } from '../geometry/transform.js';
import { isCorrected, pageCorrection, type LayoutRequest } from './layout-request.js';
import { fits, pack, type Piece, type Placed } from './pack.js';
import { areaInset, type PageFrame } from './page-frame.js';
import type { Sheet } from './sheet.js';
import { assumedWords, distinct, patternWords, pieceWords, runningWords } from './strip-words.js';
import type { SheetContext } from './tile-sheet.js';

/** A pattern that goes on one sheet whole. */
export interface SmallPattern {
  readonly jig: JigDrawing;
  readonly drawing: Drawing;
  /** What it is a length of, where it is one. */
  readonly of?: string;
  /** Its items, the spine among them, and their box. */
  readonly items: readonly Item[];
  readonly bounds: Box;
}

/** Patterns keep this far apart, so that scissors pass between; mm. */
export const packingGap = 6;

/** Patterns that share a sheet of one frame. */
export interface PackedSheet {
  readonly frame: PageFrame;
  readonly places: readonly { readonly pattern: SmallPattern; readonly placed: Placed }[];
}

/** The items as printed, turned by a quarter or not, their corner at (0, 0). */
const asPrinted = (pattern: SmallPattern, frame: PageFrame, request: LayoutRequest, turned: boolean) => (font: Font) => {
  const factors = pageCorrection(request.correction, frame.landscape);
  const turn = turned ? Math.PI / 2 : 0;
  const items = placeItems(pattern.items, after(rotation(turn), scaling(1 / factors.x, 1 / factors.y)), turn);
  const bounds = shownBounds(items, font);
  return { items: moveItems(items, -bounds.x0, -bounds.y0), width: boxWidth(bounds), height: boxHeight(bounds) };
};

/** Size to pack by: the larger of both turns, since x and y may be corrected apart. */
const pieceOf = (pattern: SmallPattern, frame: PageFrame, request: LayoutRequest, font: Font): Piece => {
  const { bounds } = pattern;
  if (!isCorrected(request.correction)) return { width: boxWidth(bounds) + packingGap, height: boxHeight(bounds) + packingGap };
  const upright = asPrinted(pattern, frame, request, false)(font);
  const lying = asPrinted(pattern, frame, request, true)(font);
  return {
    width: Math.max(upright.width, lying.height) + packingGap,
    height: Math.max(upright.height, lying.width) + packingGap,
  };
};

const roomOf = ({ area }: PageFrame): Piece => ({
  width: boxWidth(area) - 2 * areaInset + packingGap, height: boxHeight(area) - 2 * areaInset + packingGap,
});

/** Whether one sheet of a frame holds a pattern whole, turned if need be. */
export const fitsFrame = (pattern: SmallPattern, frame: PageFrame, request: LayoutRequest, font: Font): boolean =>
  fits(pieceOf(pattern, frame, request, font), roomOf(frame));

const packFrame = (patterns: readonly SmallPattern[], frame: PageFrame, request: LayoutRequest, font: Font): PackedSheet[] => {
  const placed = pack(patterns.map((p) => pieceOf(p, frame, request, font)), roomOf(frame));
  const count = placed.reduce((n, p) => Math.max(n, p.sheet + 1), 0);
  return Array.from({ length: count }, (_, sheet) => ({
    frame,
    places: placed.filter((p) => p.sheet === sheet).map((p) => ({ pattern: patterns[p.piece]!, placed: p })),
  }));
};

/**
 * Packs patterns to as few sheets as found: for each turn of the paper allowed, all that fit it, the rest on the other.
 * Every pattern must fit one of the frames.
 */
export const packPatterns = (patterns: readonly SmallPattern[], frames: readonly PageFrame[], request: LayoutRequest, font: Font): PackedSheet[] => {
  const orders = frames.length < 2 ? [frames] : [frames, [...frames].reverse()];
  const tries = orders.map((order) => {
    let left = patterns;
    return order.flatMap((frame) => {
      const here = left.filter((p) => fitsFrame(p, frame, request, font));
      left = left.filter((p) => !here.includes(p));
      return here.length === 0 ? [] : packFrame(here, frame, request, font);
    });
  });
  return tries.reduce((a, b) => (b.length < a.length ? b : a));
};

/** Jigs on a packed sheet, in the order in which they stand on it. */
export const jigsOn = (sheet: PackedSheet): JigDrawing[] => [...new Set(sheet.places.map((p) => p.pattern.jig))];

/** What is on a packed sheet in fewer and fewer words. */
const shorterNames = (sheet: PackedSheet): string[] => {
  const jigs = jigsOn(sheet);
  const of = (jig: JigDrawing): string[] => distinct(sheet.places.flatMap(({ pattern }) => (pattern.jig === jig ? [pattern.of ?? pattern.drawing.title] : [])));
  const count = `${sheet.places.length} ${sheet.places.length === 1 ? 'pattern' : 'patterns'}`;
  return [
    jigs.map((jig) => `${jig.jig}: ${of(jig).join(', ')}`).join('; '),
    `${count}: ${jigs.flatMap(of).join(', ')}`,
    `${count} of ${jigs.map((jig) => jig.jig).join(', ')}`,
    `${count} of ${jigs.length} ${jigs.length === 1 ? 'jig' : 'jigs'}`,
  ];
};

/** Makes a packed sheet; its code is its number in the set. */
export const packedSheet = (sheet: PackedSheet, of: SheetContext, font: Font): Sheet => {
  const { frame } = sheet;
  const jigs = jigsOn(sheet);
  const names = distinct(sheet.places.map(({ pattern }) => patternWords(pattern.jig, pattern.drawing)));
  const at = `${of.place.page} of ${of.place.count} · `;
  const code = String(of.place.page);
  const words = {
    lines: [
      { text: at + names.join('; '), shorter: shorterNames(sheet).map((words) => at + words), part: 'sheet-title', single: true },
      { text: pieceWords(of.request), part: 'piece', single: true },
      { text: assumedWords(jigs.flatMap((j) => j.assumed)), part: 'assumed' },
    ],
    running: runningWords(of.request, frame, jigs.flatMap((j) => j.cautions)),
  };
  const drawn = sheet.places.flatMap(({ pattern, placed }) => moveItems(
    asPrinted(pattern, frame, of.request, placed.turned)(font).items,
    frame.area.x0 + areaInset + placed.x, frame.area.y0 + areaInset + placed.y));
  return {
    code, title: `${code} – ${names.join('; ')}`.slice(0, 200), width: frame.width, height: frame.height,
    items: [...drawn, ...of.furniture({ code, words })],
  };
};
