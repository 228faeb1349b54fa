import type { Drawing, Item, JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { UserError } from '../errors/user-error.js';
import { choosePlan, framesOf } from './choose-plan.js';
import { firstSheets } from './first-sheets.js';
import { furniture } from './furniture.js';
import type { LayoutRequest } from './layout-request.js';
import { fitsFrame, jigsOn, packedSheet, packPatterns, type PackedSheet, type SmallPattern } from './packed-sheets.js';
import type { PageFrame } from './page-frame.js';
import { setUpSheets } from './set-up-sheets.js';
import type { Sheet } from './sheet.js';
import { withSpine } from './spine.js';
import { assumedWords, pieceWords, runningWords } from './strip-words.js';
import { tiledDrawing, tileSheet, type Place, type TiledDrawing } from './tile-sheet.js';

/** A set of sheets ready to be written. */
export interface SheetSet {
  readonly count: number;
  /** Codes in the order of the sheets; no two alike. */
  readonly codes: readonly string[];
  /** The drawings that are cut into sheets. */
  readonly tiled: readonly TiledDrawing[];
  /** Makes the sheets one after another; each time afresh. */
  readonly sheets: () => Iterable<Sheet>;
  /** What could not be done as it should. */
  readonly warnings: readonly string[];
}

/** More sheets than this is a mistake in a figure, not a template. */
const mostSheets = 2000;

/** A sheet before it is known how many there are. */
interface Planned {
  readonly code: (page: number) => string;
  readonly make: (place: Place) => Sheet;
}

interface Sorted {
  readonly small: readonly SmallPattern[];
  readonly large: readonly { readonly jig: JigDrawing; readonly drawing: Drawing }[];
}

/** Patterns that a sheet holds whole, and those that must be cut. */
const sortPatterns = (request: LayoutRequest, frames: readonly PageFrame[], font: Font): Sorted => {
  const all = request.jigs.flatMap((jig) => jig.patterns.map((drawing) => ({ jig, drawing, items: withSpine(drawing, request.units, font) })));
  const filled = all.filter(({ items }) => items.length > 0);
  const isSmall = (p: SmallPattern): boolean => frames.some((frame) => fitsFrame(p, frame, request, font));
  return {
    small: filled.filter(isSmall),
    large: filled.filter((p) => !isSmall(p)).map(({ jig, drawing, items }) => ({ jig, drawing: { ...drawing, items } })),
  };
};

const refuseMany = (count: number, what: string): void => {
  if (count <= mostSheets) return;
  throw new UserError(undefined, [{
    code: 'too-many-sheets', path: 'paper', message: `${what} would take more sheets than anyone can tape`,
    got: `${count} sheets`, allowed: `at most ${mostSheets} sheets`, nearest: 'a larger paper, or a smaller board',
  }]);
};

const tileAll = (sorted: Sorted, request: LayoutRequest, font: Font): TiledDrawing[] => sorted.large.map(({ jig, drawing }, i) => {
  const plan = choosePlan(drawing, jig, request, font);
  refuseMany(plan.tiles.length, `${jig.title} – ${drawing.title}`);
  return tiledDrawing(jig, plan, i === 0 ? '' : String(i + 1));
});

/** Pages of words and pictures in a frame with its strip; coded by their number. */
const plainSheet = (request: LayoutRequest, frame: PageFrame, font: Font, of: { title: string; items: readonly Item[]; jig?: JigDrawing }): Planned => ({
  code: String,
  make: (place) => {
    const code = String(place.page);
    const words = {
      lines: [
        { text: `${place.page} of ${place.count} · ${of.title}`, part: 'sheet-title', single: true }, { text: pieceWords(request), part: 'piece', single: true },
        { text: assumedWords(of.jig?.assumed ?? []), part: 'assumed' },
      ],
      running: runningWords(request, frame, []),
    };
    return { code, title: `${code} – ${of.title}`, width: frame.width, height: frame.height, items: [...of.items, ...furniture(frame, { code, words }, request, font)] };
  },
});

const setUpPages = (request: LayoutRequest, frame: PageFrame, font: Font): (Planned & { jig: JigDrawing })[] =>
  request.jigs.flatMap((jig) => jig.setUps.flatMap((setUp) => setUpSheets(jig, setUp, frame, font).map((items, i) => ({
    ...plainSheet(request, frame, font, { title: `${jig.title}: ${setUp.operation}${i === 0 ? '' : ', continued'}`, items, jig }), jig,
  }))));

const packedPages = (sorted: Sorted, frames: readonly PageFrame[], request: LayoutRequest, font: Font): (Planned & { packed: PackedSheet })[] =>
  packPatterns(sorted.small, frames, request, font).map((packed) => ({
    packed, code: String, make: (place) => packedSheet(packed, { request, place }, font),
  }));

const tilePages = (tiled: TiledDrawing, request: LayoutRequest, font: Font): Planned[] => tiled.plan.tiles.map((tile) => ({
  code: () => tiled.codeOf(tile), make: (place) => tileSheet(tiled, tile, { request, place }, font),
}));

/** Everything after the first sheets, in order. */
interface Body {
  readonly packed: readonly (Planned & { readonly packed: PackedSheet })[];
  readonly tiles: readonly { readonly tiled: TiledDrawing; readonly pages: readonly Planned[] }[];
  readonly setUps: readonly (Planned & { readonly jig: JigDrawing })[];
}

const bodyPages = (body: Body): Planned[] => [...body.packed, ...body.tiles.flatMap((t) => t.pages), ...body.setUps];

/** First and last of a run of pages. */
const span = (pages: readonly number[]): string => (pages.length > 1 ? `${pages[0]!} to ${pages.at(-1)!}` : String(pages[0]));

/** For each jig, what of it is on which sheets. */
const contentRows = (request: LayoutRequest, body: Body, before: number): [string, string][] => {
  const tilesFrom = before + body.packed.length;
  const setUpsFrom = tilesFrom + body.tiles.reduce((n, t) => n + t.pages.length, 0);
  return request.jigs.map((jig) => {
    const packed = body.packed.flatMap((p, i) => (jigsOn(p.packed).includes(jig) ? [`sheet ${before + i + 1}`] : []));
    const tiled = body.tiles.filter((t) => t.tiled.jig === jig).map(({ tiled: t }) => {
      const codes = t.plan.tiles.map(t.codeOf);
      return `${t.plan.drawing.title}: ${codes[0]!} to ${codes.at(-1)!} (${codes.length} sheets)`;
    });
    const setUps = body.setUps.flatMap((s, i) => (s.jig === jig ? [setUpsFrom + i + 1] : []));
    const words = setUps.length === 0 ? [] : [`set-up: sheet ${span(setUps)}`];
    return [jig.title, [...packed, ...tiled, ...words].join(' · ')];
  });
};

/** The opening sheets; how many they are decides the numbers that they print, so they are set until both agree. */
const openingPages = (request: LayoutRequest, frame: PageFrame, of: { body: Body; warnings: readonly string[] }, font: Font): Planned[] => {
  const tiled = of.body.tiles.map((t) => t.tiled);
  const set = (before: number): Item[][] =>
    firstSheets({ tiled, rows: contentRows(request, of.body, before), warnings: of.warnings }, frame, request, font);
  let pages = set(1);
  for (let again = 0; again < 4; again++) {
    const next = set(pages.length);
    if (next.length === pages.length) break;
    pages = next;
  }
  return set(pages.length).map((items, i) => plainSheet(request, frame, font, { title: i === 0 ? 'Scale check and map' : 'Scale check and map, continued', items }));
};

const warningsOf = (tiled: readonly TiledDrawing[]): string[] => tiled.flatMap(({ jig, plan }) => [
  ...(plan.drawing.whole ? [`${jig.title} – ${plan.drawing.title} should stay on one sheet, but no sheet of this paper holds it: join its ${plan.tiles.length} sheets with care, or take a larger paper.`] : []),
]);

/** Jigs by the page that they first come on. */
const bookmarks = (body: Body, before: number): ReadonlyMap<number, readonly string[]> => {
  const firsts = new Map<string, number>();
  let page = before;
  const note = (jigs: readonly JigDrawing[]): void => {
    page++;
    for (const jig of jigs) if (!firsts.has(jig.title)) firsts.set(jig.title, page);
  };
  body.packed.forEach((p) => { note(jigsOn(p.packed)); });
  body.tiles.forEach((t) => { t.pages.forEach(() => { note([t.tiled.jig]); }); });
  body.setUps.forEach((s) => { note([s.jig]); });
  const byPage = new Map<number, string[]>();
  for (const [title, at] of firsts) byPage.set(at, [...(byPage.get(at) ?? []), title]);
  return byPage;
};

/**
 * Lays jigs out on paper: the scale check and map first, then small patterns packed, then large ones in tiles, the set-up
 * sheets last. Sheets are made one at a time when they are asked for; the plan alone is kept. mm. Refuses margins, papers
 * and overlaps that leave no room, seams that cannot be, and more than 2 000 sheets.
 */
export const layOut = (request: LayoutRequest, font: Font): SheetSet => {
  const frames = framesOf(request);
  const frame = frames[0]!;
  const sorted = sortPatterns(request, frames, font);
  const tiled = tileAll(sorted, request, font);
  const body: Body = {
    packed: packedPages(sorted, frames, request, font),
    tiles: tiled.map((t) => ({ tiled: t, pages: tilePages(t, request, font) })),
    setUps: setUpPages(request, frame, font),
  };
  const warnings = warningsOf(tiled);
  const opening = openingPages(request, frame, { body, warnings }, font);
  const pages = [...opening, ...bodyPages(body)];
  refuseMany(pages.length, 'the set');
  const marks = bookmarks(body, opening.length);
  const bookmarkOf = (page: number): readonly string[] | undefined => (page === 1 ? ['Scale check and map'] : marks.get(page));
  return {
    count: pages.length, codes: pages.map((p, i) => p.code(i + 1)), tiled, warnings,
    *sheets() {
      for (const [i, planned] of pages.entries()) {
        const bookmark = bookmarkOf(i + 1);
        yield { ...planned.make({ page: i + 1, count: pages.length }), ...(bookmark !== undefined && { bookmark }) };
      }
    },
  };
};
