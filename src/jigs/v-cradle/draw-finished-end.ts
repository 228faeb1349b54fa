import { angleDimension } from '../../drawing/angle-dimension.js';
import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, shape } from '../../drawing/items.js';
import { wasteTicks } from '../../drawing/waste-ticks.js';
import { add, point, polar, type Point } from '../../geometry/point.js';
import { circle, ellipse, line, polyline } from '../../geometry/shapes.js';
import { degrees } from '../../units/units.js';
import type { Carrier } from './carrier.js';
import { patternLettering } from './pattern-lettering.js';
import type { Say } from './words.js';

/** Whole round shown before the heel, mm. */
const stub = 40;

/** Side view: axis along y = 0, heel above at x = stub, toe below at x = stub + heelToToe. */
const sideView = (c: Carrier, say: Say, font: Font): Item[] => {
  const r = c.round.diameter / 2;
  const heel = point(stub, -r);
  const toe = point(stub + c.heelToToe, r);
  return [
    shape('edge', polyline([point(0, -r), heel, toe, point(0, r)]), 'finished-side'),
    ...wasteTicks(line(heel, toe), { side: 'left', spacing: 8 }),
    shape('reference', polyline([point(0, -r), point(0, -r / 4), point(-3, -r / 8), point(3, r / 8), point(0, r / 4), point(0, r)])),
    shape('centre', line(point(-6, 0), point(stub - 18, 0))),
    ...dimension({ from: heel, to: toe, along: 0, offset: 9, label: `heel to toe ${say.length(c.heelToToe)}` }, font),
    ...angleDimension({ centre: toe, radius: Math.max(14, 6 / c.sharpAngle), from: Math.PI, to: Math.PI + c.sharpAngle, label: say.angle(c.sharpAngle) }, font),
    letter(point(toe.x + 2, toe.y + 1), 'toe'), letter(point(heel.x - 3, heel.y - 2), 'heel', { anchor: 'end' }),
  ];
};

/** The cut face square on: an ellipse d by d / sin α. */
const faceView = (c: Carrier, centre: Point, say: Say, font: Font): Item[] => {
  const r = c.round.diameter / 2;
  const half = c.faceLength / 2;
  return [
    shape('edge', ellipse(centre, half, r, 0), 'end-face'),
    shape('centre', line(point(centre.x - half - 3, centre.y), point(centre.x + half + 3, centre.y))),
    shape('centre', line(point(centre.x, centre.y - r - 3), point(centre.x, centre.y + r + 3))),
    letter(point(centre.x - half - 5, centre.y + 1.25), 'heel', { anchor: 'end' }), letter(point(centre.x + half + 5, centre.y + 1.25), 'toe'),
    ...dimension({ from: point(centre.x - half, centre.y), to: point(centre.x + half, centre.y), offset: -(r + 9), label: `face ${say.length(c.faceLength)}` }, font),
    ...dimension({ from: point(centre.x, centre.y + r), to: point(centre.x, centre.y - r), offset: -(half + 20), label: say.length(2 * r) }, font),
  ];
};

/** Seen from the other end: this end's toe points down, the other's stands `twist` from it, counter-clockwise. */
const twistView = (c: Carrier, twist: number, centre: Point, say: Say): Item[] => {
  const r = c.round.diameter / 2;
  const mark = (angle: number, part: string, label: string, anchor: 'start' | 'end'): Item[] => [
    shape('reference', line(centre, add(centre, polar(angle, r + 4))), part),
    letter(add(centre, add(polar(angle, r + 5.5), point(0, 1.25))), label, { anchor }),
  ];
  const aside = twist > 0 ? ['end', 'start'] as const : ['start', 'end'] as const;
  return [
    shape('edge', circle(centre, r), 'twist-view'),
    ...mark(Math.PI / 2, 'twist-here', 'this toe', aside[0]),
    ...mark(Math.PI / 2 - twist, 'twist-other', 'other toe', aside[1]),
    letter(point(centre.x, centre.y + r + 17), `other end seen: turn ${say.angle(twist)},`, { anchor: 'middle' }),
    letter(point(centre.x, centre.y + r + 21), `${say.length(Math.abs(twist) * r)} round the girth`, { anchor: 'middle' }),
  ];
};

const lettering = (c: Carrier, name: string, say: Say, { at, font }: { at: Point; font: Font }): Item[] => patternLettering(at, `${name}: finished end of ${c.round.name}`, [
  `From the axis ${say.slope(c.sharpAngle)}.`,
  `From square ${say.slope(Math.PI / 2 - c.sharpAngle)}.`,
  `On the saw's gauge ${say.angle(c.sawReading)}, with the round turned ${say.angle(c.turn)} from the fence.`,
  `Half a degree out moves the toe ${say.length(c.toeShift)}.`,
], font);

/** The finished end, true size: side view (`finished-side`), the face square on (`end-face`), and how the other end is turned to it. */
export const drawFinishedEnd = (c: Carrier, name: string, { say, font }: { say: Say; font: Font }): Drawing => {
  const r = c.round.diameter / 2;
  const face = point(Math.max(stub + c.heelToToe - c.faceLength / 2, c.faceLength / 2 + 14), 2 * r + 14);
  const twisted = c.twist !== undefined && Math.abs(degrees(c.twist)) > 1e-9;
  const drop = twisted ? 4 * r + 44 : 3 * r + 36;
  return {
    name: 'finished-end', title: `finished end of ${c.round.name}`, whole: true, spine: false,
    datum: point(0, -r), keepClear: [], lands: [],
    items: [
      ...sideView(c, say, font), ...faceView(c, face, say, font),
      ...(twisted ? twistView(c, c.twist, point(r + 20, drop), say) : []),
      ...lettering(c, name, say, { at: point(0, twisted ? drop + r + 32 : drop), font }),
    ],
  };
};
