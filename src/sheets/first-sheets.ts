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
import { capitalised, distinct, patternWords } from './strip-words.js';
import type { TiledDrawing } from './tile-sheet.js';

/** What the first sheet says of the set. */
export interface Contents {
  readonly tiled: readonly TiledDrawing[];
  /** A row for each jig's patterns and set-ups: what it is, on which sheets. */
  readonly rows: readonly (readonly [string, string])[];
  readonly warnings: readonly string[];
}

const findingWords = (f: Finding): string => {
  const weight = { stop: 'Not drawn', warn: 'Warning', note: 'Note' }[f.severity];
  return `${f.jig}: ${weight}. ${f.message}${f.remedy === '' ? '' : ` ${f.remedy}`}`;
};

/** Findings that stand nowhere else in the set, and those that stand with their operation on its sheet. */
const findingsByPlace = ({ findings, jigs }: LayoutRequest): readonly [readonly Finding[], readonly Finding[]] => {
  const isOnSetUp = ({ jig }: Finding): boolean => jigs.some((drawn) => drawn.jig === jig && drawn.setUps.length > 0);
  return [findings.filter((finding) => !isOnSetUp(finding)), findings.filter(isOnSetUp)];
};

/** Where findings are, where all of them here would take a further sheet. */
const elsewhereWords = (findings: readonly Finding[]): string[] => {
  const named = distinct(findings.map(({ jig }) => jig)).join(', ');
  return findings.length === 0 ? [] : [`Before you cut: what was found of ${named} (${findings.length}) stands on the set-up sheets, with its operation.`];
};

/** What to measure once a drawing is taped. */
const closingBlocks = (tiled: TiledDrawing, request: LayoutRequest, width: number, font: Font): FlowBlock[] => {
  const closing = closingDistances(tiled).map((d) => closingWords(d, request.units));
  if (closing.length === 0) return [];
  return paragraphs([`Once taped, check with a steel tape, marks by the sheets that they join. ${closing.map(capitalised).join('. ')}.`], width, font);
};

/** How large a drawing is, in true size. */
const sizeWords = ({ plan }: TiledDrawing, { units }: LayoutRequest): string => {
  const piece = pieceBounds(plan);
  const size = (printed: number, factor: number): string => lengthLabel(printed / factor, units);
  return `${size(boxWidth(piece), plan.toPage.a)} by ${size(boxHeight(piece), plan.toPage.d)}`;
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
    const { tiled, rows, warnings } = contents(before);
    const list = rows.map(([jig, where]) => [shortened(jig), shortened(where, 600)]);
    const plain = [
      heading('Sheets of this set', width, font), ...onHeadingLine(tableBlocks({ rows: list }, width, font)),
      ...tiled.flatMap((each) => mapBlocks(each, request, room, font)),
    ];
    const set = (findings: readonly string[], elsewhere: readonly string[]): Item[][] => flow([
      ...plain, ...(findings.length === 0 ? [] : [heading('Before you cut', width, font), ...paragraphs(findings, width, font, { mark: () => '–' })]),
      ...paragraphs(elsewhere, width, font),
    ], { ...area, y0: area.y0 + top.height + 2 }, area);
    const [here, there] = findingsByPlace(request);
    const full = set([...warnings, ...request.findings.map(findingWords)], []);
    const short = set([...warnings, ...here.map(findingWords)], elsewhereWords(there));
    return full.length > short.length ? short : full;
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
