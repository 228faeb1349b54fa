import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, moveItems, shape } from '../../drawing/items.js';
import { dimension } from '../../drawing/dimension.js';
import type { Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { circularArc, line, rectangle } from '../../geometry/shapes.js';
import { splinePlay } from '../../shop/router.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import type { RackTop } from './rack-top.js';

/** How far each half is shown beyond its groove, mm. */
const beyond = 16;

/** Half the spline's width: narrower than its two grooves together. mm. */
export const splineHalf = ({ groove }: RackTop['spline']): number => groove - splinePlay / 2;

/** The spline, or with `half` the two grooves, seen from above: rounded by the cutter that stops short of both edges. */
const splinePlan = ({ margin }: RackTop['spline'], half: number, width: number): Path => {
  const r = Math.min(half, (width - 2 * margin) / 2);
  const groove = half;
  return {
    start: point(-groove, margin + r), closed: true,
    segments: [
      { ...circularArc(point(-groove + r, margin + r), r, Math.PI, 1.5 * Math.PI) }, { kind: 'line', to: point(groove - r, margin) },
      circularArc(point(groove - r, margin + r), r, -Math.PI / 2, 0), { kind: 'line', to: point(groove, width - margin - r) },
      circularArc(point(groove - r, width - margin - r), r, 0, Math.PI / 2), { kind: 'line', to: point(-groove + r, width - margin) },
      circularArc(point(-groove + r, width - margin - r), r, Math.PI / 2, Math.PI),
    ],
  };
};

const planItems = (top: RackTop, number: number, words: readonly string[]): Item[] => {
  const { board, spline } = top;
  const reach = spline.groove + beyond;
  const edge = (y: number): Item => shape('edge', line(point(-reach, y), point(reach, y)), 'joint-edge');
  const across = (y: number): Item => shape('reference', line(point(-reach, y), point(reach, y)), 'joint-witness');
  return [
    shape('edge', line(point(0, 0), point(0, board.width)), `joint-line-${number}`),
    edge(0), edge(board.width), across(board.width / 4), across((3 * board.width) / 4),
    shape('hidden', splinePlan(spline, splineHalf(spline), board.width), `spline-${number}`),
    shape('reference', splinePlan(spline, spline.groove, board.width), `grooves-${number}`),
    ...words.map((text, i) => letter(point(-reach, -6 - 4.4 * (words.length - 1 - i) - (i === 0 ? 1 : 0)), text, { height: i === 0 ? 3.5 : 2.5 })),
    ...[board.width / 4, (3 * board.width) / 4].map((y) => letter(point(reach + 2, y + 1.25), 'level line: draw it across both parts', {})),
    letter(point(-spline.groove - 4, board.width / 2), 'LEFT PART', { anchor: 'middle', turn: -Math.PI / 2 }),
    letter(point(spline.groove + 6, board.width / 2), 'RIGHT PART', { anchor: 'middle', turn: -Math.PI / 2 }),
    letter(point(-reach, board.width + 5), 'front edge', {}),
  ];
};

const sectionItems = (top: RackTop, say: (mm: number) => string, font: Font): Item[] => {
  const { board: { thickness }, spline } = top;
  const reach = spline.groove + beyond;
  const y = (thickness - spline.thickness) / 2;
  return [
    shape('edge', rectangle(-reach, 0, 2 * reach, thickness), 'joint-section'), shape('edge', line(point(0, 0), point(0, y))),
    shape('edge', line(point(0, thickness - y), point(0, thickness))), shape('reference', rectangle(-spline.groove, y, 2 * spline.groove, spline.thickness), 'joint-grooves'),
    shape('edge', rectangle(-splineHalf(spline), y, 2 * splineHalf(spline), spline.thickness), 'joint-spline'),
    ...dimension({ from: point(-splineHalf(spline), thickness - y), to: point(splineHalf(spline), thickness - y), offset: -(y + 9), label: `spline ${say(2 * splineHalf(spline))}` }, font),
    ...dimension({ from: point(-spline.groove, thickness - y), to: point(0, thickness - y), offset: -(y + 18), label: `groove ${say(spline.groove)}` }, font),
    ...dimension({ from: point(reach, y + spline.thickness), to: point(reach, y), offset: -8, label: say(spline.thickness) }, font),
    letter(point(-reach, -3), 'section along the board', {}),
  ];
};

/** A joint between two parts of the board: both ends from above with witness lines and the loose spline, and the section through it. */
export const drawJoint = (station: number, number: number, top: RackTop, context: Context, font: Font): Drawing => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const { board, spline } = top;
  const words = [
    `${context.name}: joint ${number}`, `at ${say(station)} from the left end`,
    `loose spline ${say(spline.thickness)} × ${say(2 * splineHalf(spline))}, grooves ${say(spline.groove)} deep`, `grooves stop ${say(spline.margin)} short of both edges`,
  ];
  const section = moveItems(sectionItems(top, say, font), 2 * (spline.groove + beyond) + 12, board.width / 2 - board.thickness);
  const items = [...planItems(top, number, words), ...section];
  return { name: `joint-${number}`, title: `joint ${number}`, items, whole: true, spine: false, datum: point(-spline.groove - beyond, board.width / 2), keepClear: [], lands: [] };
};

/** The section through a joint alone, for the set-up page. */
export const jointPicture = (top: RackTop, context: Context, font: Font): Drawing => ({
  name: 'joint-section', title: 'Section through the joint, along the board', items: sectionItems(top, (mm) => lengthLabel(mm, context.units), font),
  whole: true, spine: false, datum: point(0, 0), keepClear: [], lands: [],
});
