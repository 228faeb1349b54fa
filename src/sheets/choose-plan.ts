import type { Drawing, JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import { UserError } from '../errors/user-error.js';
import { lengthLabel } from '../units/format.js';
import type { Units } from '../units/units.js';
import { boxHeight, boxWidth, type Box } from '../geometry/box.js';
import { isLegal, leastCore, longestCores, seamStep } from './axis.js';
import { indexInk } from './ink-index.js';
import type { LayoutRequest } from './layout-request.js';
import { atLeast, atMost } from './limit-words.js';
import { pageFrame, type PageFrame } from './page-frame.js';
import { patternWords } from './strip-words.js';
import { bestPlan, isBetter, isPlanLegal, plainGridSheets, planTiles, reachOf, type GivenSeams, type TilePlan, type TilingRequest } from './plan-tiles.js';

/** The frames that the wishes allow: upright, lying, or both. */
export const framesOf = (request: LayoutRequest): readonly PageFrame[] => {
  const { paper, wishes, units } = request;
  const turns = { auto: [false, true], portrait: [false], landscape: [true] }[wishes.turn];
  const frames = turns.map((landscape) => pageFrame(paper, wishes.margins, landscape, units));
  for (const frame of frames) refuseOverlap(request, frame);
  return frames;
};

/** A sheet must show more new drawing than overlap, and an overlap must hold a registration mark. */
const refuseOverlap = ({ wishes, units }: LayoutRequest, frame: PageFrame): void => {
  const reach = reachOf(frame, wishes.overlap);
  const most = Math.floor(Math.min(reach.x.window, reach.y.window) / 3);
  if (wishes.overlap >= leastOverlap && wishes.overlap <= most) return;
  const [low, high] = [atLeast(leastOverlap, units), atMost(most, units)];
  throw new UserError(undefined, [{
    code: wishes.overlap > most ? 'overlap-too-large' : 'overlap-too-small', path: 'sheets.overlap',
    message: wishes.overlap > most
      ? 'the overlap leaves too little of each sheet for new drawing'
      : 'the overlap is too narrow for registration marks',
    got: lengthLabel(wishes.overlap, units), allowed: `${low} to ${high} on this paper`,
    nearest: wishes.overlap > most ? high : low,
  }]);
};

/** Registration marks must fit the overlap; mm. */
export const leastOverlap = 9;

const isLong = (plan: TilePlan): boolean => {
  const { x, y } = plan.grid;
  return x.extent.to - x.extent.from > y.extent.to - y.extent.from;
};

/** Of two plans alike in all else, the one with the paper's long edge along the drawing: paper grows least along its grain. */
const isPreferred = (a: TilePlan, b: TilePlan): boolean =>
  isBetter(a, b) || (!isBetter(b, a) && a.frame.landscape === isLong(a) && b.frame.landscape !== isLong(b));

/** A grid of more sheets than this is not even searched: at its thinnest a drawing across it takes some hundreds. */
const mostOfGrid = 100_000;

const refuseVast = (what: string, bounds: Box, frames: readonly PageFrame[], request: LayoutRequest): void => {
  const grid = Math.min(...frames.map((frame) => {
    const reach = reachOf(frame, request.wishes.overlap);
    return Math.ceil(boxWidth(bounds) / seamStep(reach.x)) * Math.ceil(boxHeight(bounds) / seamStep(reach.y));
  }));
  if (grid <= mostOfGrid) return;
  throw new UserError(undefined, [{
    code: 'too-many-sheets', path: 'paper', message: `${what} is too large for this paper`,
    got: `${lengthLabel(boxWidth(bounds), request.units)} by ${lengthLabel(boxHeight(bounds), request.units)}, a grid of ${grid} sheets`, allowed: 'at most 2000 sheets', nearest: 'a larger paper, or a smaller board',
  }]);
};

/** Furthest apart that seams may lie, mm of the drawing. */
const widestSteps = ({ grid, toPage }: TilePlan): { along: number; across: number } =>
  ({ along: longestCores(grid.x).inner / toPage.a, across: longestCores(grid.y).inner / toPage.d });

const refuseSeams = (jig: string, given: GivenSeams, plans: readonly TilePlan[], units: Units): never => {
  const steps = plans.map(widestSteps).map(({ along, across }) => `${atMost(along, units)} along by ${atMost(across, units)} across`);
  const list = (seams: readonly number[]): string => (seams.length === 0 ? 'none' : seams.map((at) => lengthLabel(at, units)).join(', '));
  throw new UserError(undefined, [{
    code: 'seams-not-possible', path: `sheets.seams.${jig}`,
    message: `the seams given for ${jig} leave more between them than a sheet holds, or too little for the marks`,
    got: `along ${list(given.along)}; across ${list(given.across)}`,
    allowed: `seams at most ${steps.join(', or ')} apart, and at least ${atLeast(leastCore(plans[0]!.grid.x), units)}`,
  }]);
};

const turnOf = ({ frame }: TilePlan): string => (frame.landscape ? 'landscape' : 'portrait');

/** Where given seams rule out the turn of the paper that would take fewer sheets: how wide apart they may be there. */
const seamAdvice = (chosen: TilePlan, refused: readonly TilePlan[], free: (plan: TilePlan) => TilePlan, units: Units): string | undefined => {
  const [other] = refused.map((plan) => ({ plan, sheets: free(plan).tiles.length })).filter(({ sheets }) => sheets < chosen.tiles.length);
  if (other === undefined) return undefined;
  const { along, across } = widestSteps(other.plan);
  const limits = [
    ...(isLegal(other.plan.grid.x) ? [] : [`${atMost(along, units)} apart along`]),
    ...(isLegal(other.plan.grid.y) ? [] : [`${atMost(across, units)} apart across`]),
  ];
  return `the seams given fit ${turnOf(chosen)} sheets only, ${chosen.tiles.length} of them. Seams at most ${limits.join(' and ')} `
    + `would go on ${turnOf(other.plan)} sheets: ${other.sheets} may do.`;
};

/**
 * The most plain sheets that a search may bring down to `sheets`: it saved at most 4 sheets in 13, and fewer of many, over
 * sixty outlines on three papers both ways round. A turn of the paper further off than this is not searched.
 */
const inReach = (sheets: number): number => 1.2 * sheets + 4;

/** A plan for each turn of the paper that may win: the one with the fewer plain sheets first, the other where it is in reach. */
const plansFor = (requests: readonly TilingRequest[], font: Font): TilePlan[] => {
  const plans: TilePlan[] = [];
  const counted = requests.map((r) => ({ ...r, plainSheets: plainGridSheets(r, font) }));
  for (const request of counted.sort((a, b) => a.plainSheets - b.plainSheets)) {
    const least = Math.min(...plans.filter(isPlanLegal).map((p) => p.tiles.length));
    if (request.given !== undefined || request.plainSheets <= inReach(least)) plans.push(planTiles(request, font));
  }
  return plans;
};

/**
 * The best way to cut a drawing into sheets over the turns of the paper allowed: fewest sheets, then fewest cuts through
 * what must stay whole, then seams in lands, then the long edge of the paper along the drawing. Refuses given seams that
 * are too far apart for every turn.
 */
export const choosePlan = (drawing: Drawing, jig: JigDrawing, request: LayoutRequest, font: Font): TilePlan => {
  const given = Object.hasOwn(request.wishes.seams, jig.jig) ? request.wishes.seams[jig.jig] : undefined;
  const frames = framesOf(request);
  const index = indexInk(drawing.items, font);
  refuseVast(patternWords(jig, drawing), index.bounds, frames, request);
  const requests = frames.map((frame) => ({
    drawing, frame, correction: request.correction, overlap: request.wishes.overlap, index, ...(given !== undefined && { given }),
  }));
  const plans = plansFor(requests, font);
  const legal = plans.filter(isPlanLegal);
  if (legal.length === 0) return refuseSeams(jig.jig, given ?? { along: [], across: [] }, plans, request.units);
  const best = bestPlan(legal, Math.min(...legal.map((p) => (p.frame.landscape && legal.length > 1 ? Infinity : p.plainSheets))), isPreferred);
  const free = (plan: TilePlan): TilePlan => planTiles({ ...requests.find((r) => r.frame === plan.frame)!, given: { along: [], across: [] } }, font);
  const advice = seamAdvice(best, plans.filter((p) => !legal.includes(p)), free, request.units);
  return advice === undefined ? best : { ...best, advice };
};
