import type { Drawing, Item, Zone } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { shape } from '../../drawing/items.js';
import { growBox, uniteBoxes } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { point } from '../../geometry/point.js';
import { circle, line } from '../../geometry/shapes.js';
import { transformPath, type Transform } from '../../geometry/transform.js';
import type { Context } from '../jig.js';
import { drawHole, openingPath, uphillTurn } from './draw-holes.js';
import { drawRecess } from './draw-recesses.js';
import { slotMarks } from './draw-slots.js';
import { boardPieces } from './outline.js';
import type { RackTop } from './rack-top.js';
import { mouthHalfWidth, seatCentre } from './slot.js';
import { recessBounds } from './solve-recesses.js';
import { letterBoard } from './top-lettering.js';

const edges = ({ board, slots, cutter }: RackTop): Item[] => [
  ...boardPieces(board, slots).map(({ part, path }) => shape('cut', path, part)),
  ...(cutter.offset === 0 ? [] : boardPieces(board, slots, cutter.offset).map(({ part, path }) => shape('saw', path, `template-${part}`))),
];

const joints = ({ board, splits }: RackTop, part = 'joint'): Item[] =>
  splits.map((x, i) => shape('saw', line(point(x, -3), point(x, board.width + 3)), `${part}-${i + 1}`));

/** Where seams should keep out, and the lands that they should seek. */
const zonesOf = ({ board, slots, holes, recesses }: RackTop): { readonly keepClear: Zone[]; readonly lands: Zone[] } => {
  const walls = slots.map((s) => ({ left: s.at - mouthHalfWidth(s), right: s.at + mouthHalfWidth(s) }));
  let reach = 0;
  const lands: Zone[] = [];
  for (const { left, right } of walls) {
    if (left > reach) lands.push({ box: { x0: reach, y0: 0, x1: left, y1: board.width }, why: 'land' });
    reach = Math.max(reach, right);
  }
  if (slots.length > 0) lands.push({ box: { x0: reach, y0: 0, x1: board.length, y1: board.width }, why: 'land' });
  return {
    keepClear: [
      ...slots.map((s) => ({ box: pathBounds(circle(seatCentre(board, s), s.radius + 2)), why: `seat of slot ${s.number}` })),
      ...holes.map((h) => ({ box: growBox(uniteBoxes([pathBounds(openingPath(h, h.top)), pathBounds(openingPath(h, h.under))]), 2), why: `hole ${h.number}` })),
      ...recesses.map((r) => ({ box: growBox(recessBounds(r), 2), why: `recess ${r.number}` })),
    ],
    lands,
  };
};

/** The whole top, seen from above, front edge at the bottom of the paper, left end at x = 0; stations along the spine in the middle. */
export const drawTop = (top: RackTop, context: Context, font: Font): Drawing => {
  const { board } = top;
  const drawn = [
    ...edges(top), ...top.slots.flatMap((slot) => slotMarks(board, slot)), ...top.holes.flatMap(drawHole), ...top.recesses.flatMap(drawRecess), ...joints(top),
  ];
  const lettered = letterBoard({ top, name: context.name, units: context.units, font, face: 'top' }, drawn);
  const { keepClear, lands } = zonesOf(top);
  return {
    name: 'top', title: `${context.name}: whole top, seen from above`, items: [...drawn, ...lettered.items], whole: false,
    datum: point(0, board.width / 2), spine: true, keepClear: [...keepClear, ...lettered.zones], lands,
  };
};

/** Whether anything shows on the underside that the top mirrored does not show: a canted hole, or a recess from below. */
export const undersideDiffers = ({ holes, recesses }: RackTop): boolean => holes.some((h) => h.lean > 0) || recesses.some((r) => r.face === 'under');

const mirrored = ({ width }: RackTop['board']): Transform => ({ a: 1, b: 0, c: 0, d: -1, e: 0, f: width });

/** The underside, seen from below, the board rolled over its front edge: the left end stays left, the front edge comes to the top of the paper. */
export const drawUnderside = (top: RackTop, context: Context, font: Font): Drawing => {
  const { board } = top;
  const map = mirrored(board);
  const flip = (y: number): number => board.width - y;
  const asSeen: Item[] = [
    ...boardPieces(board, top.slots).map(({ part, path }) => shape('cut', path, `underside-${part}`)),
    ...top.holes.flatMap((h) => [
      shape('drill', openingPath(h, h.under), `underside-hole-${h.number}-under`),
      ...(h.lean === 0 ? [] : [shape('hidden', openingPath(h, h.top), `underside-hole-${h.number}-top`)]),
    ]),
    ...top.recesses.map((r) => shape(r.face === 'under' ? 'cut' : 'hidden', r.outline, `underside-recess-${r.number}`)),
    ...joints(top, 'underside-joint'),
    ...top.recesses.flatMap((r) => (r.face === 'under' && r.template !== undefined ? [shape('saw', r.template, `underside-template-recess-${r.number}`)] : [])),
  ];
  const flipped = asSeen.map((item) => (item.kind === 'shape' ? { ...item, path: transformPath(map, item.path) } : item));
  const crosses = top.holes.flatMap((h) => holeCross(point(h.under.x, flip(h.under.y)), 2 * h.halfLong, -uphillTurn(h)));
  const drawn = [...flipped, ...crosses];
  const lettered = letterBoard({ top, name: context.name, units: context.units, font, face: 'under' }, drawn);
  const flipZone = ({ box, why }: Zone): Zone => ({ box: { ...box, y0: flip(box.y1), y1: flip(box.y0) }, why });
  const { keepClear, lands } = zonesOf(top);
  return {
    name: 'underside', title: `${context.name}: underside, seen from below`, items: [...drawn, ...lettered.items], whole: false,
    datum: point(0, board.width / 2), spine: true, keepClear: [...keepClear.map(flipZone), ...lettered.zones], lands,
  };
};
