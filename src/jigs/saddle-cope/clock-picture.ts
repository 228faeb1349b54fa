import { arrow } from '../../drawing/arrow.js';
import type { Item } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { add, point, polar } from '../../geometry/point.js';
import { arcPath, circle, circularArc, line } from '../../geometry/shapes.js';
import { angleLabel } from '../../units/format.js';
import type { SaddleEnd } from './solve.js';

const radius = 8;

/**
 * The branch's end seen from its far end, clock 0 at the right, growing counter-clockwise. At a far end the near throat is
 * marked too, turned back by the twist.
 */
export function clockView(end: SaddleEnd): readonly Item[] {
  // Counter-clockwise on paper is against the page's own turn, which runs from +x down to +y.
  const at = (clock: number, r: number) => add(point(0, 0), polar(-clock, r));
  const tick = (clock: number, part?: string): Item => shape('reference', line(at(clock, radius - 2), at(clock, radius + 2)), part);
  const sweep = { from: 0.35, to: 1.2 };
  const near = -end.twist;
  return [
    shape('edge', circle(point(0, 0), radius), 'clock-round'),
    tick(0, 'clock-throat'), tick(Math.PI / 2), tick(Math.PI), tick(1.5 * Math.PI),
    shape('dimension', arcPath(circularArc(point(0, 0), radius + 3.2, -sweep.from, -sweep.to)), 'clock-way'),
    arrow(at(sweep.to, radius + 3.2), -sweep.to - Math.PI / 2),
    letter(add(at(0, radius + 3), point(0, 1.25)), end.name === 'far' ? 'far throat 0°' : 'throat 0°'),
    letter(at(Math.PI / 2, radius + 4), '90°', { anchor: 'middle' }),
    letter(add(at(1.5 * Math.PI, radius + 3), point(0, 2.5)), '270°', { anchor: 'middle' }),
    ...(end.name === 'near' || Math.abs(Math.cos(near) - 1) < 1e-9 ? [] : [
      shape('hidden', line(point(0, 0), at(near, radius)), 'clock-near-throat'),
      letter(point(-radius, radius + 15), `dashes: near throat, twist ${angleLabel(end.twist)}`),
    ]),
    letter(point(-radius, radius + 10.5), 'seen from the far end'),
  ];
}
