import { dimension } from '../../drawing/dimension.js';
import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, shape } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { circle, line } from '../../geometry/shapes.js';
import { lengthMain } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import { isSquare, type SaddleEnd } from './solve.js';

/** The joint seen along the main from the throat's side, branch up, the main below: right is the side of a positive offset. Scale `k`, origin on the main's axis. */
export const endView = (end: SaddleEnd, k: number, units: Units, font: Font): readonly Item[] => {
  const { main, branch, offset } = end.joint;
  const top = -k * (2.6 * main + branch);
  const meets = (x: number): number => -k * Math.sqrt(Math.max(0, (main - x) * (main + x)));
  const side = (x: number): Item => shape('edge', line(point(k * x, meets(x)), point(k * x, top)), 'end-view-side');
  const axisTop = top - 3;
  return [
    shape('edge', circle(point(0, 0), k * main), 'end-view-main'),
    side(offset - branch), side(offset + branch),
    shape('edge', line(point(k * (offset - branch), top), point(k * (offset + branch), top))),
    shape('centre', line(point(-k * main - 3, 0), point(k * main + 3, 0))),
    shape('centre', line(point(0, k * main + 3), point(0, offset === 0 ? axisTop : -k * main - 3))),
    ...(offset === 0 ? [] : [
      shape('centre', line(point(k * offset, 0), point(k * offset, axisTop))),
      ...dimension({
        from: point(0, k * main + 3), to: point(k * offset, k * main + 3), offset: offset > 0 ? -5 : 5, label: `offset ${lengthMain(Math.abs(offset), units)}`,
      }, font),
    ]),
    letter(point(0, k * main + (offset === 0 ? 8 : 15)), isSquare(end) ? 'seen from clock 0' : 'seen from the throat', { height: 1.8, anchor: 'middle' }),
  ];
};
