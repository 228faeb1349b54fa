import type { JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { moveItems } from '../drawing/items.js';
import { lengthLabel } from '../units/format.js';
import type { Units } from '../units/units.js';
import type { Neighbours } from './code-block.js';
import type { Furniture } from './furniture.js';
import type { LayoutRequest } from './layout-request.js';
import { areaInset } from './page-frame.js';
import type { TilePlan } from './plan-tiles.js';
import { placeKey, seamsOf, tilesByPlace, type Seam } from './seam-lines.js';
import type { Sheet } from './sheet.js';
import type { StripWords } from './strip-text.js';
import { assumedWords, capitalised, patternWords, pieceWords, runningWords, withStop } from './strip-words.js';
import { cutItems } from './tile-ink.js';
import type { GridTile } from './tile-grid.js';
import { numberedFrom } from './tile-place.js';
import { datumMark, seamItems, type CodeOf } from './tile-marks.js';

/** A drawing that is cut into sheets, before it is known how many come before them. */
export interface CutDrawing {
  readonly jig: JigDrawing;
  readonly plan: TilePlan;
}

/** A drawing on several sheets, and their numbers in the set. */
export interface TiledDrawing extends CutDrawing {
  readonly codeOf: CodeOf;
  readonly tiles: ReadonlyMap<string, GridTile>;
}

/** Numbers the sheets of a plan, row by row, from that of the first. */
export const tiledDrawing = ({ jig, plan }: CutDrawing, first: number): TiledDrawing =>
  ({ jig, plan, tiles: tilesByPlace(plan), codeOf: numberedFrom(plan.tiles, first) });

/** Where a sheet comes in the set. */
export interface Place {
  readonly page: number;
  readonly count: number;
}

/** What making a sheet needs besides its content. */
export interface SheetContext {
  readonly request: LayoutRequest;
  readonly place: Place;
  readonly furniture: Furniture;
}

const neighboursOf = (tiled: TiledDrawing, tile: GridTile): Neighbours => {
  const code = (row: number, column: number): string | undefined => {
    const there = tiled.tiles.get(placeKey(row, column));
    return there === undefined ? undefined : tiled.codeOf(there);
  };
  const found = {
    left: code(tile.row, tile.column - 1), right: code(tile.row, tile.column + 1),
    above: code(tile.row - 1, tile.column), below: code(tile.row + 1, tile.column),
  };
  return Object.fromEntries(Object.entries(found).filter(([, c]) => c !== undefined));
};

/** Where the top left corner of the sheet's own part lies from the datum, in the drawing's own millimetres. */
export const stationOf = (plan: TilePlan, tile: GridTile): { readonly along: number; readonly across: number } => ({
  along: (tile.core.x0 - plan.datum.x) / plan.toPage.a, across: (tile.core.y0 - plan.datum.y) / plan.toPage.d,
});

/** Shorter than this is no distance on paper, mm. */
const nothing = 0.05;

/** `122.3 mm (4 13⁄16″) below the spine`, or `at the spine`. */
const fromPlace = (mm: number, place: string, [before, beyond]: readonly [string, string], units: Units): string =>
  (Math.abs(mm) < nothing ? `at ${place}` : `${lengthLabel(Math.abs(mm), units)} ${mm < 0 ? before : beyond} ${place}`);

/** Where the sheet's own part begins along the piece. */
export const leftWords = (plan: TilePlan, tile: GridTile, units: Units): string => {
  const { along } = stationOf(plan, tile);
  const isFromEnd = plan.drawing.spine && Math.abs(plan.grid.x.extent.from - plan.datum.x) < nothing;
  const left = isFromEnd ? fromPlace(along, 'the left end', ['before', 'from'], units) : fromPlace(along, 'the datum', ['to the left of', 'to the right of'], units);
  return `Station of the left ${tile.column > 0 ? 'seam' : 'edge'}: ${left}`;
};

/** Where the sheet's own part begins up or down. */
export const topWords = (plan: TilePlan, tile: GridTile, units: Units): string => {
  const top = fromPlace(stationOf(plan, tile).across, plan.drawing.spine ? 'the spine' : 'the datum', ['above', 'below'], units);
  return `Top ${tile.row > 0 ? 'seam' : 'of the drawing'}: ${top}`;
};

const sides = { x: ['left', 'right'], y: ['top', 'bottom'] } as const;

/** What to trim and lay over at each seam; `called`: sheet, or what else is joined. */
export const seamWords = (seams: readonly Seam[], tile: GridTile, { codeOf, called }: { readonly codeOf: CodeOf; readonly called: string }): string => {
  const trimmed = seams.filter((s) => s.first === tile).map((s) => `${sides[s.along][1]} edge, lay it over ${called} ${codeOf(s.second)}`);
  const under = seams.filter((s) => s.second === tile).map((s) => `${called} ${codeOf(s.first)} comes over the ${sides[s.along][0]} edge`);
  const trim = trimmed.length === 0 ? '' : `Trim the ${trimmed.join('; the ')}`;
  const lay = under.join('; ');
  return [trim, lay].filter((w) => w !== '').map((w) => withStop(capitalised(w))).join(' ');
};

const wordsOf = (tiled: TiledDrawing, tile: GridTile, seams: readonly Seam[], of: { request: LayoutRequest; place: Place }): StripWords => ({
  lines: [
    { text: `${of.place.page} of ${of.place.count} · ${patternWords(tiled.jig, tiled.plan.drawing)}`, part: 'sheet-title', single: true },
    { text: pieceWords(of.request), part: 'piece', single: true },
    { text: `${leftWords(tiled.plan, tile, of.request.units)}. ${topWords(tiled.plan, tile, of.request.units)}.`, part: 'sheet-station' },
    { text: seamWords(seams, tile, { codeOf: tiled.codeOf, called: 'sheet' }), part: 'seams' },
    { text: assumedWords(tiled.jig.assumed), part: 'assumed' },
  ],
  running: runningWords(of.request, tiled.plan.frame, tiled.jig.cautions),
});

/** Makes the sheet of one tile. The window's top left corner stands in the top left corner of the drawing area. */
export const tileSheet = (tiled: TiledDrawing, tile: GridTile, of: SheetContext, font: Font): Sheet => {
  const { plan, codeOf } = tiled;
  const { frame } = plan;
  const seams = seamsOf(plan, tiled.tiles, tile);
  const drawn = [
    ...cutItems(plan.cut, tile.ink, tile.window),
    ...seamItems(seams, tile, plan, { codeOf, called: 'sheet', font }),
    ...datumMark(plan, tile, font),
  ];
  const code = codeOf(tile);
  const words = { code, neighbours: neighboursOf(tiled, tile), words: wordsOf(tiled, tile, seams, of) };
  return {
    code, title: `${code} – ${patternWords(tiled.jig, plan.drawing)}`, width: frame.width, height: frame.height,
    items: [
      ...moveItems(drawn, frame.area.x0 + areaInset - tile.window.x0, frame.area.y0 + areaInset - tile.window.y0),
      ...of.furniture(words),
    ],
  };
};
