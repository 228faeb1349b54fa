import type { Item } from '../drawing/drawing.js';
import { fitText } from '../drawing/fit-text.js';
import type { Font } from '../drawing/font.js';
import { letter, shape } from '../drawing/items.js';
import type { Box } from '../geometry/box.js';
import { point } from '../geometry/point.js';
import { rectangle } from '../geometry/shapes.js';

/** Numbers of the sheets that meet this one's edges; absent where there is none. */
export interface Neighbours {
  readonly left?: string;
  readonly right?: string;
  readonly above?: string;
  readonly below?: string;
}

const small = 1.8;

/** The largest lettering of ISO 3098 in which a number fits. */
const codeHeight = (code: string, width: number, most: number, font: Font): number =>
  [7, 5, 3.5, 2.5].find((h) => h <= most && font.width(code, h) <= width) ?? small;

/** A sheet's number in a frame, and the numbers of its neighbours at the sides where they lie. */
export const codeBlock = (box: Box, code: string, neighbours: Neighbours | undefined, font: Font): Item[] => {
  const middle = (box.x0 + box.x1) / 2;
  const frame = shape('reference', rectangle(box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0));
  const side = neighbours === undefined ? 1 : 5.5;
  const rise = neighbours === undefined ? 1 : 3.2;
  const height = codeHeight(code, box.x1 - box.x0 - 2 * side, box.y1 - box.y0 - 2 * rise, font);
  const base = (box.y0 + box.y1 + height) / 2;
  const big = letter(point(middle, base), fitText(code, box.x1 - box.x0 - 2 * side, height, font), { height, anchor: 'middle', part: 'sheet-code' });
  if (neighbours === undefined) return [frame, big];
  const level = (box.y0 + box.y1 + small) / 2;
  const set = (x: number, y: number, text: string | undefined, anchor: 'start' | 'middle' | 'end', part: string): Item[] =>
    (text === undefined ? [] : [letter(point(x, y), fitText(text, anchor === 'middle' ? 2 * side : side, small, font), { height: small, anchor, part })]);
  return [
    frame, big,
    ...set(box.x0 + 0.7, level, neighbours.left, 'start', 'left-of-sheet'),
    ...set(box.x1 - 0.7, level, neighbours.right, 'end', 'right-of-sheet'),
    ...set(middle, box.y0 + 0.6 + small, neighbours.above, 'middle', 'above-sheet'),
    ...set(middle, box.y1 - 0.8, neighbours.below, 'middle', 'below-sheet'),
  ];
};
