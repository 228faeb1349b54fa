import type { Drawing, Item } from '../../drawing/drawing.js';
import { letter, moveItems, shape } from '../../drawing/items.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { leader } from '../../drawing/leader.js';
import { angleDimension } from '../../drawing/angle-dimension.js';
import { point, type Point } from '../../geometry/point.js';
import { line, polyline } from '../../geometry/shapes.js';
import { angleLabel } from '../../units/format.js';
import { planeOverBottom, soleOverBottom } from './frame.js';
import type { Page } from './words.js';
import { offsetOf, surfaceHeight } from './work.js';

/** Size of a picture's greater side, mm. */
const size = 60;

type Place = (u: number, w: number) => Point;

const asDrawing = (name: string, title: string, items: readonly Item[], page: Page): Drawing => {
  const box = itemsBounds(items, page.font);
  return {
    name, title, whole: true, spine: false, datum: point(0, 0), keepClear: [], lands: [],
    items: [letter(point(0, 2.5), title), ...moveItems(items, -box.x0, 8 - box.y0)],
  };
};

/** Block, bore and sole in true proportions, `place` maps u from the bore's axis and height over the blank's bottom. */
const blockLines = ({ s }: Page, place: Place, blank: boolean): Item[] => {
  const { block, angle, drill } = s;
  const half = block.length / 2;
  const across = offsetOf(s.work);
  const bore = (u: number): Item => shape('hidden', line(place(u, block.height), place(u, soleOverBottom(s, u, across))));
  const sole = [place(-half, planeOverBottom(block, angle, -half)), place(half, planeOverBottom(block, angle, half))] as const;
  return [
    shape('cut', polyline([place(-half, block.height), place(half, block.height), sole[1], sole[0]], true)),
    ...(blank && angle < Math.PI / 2 ? [shape('reference', polyline([sole[0], place(half, 0), sole[1]]))] : []),
    bore(-drill / 2), bore(drill / 2),
  ];
};

/** The blank with its bore and the sole's line, side view, block upright. */
export const blockPicture = (page: Page): Drawing => {
  const { s, name, font } = page;
  const { block, angle } = s;
  const k = size / Math.max(block.height, 1.4 * block.length);
  const half = block.length / 2;
  const place: Place = (u, w) => point(k * u, -k * w);
  const foot = place(0, planeOverBottom(block, angle, 0));
  const tilted = angle < Math.PI / 2;
  const items = [
    ...blockLines(page, place, true),
    shape('centre', line(place(0, block.height + 4 / k), tilted ? place(0, -6 / k) : foot)),
    ...leader({ at: place(-half / 2 - s.drill / 4, block.height), elbow: point(-k * half - 5, -k * block.height - 4), side: 'left', label: ['top: bore', 'square from here'] }),
    ...leader({ at: place(0.8 * half, planeOverBottom(block, angle, 0.8 * half)), elbow: point(k * half + 6, -k * planeOverBottom(block, angle, 0.8 * half) - 5), side: 'right', label: ['sole: saw', 'after boring'] }),
    ...(tilted ? [...angleDimension({
      centre: foot, radius: Math.max(11, 0.5 * k * half), from: Math.PI / 2 - angle - Math.PI / 2, to: Math.PI / 2 - Math.PI / 2, label: '', drawn: [0, 0],
    }, font).slice(0, 0)] : []),
  ];
  return asDrawing('block', `${name}: the block from its left side, not to scale`, items, page);
};

/** Block and bit on the work, side view, work level. */
export const drillingPicture = (page: Page): Drawing => {
  const { s, name, font } = page;
  const { block, angle, work, hole, drill, budget } = s;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const across = offsetOf(work);
  const surface = surfaceHeight(work, across);
  const entry = surface / sin;
  const below = work.kind === 'round' ? 2 * work.radius : work.thickness ?? (hole.depth + s.bit.point) * sin + drill;
  const face = work.kind === 'round' ? work.radius : 0;
  const bottom = entry + budget.standoff - block.soleAtBore;
  // u, w of the block's frame to x along the work and z off it.
  const xz = (u: number, w: number): readonly [number, number] => [u * sin + (w - entry) * cos, -u * cos + w * sin];
  const high = Math.max(...[-1, 1].map((side) => xz((side * block.length) / 2, bottom + block.height)[1]));
  const k = size / (high - face + below + 20);
  const map = ([x, z]: readonly [number, number]): Point => point(k * x, -k * z);
  const place: Place = (u, w) => map(xz(u, bottom + w));
  const along: Place = (u, w) => map(xz(u, w));
  const end = entry - hole.depth;
  const reach = Math.max(1.1 * block.soleLength, hole.markShift + drill) + 10;
  const [left, right] = [-reach, Math.max(0.75 * block.soleLength, 20)];
  const tip = along(0, end - s.bit.point);
  const edge = (z: number): Item => shape('cut', line(map([left, z]), map([right, z])));
  const items = [
    ...blockLines(page, place, false),
    edge(face), edge(face - below),
    shape('hidden', polyline([along(-drill / 2, entry + 2), along(-drill / 2, end), tip, along(drill / 2, end), along(drill / 2, entry + 2)])),
    shape('centre', line(along(0, bottom + block.height + 12 / k), along(0, end - s.bit.point - 4 / k))),
    ...(work.kind === 'round' ? [shape('centre', line(map([left - 4 / k, 0]), map([right + 4 / k, 0])))] : []),
    ...angleDimension({
      centre: map([0, face]), radius: k * right + 4, from: -angle, to: 0, label: angleLabel(angle), drawn: [0, k * right],
    }, font).slice(0, 0),
    ...leader({ at: tip, elbow: point(tip.x - 8, -k * (face - below) + 6), side: 'left', label: hole.through ? 'right through' : 'point' }),
  ];
  return asDrawing('drilling', `${name}: block on the work, not to scale`, items, page);
};
