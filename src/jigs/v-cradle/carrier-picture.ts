import { pictureOf } from '../../drawing/arrange.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import type { LineType } from '../../drawing/line-types.js';
import { wasteTicks } from '../../drawing/waste-ticks.js';
import { handsFromBlade } from '../../shop/tools.js';
import { add, point, scale, type Point } from '../../geometry/point.js';
import { line, polyline, rectangle } from '../../geometry/shapes.js';
import type { Carrier } from './carrier.js';
import { carrierPlan, type CarrierPlan } from './carrier-plan.js';

/** Greatest height and width that the carrier is drawn at, mm. */
const drawnHeight = 52;
const drawnWidth = 84;

/** Plan and scale of one picture; everything else is placed by it. */
interface Sight {
  readonly c: Carrier;
  readonly plan: CarrierPlan;
  readonly k: number;
  /** The carrier's corners, from its seat at the fence round to the blade's side, mm of the piece. */
  readonly corners: readonly [Point, Point, Point, Point];
}

const sightOf = (c: Carrier): Sight => {
  const plan = carrierPlan(c);
  const far = c.length - c.endToBlade;
  const corners = [plan.onFence(-c.seatSide), plan.at(far, -c.seatSide), plan.at(far, c.bladeSide), plan.onFence(c.bladeSide)] as const;
  const deepest = Math.max(...corners.map((p) => p.y));
  const widest = Math.max(...corners.map((p) => p.x)) - Math.min(...corners.map((p) => p.x));
  return { c, plan, corners, k: Math.min(drawnHeight / deepest, drawnWidth / widest) };
};

const drawn = ({ k }: Sight, p: Point): Point => scale(p, k);
const path = (sight: Sight, type: LineType, points: readonly Point[], part: string, closed = false): Item =>
  shape(type, polyline(points.map((p) => drawn(sight, p)), closed), part);

/** Where a line through `at` along `way` leaves the carrier for the last time, counted along it. */
const leaves = ({ corners }: Sight, at: Point, way: Point): number => Math.max(0, ...corners.flatMap((a, i) => {
  const b = corners[(i + 1) % corners.length]!;
  const edge = { x: b.x - a.x, y: b.y - a.y };
  const cross = way.x * edge.y - way.y * edge.x;
  if (Math.abs(cross) < 1e-12) return [];
  const from = { x: a.x - at.x, y: a.y - at.y };
  const [along, part] = [(from.x * edge.y - from.y * edge.x) / cross, (from.x * way.y - from.y * way.x) / cross];
  return part >= 0 && part <= 1 ? [along] : [];
}));

/** Part of the round that is kept and the part that comes off, each with its name inside. */
const round = (sight: Sight): Item[] => {
  const { c, plan } = sight;
  const [far, r] = [c.length - c.endToBlade, c.round.diameter / 2];
  const waste = c.greatestWaste;
  const toeAlong = -c.heelToToe / 2;
  return [
    path(sight, 'edge', [plan.at(far * 1.1, -r), plan.toe, plan.heel, plan.at(far * 1.1, r)], 'kept-part'),
    path(sight, 'reference', [plan.toe, plan.at(toeAlong - waste, -r), plan.at(toeAlong - waste, r), plan.heel], 'off-cut'),
    ...wasteTicks(line(drawn(sight, plan.toe), drawn(sight, plan.heel)), { side: 'left', spacing: 5, length: 1.6 }),
  ];
};

/** The line that hands stay behind: beside the blade's, from the fence's face across the whole carrier, its words at the maker's end. */
const hands = (sight: Sight): Item[] => {
  const { c, plan, k } = sight;
  const start = point(-handsFromBlade / Math.cos(c.sawReading), 0);
  const end = add(start, scale(plan.blade, leaves(sight, start, plan.blade) + 9 / k));
  const at = drawn(sight, end);
  return [
    path(sight, 'hidden', [start, end], 'hands-line'),
    letter(point(at.x - 1.5, at.y + 4), 'hands this side', { anchor: 'end' }),
  ];
};

const notes = (sight: Sight): Item[] => {
  const { c, plan, corners } = sight;
  const right = Math.max(...corners.map((p) => drawn(sight, p).x), drawn(sight, plan.heel).x) + 8;
  const far = c.length - c.endToBlade;
  const note = (at: Point, y: number, label: string | string[], end: 'arrow' | 'dot' = 'arrow'): Item[] =>
    leader({ at: drawn(sight, at), elbow: point(right, y), side: 'right', label, end });
  const offCut = plan.at(-c.heelToToe / 2 - c.greatestWaste / 2, c.round.diameter / 4);
  return [
    ...note(plan.toe, 4, c.pair === undefined ? 'toe' : 'toe, long point'),
    ...note(offCut, 10, ['off-cut'], 'dot'),
    ...note(plan.heel, Math.max(drawn(sight, plan.heel).y, 16), c.pair === undefined ? 'heel' : 'heel, throat'),
    ...note(plan.at(far * 0.6, 0), Math.max(drawn(sight, plan.at(far * 0.6, 0)).y, 23), ['kept part,', 'clamped down'], 'dot'),
  ];
};

/** The whole carrier on the saw from above, the maker below: blade's line, kept part and off-cut, the line that hands stay behind. */
export const carrierPicture = (c: Carrier): Drawing => {
  const sight = sightOf(c);
  const { plan, corners, k } = sight;
  const xs = corners.map((p) => drawn(sight, p).x);
  const left = Math.min(...xs, drawn(sight, point(-handsFromBlade / Math.cos(c.sawReading), 0)).x) - 8;
  const right = Math.max(...xs) + 10;
  return pictureOf('carrier-picture', 'Carrier on the saw', [
    shape('reference', rectangle(left, -5, right - left, 5), 'fence-edge'),
    path(sight, 'edge', corners, 'carrier-outline', true),
    path(sight, 'saw', [scale(plan.blade, -9 / k), scale(plan.blade, leaves(sight, point(0, 0), plan.blade) + 4 / k)], 'blade-line'),
    ...round(sight), ...hands(sight),
    letter(point(left, -7), 'fence'),
    ...leader({ at: drawn(sight, scale(plan.blade, -7 / k)), elbow: point(right + 2, -9), label: 'blade', side: 'right' }),
    ...notes(sight),
  ]);
};
