import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { leader } from '../../drawing/leader.js';
import { boxesMeet } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { flattenPath } from '../../geometry/flatten-path.js';
import type { Path } from '../../geometry/path.js';
import { dot, point, type Point } from '../../geometry/point.js';
import { edgeStart } from './board.js';
import { edgeNotes } from './edge-words.js';
import type { RackTop } from './rack-top.js';

/** Steps in which room is looked for, and bare paper about what is found, mm. */
const step = 5;

/** Two leaders inside the board to the template's edge and the finished one, where the front edge runs straight with room over it; none with a flush-trim bit. */
export const edgeLeaders = ({ board, cutter }: RackTop, drawn: readonly Item[], font: Font): Item[] => {
  if (cutter.offset === 0) return [];
  const at = (x: number): Item[] => [
    ...leader({ at: point(x + 4, board.width - cutter.offset), elbow: point(x + 8, board.width - 9), label: edgeNotes.template }),
    ...leader({ at: point(x, board.width), elbow: point(x + 4, board.width - 15), label: edgeNotes.finished, side: 'right' }),
  ];
  const inside = board.width - cutter.offset - 1;
  const taken = drawn.flatMap((item) => (item.kind === 'shape' ? [pathBounds(item.path)] : [])).filter((box) => box.x1 - box.x0 < board.length / 2 || box.y0 > inside);
  for (let x = edgeStart(board) + step; x < board.length - edgeStart(board); x += step) {
    const items = at(x);
    const { x0, y0, x1 } = itemsBounds(items, font);
    const box = { x0: x0 - step, y0: y0 - 2, x1: x1 + step, y1: inside };
    if (x1 < board.length - edgeStart(board) && y0 > board.width / 2 + 2 && !taken.some((other) => boxesMeet(box, other))) return items;
  }
  return [];
};

/** The point of a closed outline farthest along a vector, to 0.01 mm. */
const farthest = (path: Path, way: Point): Point => flattenPath(path, 0.01).reduce((far, p) => (dot(p, way) > dot(far, way) ? p : far));

/** Leaders on the left of an opening to its template's edge, above, and to the finished one, below. */
export const openingLeaders = (opening: Path, outline: Path): Item[] => {
  const left = pathBounds(opening).x0 - 6;
  const [upper, lower] = [farthest(opening, point(-0.8, -0.6)), farthest(outline, point(-0.8, 0.6))];
  return [
    ...leader({ at: upper, elbow: point(left, upper.y - 8), label: edgeNotes.template, side: 'left' }),
    ...leader({ at: lower, elbow: point(left, lower.y + 8), label: edgeNotes.finished, side: 'left' }),
  ];
};
