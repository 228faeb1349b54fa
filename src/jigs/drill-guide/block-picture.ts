import type { Drawing, Item } from '../../drawing/drawing.js';
import { fitText } from '../../drawing/fit-text.js';
import { letter, moveItems, shape } from '../../drawing/items.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { leader } from '../../drawing/leader.js';
import { angleDimension } from '../../drawing/angle-dimension.js';
import { add, point, type Point } from '../../geometry/point.js';
import { line, polyline } from '../../geometry/shapes.js';
import { angleLabel } from '../../units/format.js';
import { isSawn } from './draw-faces.js';
import { planeOverBottom, soleOverBottom } from './frame.js';
import type { Page } from './words.js';
import { offsetOf } from './work.js';

/** Height of a picture, mm. */
export const size = 46;

/** Where a point of the block lies in a picture: u from the bore's axis, w over the blank's bottom, mm of the block. */
export type Place = (u: number, w: number) => Point;

/** Items as a picture with its title over them. */
export const asDrawing = (name: string, title: string, items: readonly Item[], page: Page): Drawing => {
  const box = itemsBounds(items, page.font);
  return {
    name, title, whole: true, spine: false, datum: point(0, 0), keepClear: [], lands: [],
    items: [letter(point(0, 2.5), fitText(title, 80, 2.5, page.font)), ...moveItems(items, -box.x0, 8 - box.y0)],
  };
};

/** Block, bore and sole in true proportions, `place` maps u from the bore's axis and height over the blank's bottom. */
export const blockLines = ({ s }: Page, place: Place, blank: boolean): Item[] => {
  const { block, angle, drill } = s;
  const half = block.length / 2;
  const across = offsetOf(s.work);
  const crown = s.sole.depth / Math.sin(angle);
  const bore = (u: number): Item => shape('hidden', line(place(u, block.height), place(u, soleOverBottom(s, u, across))));
  const sole = [place(-half, planeOverBottom(block, angle, -half)), place(half, planeOverBottom(block, angle, half))] as const;
  return [
    shape('edge', polyline([place(-half, block.height), place(half, block.height), sole[1], sole[0]], true)),
    ...(blank && angle < Math.PI / 2 ? [shape('reference', polyline([sole[0], place(half, 0), sole[1]]))] : []),
    bore(-drill / 2), bore(drill / 2),
    ...(crown === 0 ? [] : [shape('hidden', line(
      place(-half, planeOverBottom(block, angle, -half) + crown), place(half, planeOverBottom(block, angle, half) + crown)))]),
  ];
};

/** The long blank going on beyond the obtuse end, broken off, with the cut that parts the block from it last. */
const longBlankLines = ({ s: { block } }: Page, place: Place): Item[] => {
  const half = block.length / 2;
  const far = -half - 0.5 * block.length;
  return [
    shape('reference', line(place(-half, block.height), place(far, block.height)), 'long-blank'), shape('reference', line(place(-half, 0), place(far, 0)), 'long-blank'),
    shape('saw', line(place(-half, block.height + 0.06 * block.height), place(-half, -0.06 * block.height)), 'cut-off-last'),
    ...leader({
      at: place(far + 0.1 * block.length, 0.4 * block.height), elbow: add(place(far, 0.4 * block.height), point(-3, 6)), side: 'left', end: 'dot', label: ['long blank:', 'cut off last'],
    }),
  ];
};

/** The blank with its bore and the sole's line, side view, block upright. */
export const blockPicture = (page: Page): Drawing => {
  const { s, font } = page;
  const { block, angle } = s;
  const k = size / Math.max(block.height, 1.4 * block.length);
  const half = block.length / 2;
  const place: Place = (u, w) => point(k * u, -k * w);
  const foot = place(0, planeOverBottom(block, angle, 0));
  const tilted = angle < Math.PI / 2;
  const corner = (k * half) / Math.sin(angle);
  const items = [
    ...blockLines(page, place, true),
    shape('centre', line(place(0, block.height + 4 / k), tilted ? point(foot.x, foot.y + corner) : foot)),
    ...leader({ at: place(-half / 2 - s.drill / 4, block.height), elbow: point(-k * half - 3, -k * block.height - 4), side: 'left', label: ['bore', 'from here'] }),
    ...leader({ at: place(half, block.height - block.shortEnd / 4), elbow: point(k * half + 4, -k * block.height - 4), side: 'right', label: tilted ? 'acute end' : 'front' }),
    ...(isSawn(s) ? [
      ...leader({ at: place(0.8 * half, planeOverBottom(block, angle, 0.8 * half)), elbow: point(k * half + 4, -k * planeOverBottom(block, angle, 0.8 * half) - 5), side: 'right', label: ['sole: saw', 'after boring'] }),
      ...longBlankLines(page, place),
    ] : []),
    // Beyond the corner of the waste, so that the arc lies wholly outside the blank.
    ...(tilted ? angleDimension({
      centre: foot, radius: corner + 4, from: Math.PI / 2, to: Math.PI / 2 + angle, label: angleLabel(angle), drawn: [corner, corner],
    }, font) : []),
  ];
  return asDrawing('block', 'the block from its left side', items, page);
};
