import { angleDimension } from '../../drawing/angle-dimension.js';
import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { moveItems, shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { fitCurve } from '../../geometry/fit-curve.js';
import { add, point, scale, type Point } from '../../geometry/point.js';
import { saddleHeight, saddleSlope } from '../../geometry/saddle.js';
import { wingParameters } from '../../geometry/saddle-curve.js';
import { line, polyline } from '../../geometry/shapes.js';
import { angleLabel } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import { endView } from './end-view.js';
import { offsetOverMain } from './side-words.js';
import { isSquare, type SaddleEnd } from './solve.js';

/** Size of the side view, from below the main to the branch's end, mm. */
const size = 58;

/** Side view of the joint, square to both axes: x along the main, y down, origin at the crossing; a map from mm of the piece. */
interface SideFrame {
  readonly k: number;
  /** A point of the branch from its clock angle and its height; `side` of the axis for points of the surface. */
  readonly onBranch: (height: number, across: number) => Point;
}

/** Height at which the picture cuts the branch off, mm of the piece. */
const topOf = ({ joint, crest, pin }: SaddleEnd): number =>
  Math.max(crest + 2.2 * joint.main, pin === undefined ? 0 : joint.main / Math.sin(joint.angle) + pin.intoBranch + 0.4 * joint.main);

const sideFrame = (end: SaddleEnd): SideFrame => {
  const { main, angle } = end.joint;
  const k = size / (topOf(end) + 1.5 * main);
  const along = point(Math.cos(angle), -Math.sin(angle));
  const throatward = point(Math.sin(angle), Math.cos(angle));
  return { k, onBranch: (height, across) => scale(add(scale(along, height), scale(throatward, across)), k) };
};

/** The cut edge in the side view between two clock angles. */
const edge = ({ joint }: SaddleEnd, { onBranch }: SideFrame, from: number, to: number) => fitCurve({
  point: (phi) => onBranch(saddleHeight(joint, phi), joint.branch * Math.cos(phi)),
  slope: (phi, side) => onBranch(saddleSlope(joint, phi, side), -joint.branch * Math.sin(phi)),
}, { from, to, tolerance: 0.01, breaks: wingParameters(from, to) });

/** How far the picture shows the main to the left and to the right of the crossing, mm of the picture. */
const mainReach = (end: SaddleEnd, { k, onBranch }: SideFrame): readonly [number, number] => {
  const { main, branch } = end.joint;
  return [
    Math.min(-1.8 * k * main, onBranch(end.longPoint, -branch).x - 0.8 * k * main),
    Math.max(1.8 * k * main, onBranch(end.throat, branch).x + 0.8 * k * main),
  ];
};

const sideView = (end: SaddleEnd, frame: SideFrame): readonly Item[] => {
  const { main, branch } = end.joint;
  const { k, onBranch } = frame;
  const top = topOf(end);
  const [left, right] = mainReach(end, frame);
  const mainEdge = (y: number): Item => shape('edge', line(point(left, y), point(right, y)));
  const rim = (across: number, height: number): Item => shape('edge', line(onBranch(height, across), onBranch(top, across)));
  return [
    mainEdge(-k * main), mainEdge(k * main),
    rim(branch, end.throat), rim(-branch, end.longPoint),
    shape('edge', line(onBranch(top, -branch), onBranch(top, branch))),
    shape('edge', edge(end, frame, Math.PI, 2 * Math.PI), 'joint-edge'),
    ...(end.joint.offset === 0 ? [] : [shape('hidden', edge(end, frame, 0, Math.PI), 'joint-edge-behind')]),
    shape('centre', line(point(left - 3, 0), point(right + 3, 0)), 'joint-main-axis'),
    shape('centre', line(onBranch(-0.3 * main, 0), onBranch(top + 3 / k, 0)), 'joint-branch-axis'),
    ...pinLines(end, frame),
  ];
};

const pinLines = ({ joint, pin }: SaddleEnd, { onBranch }: SideFrame): readonly Item[] => {
  if (pin === undefined) return [];
  const entry = Math.sqrt((joint.main - joint.offset) * (joint.main + joint.offset)) / Math.sin(joint.angle);
  const [low, high] = [entry - pin.intoMain, entry + pin.intoBranch];
  const half = pin.diameter / 2;
  const corners = [onBranch(low, -half), onBranch(high, -half), onBranch(high, half), onBranch(low, half)];
  return [shape('hidden', polyline(corners, true), 'joint-pin')];
};

const callOuts = (end: SaddleEnd, frame: SideFrame, font: Font): readonly Item[] => {
  const { main, branch, angle } = end.joint;
  const { k, onBranch } = frame;
  const throat = onBranch(end.throat, branch);
  const long = onBranch(end.longPoint, -branch);
  const [left, right] = mainReach(end, frame);
  const radius = k * topOf(end) + 6;
  const square = isSquare(end);
  return [
    ...(square ? [] : [
      ...leader({ at: throat, elbow: point(throat.x + 5, k * main + 7), label: ['THROAT', 'acute side'], side: 'right' }),
      ...leader({ at: long, elbow: point(Math.min(long.x - 5, left + 4), long.y - 9), label: ['LONG POINT', 'obtuse side'], side: 'left' }),
      ...angleDimension({
        centre: point(0, 0), radius, from: -angle, to: 0, label: angleLabel(angle), drawn: [radius - 3, right + 3],
      }, font),
    ]),
  ];
};

/**
 * The end as it is drawn, its branch going up from the main. A far end so stands on its head: what was right is left, so the
 * offset changes its sign, and with it the side that faces the reader.
 */
const upright = (end: SaddleEnd): SaddleEnd => ({ ...end, joint: { ...end.joint, offset: offsetOverMain(end) } });

/** One joint in its true proportions: side view, and the view along the main where the offset shows. */
export const jointViews = (of: SaddleEnd, units: Units, font: Font): readonly Item[] => {
  const end = upright(of);
  const frame = sideFrame(end);
  const side = [...sideView(end, frame), ...callOuts(end, frame, font)];
  const beside = endView(end, frame.k, units, font);
  // The main stands at one level in both views.
  return [...side, ...moveItems(beside, itemsBounds(side, font).x1 + 8 - itemsBounds(beside, font).x0, 0)];
};
