import type { Drawing, Item, JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { findingsOfSetUps } from './findings-of-set-up.js';
import { furniture, type Furniture } from './furniture.js';
import type { LayoutRequest } from './layout-request.js';
import { packedSheet, packPatterns, type PackedSheet, type SmallPattern } from './packed-sheets.js';
import type { PageFrame } from './page-frame.js';
import { setUpSheets } from './set-up-sheets.js';
import type { Sheet } from './sheet.js';
import { assumedWords, pieceWords, runningWords } from './strip-words.js';
import { tileSheet, type Place, type TiledDrawing } from './tile-sheet.js';

/** What every page of a set is made with. */
export interface Setting {
  readonly request: LayoutRequest;
  readonly font: Font;
  readonly furnitureOf: (frame: PageFrame) => Furniture;
}

/** The setting of one set: furniture is made once for each frame. */
export const settingOf = (request: LayoutRequest, frames: readonly PageFrame[], font: Font): Setting => {
  const made = new Map(frames.map((frame) => [frame.landscape, furniture(frame, request, font)]));
  return { request, font, furnitureOf: (frame) => made.get(frame.landscape)! };
};

/** What a sheet of a set is for: the scale check and map, patterns that one sheet holds, patterns in tiles, work at a machine. */
export type SetPart = 'opening' | 'patterns' | 'tiles' | 'set-ups';

/** A sheet before it is known how many there are. */
export interface Planned {
  readonly part: SetPart;
  readonly make: (place: Place) => Sheet;
}

/** A page of words and pictures in a frame with its strip. */
export const plainPage = (setting: Setting, frame: PageFrame, of: { part: SetPart; title: string; items: readonly Item[]; jig?: JigDrawing }): Planned => ({
  part: of.part,
  make: (place) => {
    const code = String(place.page);
    const words = {
      lines: [
        { text: `${place.page} of ${place.count} · ${of.title}`, part: 'sheet-title', single: true },
        { text: pieceWords(setting.request), part: 'piece', single: true },
        { text: assumedWords(of.jig?.assumed ?? []), part: 'assumed' },
      ],
      running: runningWords(setting.request, frame, []),
    };
    const items = [...of.items, ...setting.furnitureOf(frame)({ code, words })];
    return { code, title: `${code} – ${of.title}`, width: frame.width, height: frame.height, items };
  },
});

/** A page of a set-up. */
export interface SetUpPage extends Planned {
  readonly jig: JigDrawing;
}

const pagesOfJig = (setting: Setting, frame: PageFrame, jig: JigDrawing): SetUpPage[] => {
  const { findings, units } = setting.request;
  const found = findingsOfSetUps(jig.setUps, findings.filter((finding) => finding.jig === jig.jig));
  return jig.setUps.flatMap((setUp, k) => setUpSheets({ jig, setUp, findings: found[k]!, units }, frame, setting.font).map((items, i) => ({
    ...plainPage(setting, frame, { part: 'set-ups', title: `${jig.title}: ${setUp.operation}${i === 0 ? '' : ', continued'}`, items, jig }), jig,
  })));
};

/** The pages of all set-ups, jig by jig. */
export const setUpPages = (setting: Setting, frame: PageFrame): SetUpPage[] =>
  setting.request.jigs.flatMap((jig) => pagesOfJig(setting, frame, jig));

/** A page of small patterns. */
export interface PackedPage extends Planned {
  readonly packed: PackedSheet;
}

/** Small patterns, packed. */
export const packedPages = (setting: Setting, small: readonly SmallPattern[], frames: readonly PageFrame[]): PackedPage[] =>
  packPatterns(small, frames, setting.request, setting.font).map((packed) => ({
    part: 'patterns', packed,
    make: (place) => packedSheet(packed, { request: setting.request, place, furniture: setting.furnitureOf(packed.frame) }, setting.font),
  }));

/** The sheets of one tiled drawing. */
export const tilePages = (setting: Setting, tiled: TiledDrawing): Planned[] => tiled.plan.tiles.map((tile) => ({
  part: 'tiles',
  make: (place) => tileSheet(tiled, tile, { request: setting.request, place, furniture: setting.furnitureOf(tiled.plan.frame) }, setting.font),
}));

/** A pattern that must be cut. */
export interface LargePattern {
  readonly jig: JigDrawing;
  readonly drawing: Drawing;
}
