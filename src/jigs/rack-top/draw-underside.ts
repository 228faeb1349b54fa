import { arrow } from '../../drawing/arrow.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { holeCross, openCross } from '../../drawing/hole-cross.js';
import { letter, shape } from '../../drawing/items.js';
import { wrapText } from '../../drawing/wrap-text.js';
import { boxWidth, growBox, type Box } from '../../geometry/box.js';
import { clipPath } from '../../geometry/clip-path.js';
import { add, point, polar, type Point } from '../../geometry/point.js';
import { line, rectangle } from '../../geometry/shapes.js';
import { transformPath, transformPoint, type Transform } from '../../geometry/transform.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { edgeWords } from './edge-words.js';
import { openingPath, uphillTurn } from './draw-holes.js';
import type { LegHole } from './hole.js';
import { labelField, ringsAbout, type Label } from './label-field.js';
import { boardPieces } from './outline.js';
import type { RackTop } from './rack-top.js';
import type { Recess } from './recess.js';
import type { UndersidePatch } from './underside-patches.js';

/** Round what is drawn, for the two arrows to the datum edges, mm. */
const band = 7;
/** Least width of the words, mm. */
const leastWidth = 84;

/** From above to below, the board rolled over its front edge: the left end stays left, the front edge comes to y = 0 at the top of the paper. */
const rolled = ({ width }: RackTop['board']): Transform => ({ a: 1, b: 0, c: 0, d: -1, e: 0, f: width });

const holeItems = (hole: LegHole, map: Transform): Item[] => {
  const under = transformPoint(map, hole.under);
  const downhill = -uphillTurn(hole) + Math.PI;
  const along = (by: number): Point => add(under, polar(downhill, hole.halfLong + by));
  return [
    shape('bore', transformPath(map, openingPath(hole, hole.under)), `underside-hole-${hole.number}-under`),
    shape('hidden', transformPath(map, openingPath(hole, hole.top)), `underside-hole-${hole.number}-top`),
    ...holeCross(under, 2 * hole.halfLong, downhill),
    shape('dimension', line(along(4), along(13.8)), `underside-hole-${hole.number}-downhill`), arrow(along(15), downhill),
  ];
};

const recessItems = (recess: Recess, map: Transform): Item[] => [
  shape(recess.template === undefined ? 'edge' : 'reference', transformPath(map, recess.outline), `underside-recess-${recess.number}`),
  ...(recess.reached === undefined ? [] : [shape('hidden', transformPath(map, recess.reached), `underside-recess-${recess.number}-reached`)]),
  ...(recess.template === undefined ? [] : [shape('edge', transformPath(map, recess.template), `underside-template-recess-${recess.number}`)]),
  ...openCross(transformPoint(map, recess.centre), { reach: 4, line: 'centre' }),
];

/** Marks at the four borders on the lines through a centre, to lay on those ruled on the board. */
const borderMarks = ({ x0, y0, x1, y1 }: Box, { x, y }: Point, name: string): Item[] => [
  shape('reference', line(point(x, y0), point(x, y0 + 10)), `${name}-station`), shape('reference', line(point(x, y1), point(x, y1 - 10))),
  shape('reference', line(point(x0, y), point(x0 + 10, y)), `${name}-across`), shape('reference', line(point(x1, y), point(x1 - 10, y))),
];

const boardItems = ({ board, slots, splits }: RackTop, map: Transform, box: Box): Item[] => {
  const lines = [
    ...boardPieces(board, slots).map(({ part, path }) => ({ type: 'edge' as const, part, path })),
    ...splits.map((x, i) => ({ type: 'saw' as const, part: `joint-${i + 1}`, path: line(point(x, 0), point(x, board.width)) })),
    { type: 'centre' as const, part: 'spine', path: line(point(0, board.width / 2), point(board.length, board.width / 2)) },
  ];
  return lines.flatMap(({ type, part, path }) => clipPath(transformPath(map, path), box).map((piece) => shape(type, piece.path, `underside-${part}`)));
};

/** Arrows in the band to the two datum edges. */
const datumArrows = ({ x0, y0 }: Box): Item[] => {
  const corner = point(x0 - band / 2, y0 - band / 2);
  return [
    shape('dimension', line(point(corner.x, y0 + 9), point(corner.x, y0))), arrow(point(corner.x, y0 - 2), -Math.PI / 2), letter(point(corner.x + 1.2, y0 + 11), 'FRONT EDGE', { turn: -Math.PI / 2, anchor: 'end', height: 2.5 }),
    shape('dimension', line(point(x0 + 9, corner.y), point(x0, corner.y))), arrow(point(x0 - 2, corner.y), Math.PI), letter(point(x0 + 11, corner.y + 1.2), 'LEFT END'),
  ];
};

/** A line each, so that no measure is broken. */
const placeWords = (along: number, across: number, say: (mm: number) => string): string[] =>
  [`${say(along)} from the LEFT END`, `${say(across)} from the FRONT EDGE`];

const holeWords = (hole: LegHole, top: RackTop, say: (mm: number) => string): string[] => [
  `Hole ${hole.number} · ${hole.round}, leans ${angleLabel(hole.lean)}:`, ...placeWords(hole.under.x, top.board.width - hole.under.y, say),
];

const recessWords = (recess: Recess, say: (mm: number) => string): string[] =>
  [`Recess ${recess.number}, ${say(recess.depth)} deep:`, ...placeWords(recess.along, recess.across, say)];

/** Words under the drawing, within `width`. */
const wordItems = (lines: readonly string[], at: Point, width: number, font: Font): { readonly items: Item[]; readonly end: number } => {
  let y = at.y;
  const items = lines.flatMap((text, i) => {
    const height = i < 2 ? 3.5 : 2.5;
    return wrapText(text, width, height, font).map((words) => letter(point(at.x, y += 1.65 * height), words, { height }));
  });
  return { items, end: y };
};

/** Numbers beside what they name, where they touch no line. */
const tags = (patch: UndersidePatch, { board }: RackTop, drawn: readonly Item[], { box, font }: { readonly box: Box; readonly font: Font }): Item[] => {
  const map = rolled(board);
  const field = labelField(drawn.flatMap((item) => (item.kind === 'shape' ? [item.path] : [])), font);
  const wishes: readonly { text: string; at: Point }[] = [
    ...patch.holes.map((h) => ({ text: `HOLE ${h.number}`, at: transformPoint(map, h.under) })),
    ...patch.recesses.map((r) => ({ text: `RECESS ${r.number}`, at: transformPoint(map, r.centre) })),
  ];
  const spine = point(box.x1 - 8, board.width / 2);
  const put = (text: string, height: number, at: Point): readonly Item[] => {
    const label: Label = { lines: [{ text, height }] };
    return field.put(label, ringsAbout(at, 150), box)?.items ?? [];
  };
  return [...wishes.flatMap(({ text, at }) => put(text, 3.5, at)), ...(box.y0 < spine.y && spine.y < box.y1 ? put('spine', 2.5, spine) : [])];
};

/**
 * A patch of the underside, seen from below, in the board's own millimetres: x from the left end, y from the front edge. Its marks at the border stand on the lines
 * through each centre; board edges and spine within it are shown. Exact.
 */
export const drawUnderside = (patch: UndersidePatch, number: number, top: RackTop, context: Context, font: Font): Drawing => {
  const map = rolled(top.board);
  const flip = (y: number): number => top.board.width - y;
  const box: Box = { x0: patch.box.x0, y0: flip(patch.box.y1), x1: patch.box.x1, y1: flip(patch.box.y0) };
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const centres = [
    ...patch.holes.map((h) => ({ name: `underside-hole-${h.number}`, at: transformPoint(map, h.under) })),
    ...patch.recesses.map((r) => ({ name: `underside-recess-${r.number}`, at: transformPoint(map, r.centre) })),
  ];
  const drawn = [
    ...boardItems(top, map, box), ...centres.flatMap(({ name, at }) => borderMarks(box, at, name)),
    ...patch.holes.flatMap((h) => holeItems(h, map)), ...patch.recesses.flatMap((r) => recessItems(r, map)),
  ];
  const width = Math.max(boxWidth(box) + band, leastWidth);
  const lines = [
    `${context.name}: underside ${number}`, 'UNDERSIDE, seen from below', 'Board rolled over its front edge: the left end stays left. Lay it on the underside only, its marks on lines ruled as said.',
    ...(patch.recesses.some((r) => r.template !== undefined) ? [`${edgeWords(top, context.units).join('; ')}.`] : []),
    ...(patch.holes.length > 0 ? ['Full line: opening below; dashes: on the top. The leg comes down along the arrow.'] : []),
    ...patch.holes.flatMap((h) => holeWords(h, top, say)), ...patch.recesses.flatMap((r) => recessWords(r, say)),
  ];
  const words = wordItems(lines, point(box.x0 - band + 2, box.y1), width - 4, font);
  const frame: Box = { x0: box.x0 - band, y0: box.y0 - band, x1: box.x0 - band + width, y1: words.end + 3 };
  return {
    name: `underside-${number}`, title: `underside ${number}, seen from below`, whole: true, spine: false, datum: point(frame.x0, box.y0), lands: [],
    items: [
      ...drawn, ...tags(patch, top, drawn, { box: growBox(box, -0.5), font }), ...datumArrows(box), ...words.items,
      shape('mark', rectangle(frame.x0, frame.y0, boxWidth(frame), frame.y1 - frame.y0), `underside-patch-${number}`),
    ],
    keepClear: centres.map(({ name, at }) => ({ box: growBox({ x0: at.x, y0: at.y, x1: at.x, y1: at.y }, 20), why: name })),
  };
};
