import { angleDimension } from '../../drawing/angle-dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import { shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { distance, point, type Point } from '../../geometry/point.js';
import { line, polyline } from '../../geometry/shapes.js';
import { angleLabel } from '../../units/format.js';
import { asDrawing, blockLines, type Place, size } from './block-picture.js';
import type { DrillGuideSolution } from './solve.js';
import type { Page } from './words.js';
import { offsetOf, surfaceHeight } from './work.js';

/** The picture is no wider than this, mm, but for what stands beside it. */
const greatestWidth = 44;

/** The side view, work level: k, how far the work is shown, and the maps of its places. Heights z and stations x in mm of the work, x from the entry. */
interface View {
  readonly k: number;
  readonly left: number;
  readonly right: number;
  readonly face: number;
  readonly underside: number;
  readonly at: (x: number, z: number) => Point;
  readonly block: Place;
  /** A point beside the bit's axis: `u` square to it, `w` along it from the entry, out of the work. */
  readonly bit: Place;
}

const viewOf = (s: DrillGuideSolution): View => {
  const { block, angle, work, hole, budget } = s;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const entry = surfaceHeight(work, offsetOf(work));
  const face = work.kind === 'round' ? work.radius : 0;
  const thick = work.kind === 'round' ? 2 * work.radius : work.thickness ?? (hole.depth + s.bit.point) * sin + s.drill;
  const bottom = budget.standoff - block.soleAtBore;
  const high = entry + (bottom + block.height) * sin + (block.length / 2) * cos;
  const [left, right] = [-Math.max(0.8 * block.soleLength, hole.depth * cos + s.drill) - 10, Math.max(0.75 * block.soleLength, 20) + 8];
  const k = Math.min(size / (high - face + thick + 20), greatestWidth / (right - left));
  const at = (x: number, z: number): Point => point(k * x, -k * z);
  const bit: Place = (u, w) => at(u * sin + w * cos, entry - u * cos + w * sin);
  return { k, left, right, face, underside: face - thick, at, bit, block: (u, w) => bit(u, w + bottom) };
};

/** The work's face, hidden where the cheeks of a grooved block stand before it, its underside, and a round's axis. */
const workLines = (s: DrillGuideSolution, { k, left, right, face, underside, at }: View): Item[] => {
  const run = (from: number, to: number, type: 'edge' | 'hidden'): Item => shape(type, line(at(from, face), at(to, face)));
  const drop = face - surfaceHeight(s.work, offsetOf(s.work));
  const end = (u: number): number => drop / Math.tan(s.angle) + u / Math.sin(s.angle);
  const [a, b] = [end(-s.block.length / 2), end(s.block.length / 2)];
  return [
    ...(s.sole.depth === 0 ? [run(left, right, 'edge')] : [run(left, a, 'edge'), run(a, b, 'hidden'), run(b, right, 'edge')]),
    shape('edge', line(at(left, underside), at(right, underside))),
    ...(s.work.kind === 'round' ? [shape('centre', line(at(left - 4 / k, 0), at(right + 4 / k, 0)))] : []),
  ];
};

/** The angle on the acute side, past the block's corner. */
const angleItems = ({ s, font }: Page, { k, right, face, at, bit, block }: View): { items: Item[]; reach: number } => {
  const drop = face - surfaceHeight(s.work, offsetOf(s.work));
  const centre = bit(0, drop / Math.sin(s.angle));
  const radius = Math.max(distance(centre, block(s.block.length / 2, s.block.height)), distance(centre, at(right, face))) + 4;
  const dimensioned = s.angle === Math.PI / 2 ? [] : angleDimension({
    centre, radius, from: -s.angle, to: 0, label: angleLabel(s.angle), drawn: [radius, distance(centre, at(right, face))],
  }, font);
  return { items: dimensioned, reach: radius / k + drop / Math.sin(s.angle) };
};

/** Block and bit on the work, side view, work level, acute side to the right. */
export const drillingPicture = (page: Page): Drawing => {
  const { s } = page;
  const view = viewOf(s);
  const { k, underside, bit } = view;
  const half = s.drill / 2;
  const { depth, through } = s.hole;
  const tip = bit(0, -depth - s.bit.point);
  const angle = angleItems(page, view);
  const items = [
    ...blockLines(page, view.block, false), ...workLines(s, view),
    shape('hidden', polyline([bit(-half, 2), bit(-half, -depth), tip, bit(half, -depth), bit(half, 2)])),
    shape('centre', line(bit(0, angle.reach + 3 / k), bit(0, -depth - s.bit.point - 4 / k))),
    ...angle.items,
    ...leader({ at: tip, elbow: point(tip.x - 8, -k * underside + 6), side: 'left', label: through ? 'right through' : 'point' }),
  ];
  return asDrawing('drilling', 'the block on the work', items, page);
};
