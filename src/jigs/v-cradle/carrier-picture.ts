import type { Drawing, Item } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { add, point, scale } from '../../geometry/point.js';
import { line, polyline, rectangle } from '../../geometry/shapes.js';
import { scaling, transformPath, transformPoint } from '../../geometry/transform.js';
import type { Carrier } from './carrier.js';
import { carrierPlan } from './carrier-plan.js';
import { handsFromBlade } from './limits.js';

/** Height that the carrier is drawn at, mm. */
const drawnHeight = 48;

/** The whole carrier on the saw from above, blade's line and the line that hands stay behind. Not to scale. */
export const carrierPicture = (c: Carrier): Drawing => {
  const plan = carrierPlan(c);
  const [far, r] = [c.length - c.endToBlade, c.round.diameter / 2];
  const corners = [plan.onFence(c.bladeSide), plan.onFence(-c.seatSide), plan.at(far, -c.seatSide), plan.at(far, c.bladeSide)];
  const deepest = Math.max(...corners.map((p) => p.y));
  const k = Math.min(drawnHeight / deepest, 75 / Math.max(...corners.map((p) => Math.abs(p.x))));
  const map = scaling(k, k);
  const draw = (type: 'cut' | 'saw' | 'hidden' | 'reference', points: readonly { x: number; y: number }[], closed = false): Item =>
    shape(type, transformPath(map, polyline(points, closed)));
  const drawn = (p: { x: number; y: number }) => transformPoint(map, p);
  const left = Math.min(...corners.map((p) => p.x)) * k - 12;
  const right = Math.max(...corners.map((p) => p.x)) * k + 12;
  // The line that hands stay behind runs along the blade's, its distance square to it, on the carrier's side.
  const off = add(scale(point(-Math.cos(c.sawReading), -Math.sin(c.sawReading)), handsFromBlade), point(0, 0));
  const end = (deepest + 12) / Math.cos(c.sawReading);
  const handsLine = [add(off, scale(plan.blade, 30)), add(off, scale(plan.blade, end))];
  return {
    name: 'carrier-picture', title: 'Carrier on the saw', whole: true, spine: false, datum: point(0, 0), keepClear: [], lands: [],
    items: [
      shape('reference', rectangle(left, -5, right - left, 5)),
      draw('cut', corners, true),
      draw('reference', [plan.heel, plan.at(far * 1.12, r), plan.at(far * 1.12, -r), plan.toe]),
      draw('saw', [scale(plan.blade, -10 / k), scale(plan.blade, Math.min(end, 2 * c.bladeToAxis + 10 / k))]),
      draw('hidden', handsLine),
      letter(point(left, -7), 'fence'),
      ...leader({ at: drawn(scale(plan.blade, -7 / k)), elbow: point(right + 2, -9), label: 'blade', side: 'right' }),
      letter(add(drawn(handsLine[0]!), point(-2.5, 3)), 'hands', { anchor: 'end' }), letter(add(drawn(handsLine[0]!), point(-2.5, 7)), 'this side', { anchor: 'end' }),
      ...leader({ at: drawn(plan.at(far * 0.75, 0)), elbow: point(right + 2, Math.max(drawn(plan.at(far * 0.6, 0)).y, 12)), label: 'clamp', side: 'right', end: 'dot' }),
      ...leader({ at: drawn(plan.toe), elbow: point(right + 2, drawn(plan.toe).y + 2), label: 'toe', side: 'right' }),
      shape('centre', line(drawn(plan.onFence(0)), drawn(plan.at(far * 1.15, 0)))),
    ],
  };
};
