import type { Drawing, JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { itemsBounds } from '../drawing/item-bounds.js';
import { UserError } from '../errors/user-error.js';
import { choosePlan, framesOf } from './choose-plan.js';
import { bodyPages, bookmarksOf, numberedDrawings, openingPages, type Body } from './contents.js';
import type { LayoutRequest } from './layout-request.js';
import { cutIntoLengths, type CutStrip } from './lengths.js';
import { layoutWarnings } from './layout-warnings.js';
import { fitsFrame, type SmallPattern } from './packed-sheets.js';
import type { PageFrame } from './page-frame.js';
import { packedPages, settingOf, setUpPages, type LargePattern, type SetPart } from './set-pages.js';
import type { Sheet } from './sheet.js';
import { withSpine } from './spine.js';
import { patternWords } from './strip-words.js';
import type { CutDrawing, TiledDrawing } from './tile-sheet.js';

/** A set of sheets ready to be written. */
export interface SheetSet {
  readonly count: number;
  /** What each sheet is for, in their order. */
  readonly parts: readonly SetPart[];
  /** The drawings that are cut into sheets. */
  readonly tiled: readonly TiledDrawing[];
  /** Makes the sheets one after another; each time afresh. */
  readonly sheets: () => Iterable<Sheet>;
  /** What could not be done as it should. */
  readonly warnings: readonly string[];
}

/** More sheets than this is a mistake in a figure, not a template. */
const mostSheets = 2000;

const refuseMany = (count: number, what: string): void => {
  if (count <= mostSheets) return;
  throw new UserError(undefined, [{
    code: 'too-many-sheets', path: 'paper', message: `${what} would take more sheets than anyone can tape`,
    got: `${count} sheets`, allowed: `at most ${mostSheets} sheets`, nearest: 'a larger paper, or a smaller board',
  }]);
};

/** Packing tries each pattern on each sheet: more of them than a set may have sheets are not packed. */
const refusePacking = (count: number): void => {
  if (count <= mostSheets) return;
  throw new UserError(undefined, [{
    code: 'too-many-patterns', path: 'jigs', message: 'ask for more patterns than anyone can cut out',
    got: `${count} small patterns`, allowed: `at most ${mostSheets} in one set`, nearest: 'a spec for each part of the piece',
  }]);
};

interface Sorted {
  readonly small: readonly SmallPattern[];
  readonly large: readonly LargePattern[];
}

/** Strips go in lengths, packed like small patterns; not where the spec says where their seams run. */
const cutStrips = ({ small, large }: Sorted, request: LayoutRequest, frames: readonly PageFrame[], font: Font): Sorted & { readonly strips: readonly CutStrip[] } => {
  const cut = large.map((each) => (hasGivenSeams(each, large, request) ? undefined : cutIntoLengths(each, frames, request, font)));
  const strips = cut.flatMap((strip) => strip ?? []);
  return { small: [...small, ...strips.flatMap(({ pieces }) => pieces)], large: large.filter((_, i) => cut[i] === undefined), strips };
};

/** A picture is printed once in a set: with the set-up that shows it. */
const isOnSheets = ({ isPicture }: Drawing, { setUps }: JigDrawing): boolean => isPicture !== true || setUps.length === 0;

/** Patterns that a sheet holds whole, and those that must be cut. */
const sortPatterns = (request: LayoutRequest, frames: readonly PageFrame[], font: Font): Sorted => {
  const all = request.jigs.flatMap((jig) => jig.patterns.filter((drawing) => isOnSheets(drawing, jig)).map((drawing) => ({ jig, drawing, items: withSpine(drawing, request.units, font) })));
  const small: SmallPattern[] = [];
  const large: LargePattern[] = [];
  for (const { jig, drawing, items } of all) {
    if (items.length === 0) continue;
    const pattern = { jig, drawing, items, bounds: itemsBounds(items, font) };
    if (frames.some((frame) => fitsFrame(pattern, frame, request, font))) small.push(pattern);
    else large.push({ jig, drawing: { ...drawing, items } });
  }
  return { small, large };
};

const withoutSeams = (request: LayoutRequest): LayoutRequest => ({ ...request, wishes: { ...request.wishes, seams: {} } });

/** Seams given for a jig are meant for the first of its patterns that is cut: on the others their stations mean nothing. */
const hasGivenSeams = (of: LargePattern, large: readonly LargePattern[], { wishes: { seams } }: LayoutRequest): boolean =>
  Object.hasOwn(seams, of.jig.jig) && large.find(({ jig }) => jig === of.jig) === of;

/** Counted as they are planned: what no set can hold is refused before the rest is worked out. */
const cutAll = (large: readonly LargePattern[], request: LayoutRequest, font: Font): CutDrawing[] => {
  let count = 0;
  return large.map((each) => {
    const { jig, drawing } = each;
    const plan = choosePlan(drawing, jig, hasGivenSeams(each, large, request) ? request : withoutSeams(request), font);
    refuseMany(plan.tiles.length, patternWords(jig, drawing));
    count += plan.tiles.length;
    refuseMany(count, 'the set');
    return { jig, plan };
  });
};

/**
 * Lays jigs out on paper: the scale check and map first, then small patterns packed, then large ones in tiles, the set-up
 * sheets last. Sheets are made one at a time when they are asked for; the plan alone is kept. mm. Refuses margins, papers
 * and overlaps that leave no room, seams that cannot be, and more than 2 000 sheets.
 */
export const layOut = (request: LayoutRequest, font: Font): SheetSet => {
  const frames = framesOf(request);
  const frame = frames[0]!;
  const setting = settingOf(request, frames, font);
  const { small, large, strips } = cutStrips(sortPatterns(request, frames, font), request, frames, font);
  refusePacking(small.length);
  const cut = cutAll(large, request, font);
  const body: Body = { packed: packedPages(setting, small, frames), cut, setUps: setUpPages(setting, frame) };
  const warnings = layoutWarnings(request, [...body.cut, ...strips.map(({ tiled }) => tiled)]);
  const opening = openingPages(setting, frame, body, warnings);
  const tiled = numberedDrawings(body, opening.length);
  const pages = [...opening, ...bodyPages(setting, body, tiled)];
  refuseMany(pages.length, 'the set');
  const jigsFrom = bookmarksOf(body, opening.length);
  return {
    count: pages.length, parts: pages.map(({ part }) => part), tiled, warnings,
    *sheets() {
      for (const [i, planned] of pages.entries()) {
        const bookmark = i === 0 ? ['Scale check and map'] : jigsFrom.get(i + 1) ?? [];
        yield { ...planned.make({ page: i + 1, count: pages.length }), ...(bookmark.length > 0 && { bookmark }) };
      }
    },
  };
};
