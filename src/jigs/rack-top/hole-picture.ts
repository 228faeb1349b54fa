import { angleDimension } from '../../drawing/angle-dimension.js';
import { arrow } from '../../drawing/arrow.js';
import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, shape } from '../../drawing/items.js';
import { point, type Point } from '../../geometry/point.js';
import { line, polyline } from '../../geometry/shapes.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import type { LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';

/** A section through the board along the lean, the leg going up to the right; top face at y = 0, the mark on it at x = 0. */
export const holePicture = (hole: LegHole, { board: { thickness } }: RackTop, { units }: Context, font: Font): Drawing => {
  const { lean, halfLong, bit } = hole;
  const say = (mm: number): string => lengthLabel(mm, units);
  const slope = Math.tan(lean);
  const at = (x: number, down: number): Point => point(x - down * slope, down);
  const shift = thickness * slope;
  const [left, right] = [-halfLong - shift - 16, halfLong + 28];
  const face = (y: number): Item[] => [
    shape('edge', line(point(left, y), at(-halfLong, y))), shape('edge', line(at(halfLong, y), point(right, y))),
  ];
  const rise = Math.max(20, 0.55 * bit);
  const items: Item[] = [
    ...face(0), ...face(thickness),
    shape('bore', line(at(-halfLong, 0), at(-halfLong, thickness))), shape('bore', line(at(halfLong, 0), at(halfLong, thickness))),
    shape('centre', line(at(0, -rise), at(0, thickness + 6))),
    shape('hidden', polyline([at(-halfLong, -2), at(-halfLong, -0.6 * rise)])), shape('hidden', polyline([at(halfLong, -2), at(halfLong, -0.6 * rise)])),
    ...(lean === 0 ? [] : [
      shape('reference', line(point(0, -2), point(0, -rise))),
      ...angleDimension({ centre: point(0, 0), radius: rise + 1, from: -Math.PI / 2, to: -Math.PI / 2 + lean, label: angleLabel(lean), drawn: [2, rise] }, font),
      shape('dimension', line(point(right - 14, -7), point(right - 4, -7))), arrow(point(right - 2, -7), 0),
      letter(point(right - 2, -10), 'up this way', { anchor: 'end' }),
    ]),
    ...dimension({ from: point(right, 0), to: point(right, thickness), offset: 8, label: say(thickness) }, font),
    ...dimension({ from: at(-halfLong, thickness), to: at(halfLong, thickness), offset: -13, along: 0, label: say(2 * halfLong) }, font),
  ];
  return { name: 'hole-section', title: 'Section through the hole, along the lean', items, whole: true, spine: false, datum: point(0, 0), keepClear: [], lands: [] };
};
