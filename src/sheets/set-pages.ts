import type { Drawing, Item, JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { boxWidth } from '../geometry/box.js';
import { furniture, type Furniture } from './furniture.js';
import type { LayoutRequest } from './layout-request.js';
import { packedSheet, packPatterns, type PackedSheet, type SmallPattern } from './packed-sheets.js';
import type { PageFrame } from './page-frame.js';
import { findingsOfSetUps } from './set-ups/findings-of-set-up.js';
import { joinAlike } from './set-ups/join-alike.js';
import { operationTitle, type SetUpRequest } from './set-ups/sections.js';
import { sharedSetUpPages, type SetUpPageContent } from './set-ups/set-up-sheets.js';
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
export const plainPage = (setting: Setting, frame: PageFrame, of: { part: SetPart; title: string; items: readonly Item[]; jigs?: readonly JigDrawing[] }): Planned => ({
  part: of.part,
  make: (place) => {
    const code = String(place.page);
    const words = {
      lines: [
        { text: `${place.page} of ${place.count} · ${of.title}`, part: 'sheet-title', single: true },
        { text: pieceWords(setting.request), part: 'piece', single: true },
        { text: assumedWords((of.jigs ?? []).flatMap(({ assumed }) => assumed)), part: 'assumed' },
      ],
      running: runningWords(setting.request, frame, []),
    };
    const items = [...of.items, ...setting.furnitureOf(frame)({ code, words })];
    return { code, title: `${code} – ${of.title}`, width: frame.width, height: frame.height, items };
  },
});

/** A page of set-ups. */
export interface SetUpPage extends Planned {
  /** Those whose operations stand on it, in order. */
  readonly jigs: readonly JigDrawing[];
}

/** What the set-ups of a jig are made from: each with the findings that it is told. */
const requestsOf = (jig: JigDrawing, { findings, units }: LayoutRequest): SetUpRequest[] => {
  const found = findingsOfSetUps(jig.setUps, findings.filter((finding) => finding.jig === jig.jig));
  return jig.setUps.map((setUp, i) => ({ jig, setUp, findings: found[i]!, units }));
};

/** A picture that an earlier operation shows just so is not printed again. */
const picturesOnce = (requests: readonly SetUpRequest[]): SetUpRequest[] => {
  const seen = new Map<string, string>();
  return requests.map((request) => {
    const { jig, setUp } = request;
    const key = JSON.stringify([setUp.picture.items, setUp.pictureIs, setUp.pictureNote]);
    const earlier = seen.get(key);
    if (earlier === undefined) seen.set(key, operationTitle(jig, setUp));
    return earlier === undefined || setUp.picture.items.length === 0 ? request : { ...request, pictureWith: earlier };
  });
};

/** What a page of set-ups is called: its operations. */
const setUpTitle = (page: SetUpPageContent): string =>
  page.map(({ jig, setUp, continued }) => `${operationTitle(jig, setUp)}${continued ? ', continued' : ''}`).join('; ');

/** The pages of all set-ups, jig by jig. */
export const setUpPages = (setting: Setting, frame: PageFrame): SetUpPage[] => {
  const all = setting.request.jigs.flatMap((jig) => requestsOf(jig, setting.request));
  const requests = picturesOnce(joinAlike(all, boxWidth(frame.area) - 2, setting.font));
  return sharedSetUpPages(requests, frame, setting.font).map((page) => {
    const jigs = [...new Set(page.map(({ jig }) => jig))];
    return { ...plainPage(setting, frame, { part: 'set-ups', title: setUpTitle(page), items: page.flatMap(({ items }) => items), jigs }), jigs };
  });
};

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
