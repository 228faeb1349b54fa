import type { Drawing, Zone } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { placeItems } from '../drawing/items.js';
import { transformPoint, scaling, type Transform } from '../geometry/transform.js';
import type { Point } from '../geometry/point.js';
import type { Box } from '../geometry/box.js';
import { isLegal, plainSeams, type Axis, type Reach } from './axis.js';
import { searchGrid } from './grid-search.js';
import { indexInk, type InkIndex } from './ink-index.js';
import { inkMap, type InkMap } from './ink-map.js';
import { isCorrected, pageCorrection, type Correction } from './layout-request.js';
import { areaInset, type PageFrame } from './page-frame.js';
import { seamCosts } from './seam-search.js';
import { seamTally, seamWishes, type SeamTally, type SeamWishes, type SeamZones } from './seam-zones.js';
import { cutter, type Cutter } from './tile-ink.js';
import { groupCount, neededTiles } from './needed-tiles.js';
import { inkedTiles, type Grid, type GridTile } from './tile-grid.js';

// Long because every step of a plan, from given seams to the choice of the best, reads one ground.

/** How a drawing is cut into sheets of one frame. Everything is in mm as printed: drawing × `toPage`. */
export interface TilePlan extends SeamTally {
  readonly drawing: Drawing;
  readonly frame: PageFrame;
  readonly toPage: Transform;
  readonly datum: Point;
  readonly grid: Grid;
  readonly tiles: readonly GridTile[];
  readonly cut: Cutter;
  readonly map: InkMap;
  /** Groups of sheets that no seam joins to the others: more than one where the drawing has parts far apart. */
  readonly groups: number;
  /** How many sheets the plain grid takes on this frame. */
  readonly plainSheets: number;
  /** What other seams than those given would save, in words. */
  readonly advice?: string;
}

/** Seams asked for, mm of the drawing from its datum; an empty list leaves that direction to the search. */
export interface GivenSeams {
  readonly along: readonly number[];
  readonly across: readonly number[];
}

/** A drawing to be cut, and the frame that it is cut for. */
export interface TilingRequest {
  readonly drawing: Drawing;
  readonly frame: PageFrame;
  readonly correction: Correction;
  readonly overlap: number;
  readonly given?: GivenSeams;
  /** The drawing's own index, where it is known already. */
  readonly index?: InkIndex;
  /** How many sheets the plain grid takes, where that is known already. */
  readonly plainSheets?: number;
}

/** What a sheet of this frame sees of a drawing, mm as printed. */
export const reachOf = (frame: PageFrame, overlap: number): { x: Reach; y: Reach } => ({
  x: { window: frame.area.x1 - frame.area.x0 - 2 * areaInset, overlap },
  y: { window: frame.area.y1 - frame.area.y0 - 2 * areaInset, overlap },
});

const boxUnder = (map: Transform, b: Box): Box => {
  const [p, q] = [transformPoint(map, { x: b.x0, y: b.y0 }), transformPoint(map, { x: b.x1, y: b.y1 })];
  return { x0: p.x, y0: p.y, x1: q.x, y1: q.y };
};

/** Everything of a tiling that does not depend on where the seams are. */
interface Ground {
  readonly request: TilingRequest;
  readonly toPage: Transform;
  readonly index: InkIndex;
  readonly reach: { readonly x: Reach; readonly y: Reach };
  readonly wishes: { readonly x: SeamWishes; readonly y: SeamWishes };
}

const groundOf = (request: TilingRequest, font: Font): Ground => {
  const { drawing, frame } = request;
  const factors = pageCorrection(request.correction, frame.landscape);
  const toPage = scaling(1 / factors.x, 1 / factors.y);
  const index = isCorrected(factors) ? indexInk(placeItems(drawing.items, toPage, 0), font) : request.index ?? indexInk(drawing.items, font);
  const lettering = index.inks.flatMap((ink) => (ink.kind === 'block' && ink.item.kind === 'lettering' ? [{ box: ink.box, why: 'lettering' }] : []));
  const placed = (zones: readonly Zone[]): Zone[] => zones.map((z) => ({ ...z, box: boxUnder(toPage, z.box) }));
  const zones: SeamZones = {
    // What a jig keeps clear because of its words is found among the lettering anyway, and weighs no more than that.
    keepClear: placed(drawing.keepClear.filter((z) => z.why !== 'lettering')), lettering, lands: placed(drawing.lands),
    ...(drawing.spine && { spine: transformPoint(toPage, drawing.datum).y }),
  };
  return { request, toPage, index, reach: reachOf(frame, request.overlap), wishes: { x: seamWishes(zones, 'x'), y: seamWishes(zones, 'y') } };
};

const extents = ({ index, reach }: Ground): { x: Omit<Axis, 'seams'>; y: Omit<Axis, 'seams'> } => ({
  x: { ...reach.x, extent: { from: index.bounds.x0, to: index.bounds.x1 } },
  y: { ...reach.y, extent: { from: index.bounds.y0, to: index.bounds.y1 } },
});

/**
 * Cells to a step: finer for few sheets, so that the search costs about the same however large the drawing, and finest where
 * there are so few seams that each must find the narrow gaps between lettering.
 */
const cellsPerStep = (sheets: number): number => (sheets <= fewSheets ? 108 : Math.max(12, Math.min(36, Math.round(Math.sqrt(30_000 / sheets)))));

/** Counted with a row and a column to spare: as far as six in a row, or two rows of three. */
const fewSheets = 12;

const mapOf = ({ index, reach }: Ground): InkMap => {
  const step = { x: reach.x.window - reach.x.overlap, y: reach.y.window - reach.y.overlap };
  const { bounds } = index;
  const cells = cellsPerStep(((bounds.x1 - bounds.x0) / step.x + 1) * ((bounds.y1 - bounds.y0) / step.y + 1));
  return inkMap(index, { x: step.x / cells, y: step.y / cells });
};

/** Given seams inside the drawing, mm as printed. */
const givenSeams = (ground: Ground, side: 'x' | 'y'): number[] => {
  const { given, drawing } = ground.request;
  const asked = side === 'x' ? given?.along ?? [] : given?.across ?? [];
  const extent = extents(ground)[side].extent;
  return asked
    .map((at) => transformPoint(ground.toPage, { x: drawing.datum.x + at, y: drawing.datum.y + at })[side])
    .filter((at) => at > extent.from && at < extent.to)
    .sort((a, b) => a - b);
};

const planOf = (ground: Ground, grid: Grid, tiles: readonly GridTile[], of: { cut: Cutter; map: InkMap; plainSheets: number }): TilePlan => ({
  drawing: ground.request.drawing, frame: ground.request.frame, toPage: ground.toPage, grid, ...of, groups: groupCount(tiles),
  datum: transformPoint(ground.toPage, ground.request.drawing.datum),
  tiles, ...seamTally(grid, ground.wishes),
});

/** The grids that the search finds, the best first; seams that are given stay where they are. */
const searched = (ground: Ground, map: InkMap, lean: boolean): Grid[] => {
  const base = extents(ground);
  const costs = (side: 'x' | 'y', count: number): Float64Array =>
    seamCosts(ground.wishes[side], map.origin[side], map.cell[side], count);
  const given = { x: givenSeams(ground, 'x'), y: givenSeams(ground, 'y') };
  const bordersOf = (side: 'x' | 'y', count: number): number[] =>
    [0, ...given[side].map((at) => Math.round((at - map.origin[side]) / map.cell[side])), count];
  const fixed = {
    ...(given.x.length > 0 && { x: bordersOf('x', map.columns) }),
    ...(given.y.length > 0 && { y: bordersOf('y', map.rows) }),
  };
  const found = searchGrid({ map, lean, reach: ground.reach, costs: { x: costs('x', map.columns), y: costs('y', map.rows) }, fixed });
  const seams = (side: 'x' | 'y', borders: readonly number[]): readonly number[] =>
    (given[side].length > 0 ? given[side] : borders.slice(1, -1).map((k) => map.origin[side] + k * map.cell[side]));
  return found.map(({ x, y }) => ({ x: { ...base.x, seams: seams('x', x) }, y: { ...base.y, seams: seams('y', y) } }));
};

const isSingle = ({ index, reach }: Ground, side: 'x' | 'y'): boolean =>
  (side === 'x' ? index.bounds.x1 - index.bounds.x0 : index.bounds.y1 - index.bounds.y0) <= reach[side].window;

/** Seams a full step apart from the top left of the drawing's box. */
const plainGrid = (ground: Ground): Grid => {
  const base = extents(ground);
  return {
    x: { ...base.x, seams: plainSeams(base.x.extent, base.x) },
    y: { ...base.y, seams: plainSeams(base.y.extent, base.y) },
  };
};

/** How many sheets the plain grid takes, those without ink between their seams left out: what the search is held against. */
export const plainGridSheets = (request: TilingRequest, font: Font): number => {
  const ground = groundOf(request, font);
  return inkedTiles(cutter(ground.index), plainGrid(ground), font).length;
};

/** What a plan costs, what weighs most first: sheets that do not hang together, sheets, cuts, seams near what must stay whole, cuts through lettering, seams outside lands. */
const costsOf = (plan: TilePlan): readonly number[] =>
  [plan.groups, plan.tiles.length, plan.cuts, plan.closeSeams, plan.letteringCuts, plan.seamsOutsideLands];

/** Whether a plan costs less in the first thing in which two differ. */
export const isBetter = (a: TilePlan, b: TilePlan): boolean => {
  const [ours, theirs] = [costsOf(a), costsOf(b)];
  const first = ours.findIndex((cost, i) => cost !== theirs[i]);
  return first >= 0 && ours[first]! < theirs[first]!;
};

/** The best of some plans among those of at most `most` sheets; all, where none keeps to that. */
export const bestPlan = (plans: readonly TilePlan[], most: number, better = isBetter): TilePlan => {
  const few = plans.filter((p) => p.tiles.length <= most);
  return (few.length > 0 ? few : plans).reduce((a, b) => (better(b, a) ? b : a));
};

/**
 * Cuts a drawing into sheets of one frame with the best seams found, never with more sheets than the plain grid has. Where
 * seams are given that cannot be, the plan has no sheets: see `isPlanLegal`.
 */
export const planTiles = (request: TilingRequest, font: Font): TilePlan => {
  const ground = groundOf(request, font);
  const [map, cut] = [mapOf(ground), cutter(ground.index)];
  const plain = plainGrid(ground);
  const plainSheets = request.plainSheets ?? inkedTiles(cut, plain, font).length;
  const plan = (grid: Grid): TilePlan => planOf(ground, grid, isGridLegal(grid) ? neededTiles(cut, grid, font) : [], { cut, map, plainSheets });
  const given = (request.given?.along.length ?? 0) + (request.given?.across.length ?? 0) > 0;
  const isRow = isSingle(ground, 'x') || isSingle(ground, 'y');
  const found = [false, ...(isRow ? [] : [true])].flatMap((lean) => searched(ground, map, lean)).map(plan);
  const best = bestPlan(found, plainSheets);
  const isEnough = given || (isRow && best.tiles.length <= plainSheets && best.groups === 1);
  return isEnough ? best : bestPlan([best, plan(plain)], plainSheets);
};

/** Whether all cores of a plan fit their sheets; only given seams can fail this. */
export const isPlanLegal = (plan: TilePlan): boolean => isGridLegal(plan.grid);

const isGridLegal = (grid: Grid): boolean => isLegal(grid.x) && isLegal(grid.y);
