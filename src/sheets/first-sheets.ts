import type { Finding } from '../errors/finding.js';
import type { Item } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { moveItems } from '../drawing/items.js';
import { boxHeight, boxWidth, growBox } from '../geometry/box.js';
import { lengthLabel } from '../units/format.js';
import { assemblyMap } from './assembly-map.js';
import { heading, onHeadingLine, paragraphs, shortened, tableBlocks } from './blocks.js';
import { closingDistances, closingWords } from './closing-distances.js';
import { flow, type FlowBlock } from './flow.js';
import type { LayoutRequest } from './layout-request.js';
import type { PageFrame } from './page-frame.js';
import { pieceBounds } from './piece-bounds.js';
import { scaleCheck } from './scale-check.js';
import { patternWords } from './strip-words.js';
import type { TiledDrawing } from './tile-sheet.js';

/** What the first sheet says of the set. */
export interface Contents {
  readonly tiled: readonly TiledDrawing[];
  /** Strips in lengths. */
  readonly strips: readonly TiledDrawing[];
  /** A row for each jig's patterns and set-ups: what it is, on which sheets. */
  readonly rows: readonly (readonly [string, string])[];
  readonly warnings: readonly string[];
}

const findingWords = (f: Finding): string => {
  const weight = { stop: 'Not drawn', warn: 'Warning', note: 'Note' }[f.severity];
  return `${f.jig}: ${weight}. ${f.message}${f.remedy === '' ? '' : ` ${f.remedy}`}`;
};

/** What to measure once a drawing is taped. */
const closingBlocks = (tiled: TiledDrawing, request: LayoutRequest, width: number, font: Font): FlowBlock[] => {
  const closing = closingDistances(tiled).map((d) => closingWords(d, request.units));
  return [
    ...(closing.length === 0 ? [] : paragraphs(['Once taped, check with a steel tape:'], width, font).map((b) => ({ ...b, withNext: true }))),
    ...paragraphs(closing, width, font, { mark: () => '–' }),
  ];
};

/** How large a drawing is, and on how many sheets or in how many lengths; true sizes. */
const sizeWords = ({ plan }: TiledDrawing, { units }: LayoutRequest): string => {
  const piece = pieceBounds(plan);
  const size = (printed: number, factor: number): string => lengthLabel(printed / factor, units);
  return `${size(boxWidth(piece), plan.toPage.a)} by ${size(boxHeight(piece), plan.toPage.d)}`;
};

/** How the lengths of a strip are joined: they say themselves which is next to which. */
const stripBlocks = (strip: TiledDrawing, request: LayoutRequest, width: number, font: Font): FlowBlock[] => {
  const { jig, plan } = strip;
  const about = `${sizeWords(strip, request)} in ${plan.tiles.length} lengths, overlap ${lengthLabel(request.wishes.overlap, request.units)}: cut each out on its outline, join them in the order of their numbers.`;
  return [
    heading(`Lengths: ${patternWords(jig, plan.drawing)}`, width, font),
    ...paragraphs([about], width, font),
    ...closingBlocks(strip, request, width, font),
  ];
};

const mapBlocks = (tiled: TiledDrawing, request: LayoutRequest, room: { width: number; height: number }, font: Font): FlowBlock[] => {
  const { jig, plan } = tiled;
  const about = `${sizeWords(tiled, request)} on ${plan.tiles.length} sheets, ${plan.frame.landscape ? 'landscape' : 'portrait'}, `
    + `overlap ${lengthLabel(request.wishes.overlap, request.units)}. Hatched: no sheet. Ring: datum.`;
  return [
    heading(`Map: ${patternWords(jig, plan.drawing)}`, room.width, font),
    ...paragraphs([about], room.width, font).map((b) => ({ ...b, withNext: true })),
    assemblyMap(tiled, room, font),
    ...closingBlocks(tiled, request, room.width, font),
  ];
};

/**
 * The drawn parts of the sheets that open a set: scale check, list of sheets, maps, closing distances, findings. One page
 * where that does. How many pages there are decides all numbers after them, so they are set until both agree: `contents`
 * says what the set holds where so many pages come first.
 */
export const firstSheets = (contents: (before: number) => Contents, frame: PageFrame, request: LayoutRequest, font: Font): Item[][] => {
  const area = growBox(frame.area, -1);
  const width = area.x1 - area.x0;
  const top = scaleCheck(area, frame, request, font);
  const room = { width, height: Math.min(70, (area.y1 - area.y0) / 3) };
  const set = (before: number): Item[][] => {
    const { tiled, strips, rows, warnings } = contents(before);
    const findings = [...warnings, ...request.findings.map(findingWords)];
    const list = rows.map(([jig, where]) => [shortened(jig), shortened(where, 600)]);
    return flow([
      heading('Sheets of this set', width, font), ...onHeadingLine(tableBlocks({ rows: list }, width, font)),
      ...tiled.flatMap((each) => mapBlocks(each, request, room, font)),
      ...strips.flatMap((each) => stripBlocks(each, request, width, font)),
      ...(findings.length === 0 ? [] : [heading('Before you cut', width, font)]),
      ...paragraphs(findings, width, font, { mark: () => '–' }),
    ], { ...area, y0: area.y0 + top.height + 4 }, area);
  };
  const [first, ...more] = agreed(set);
  return [[...moveItems(top.items, area.x0, area.y0), ...first!], ...more];
};

/** The pages that are as many as they were set for. A number less of figures may save a page again: it then stays empty, so that all numbers are true. */
const agreed = (set: (before: number) => Item[][]): Item[][] => {
  let count = 1;
  let pages = set(count);
  while (pages.length > count) {
    count = pages.length;
    pages = set(count);
  }
  return [...pages, ...Array.from({ length: count - pages.length }, () => [])];
};
