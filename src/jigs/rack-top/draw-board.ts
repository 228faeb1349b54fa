import type { Drawing, Item, Zone } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { shape } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';
import type { Context } from '../jig.js';
import { edgeLeaders } from './edge-leaders.js';
import { drawHole } from './draw-holes.js';
import { drawRecess } from './draw-recesses.js';
import { slotMarks } from './draw-slots.js';
import { boardPieces } from './outline.js';
import type { RackTop } from './rack-top.js';
import { mouthHalfWidth } from './slot.js';
import { letterBoard } from './top-lettering.js';
import { holeZone, recessZone, seatZone } from './zones.js';

/** The edge to be cut on this paper is full: the template's where a bushing sets it off, the finished one being thin beside it. */
const edges = ({ board, slots, cutter }: RackTop): Item[] => [
  ...boardPieces(board, slots).map(({ part, path }) => shape(cutter.offset === 0 ? 'edge' : 'reference', path, part)),
  ...(cutter.offset === 0 ? [] : boardPieces(board, slots, cutter.offset).map(({ part, path }) => shape('edge', path, `template-${part}`))),
];

const joints = ({ board, splits }: RackTop): Item[] =>
  splits.map((x, i) => shape('saw', line(point(x, 0), point(x, board.width)), `joint-${i + 1}`));

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
    keepClear: [...slots.map((s) => seatZone(board, s)), ...holes.map(holeZone), ...recesses.map(recessZone)], lands,
  };
};

/** The whole top, seen from above, front edge at the bottom of the paper, left end at x = 0; stations along the spine in the middle. */
export const drawTop = (top: RackTop, context: Context, font: Font): Drawing => {
  const { board } = top;
  const drawn = [
    ...edges(top), ...top.slots.flatMap((slot) => slotMarks(board, slot, top.cutter.offset)), ...top.holes.flatMap(drawHole), ...top.recesses.flatMap(drawRecess), ...joints(top),
  ];
  const leaders = edgeLeaders(top, drawn, font);
  const lettered = letterBoard({ top, name: context.name, units: context.units, font }, [...drawn, ...leaders]);
  const { keepClear, lands } = zonesOf(top);
  return {
    name: 'top', title: 'whole top, seen from above', items: [...drawn, ...leaders, ...lettered.items], whole: false,
    datum: point(0, board.width / 2), spine: true, keepClear: [...keepClear, ...lettered.zones], lands,
  };
};
