import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { letter, shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { wasteTicks } from '../../drawing/waste-ticks.js';
import { point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';
import { levelDimension } from './level-dimension.js';
import { patternLettering } from './pattern-lettering.js';
import type { Piece } from './saw-figures.js';
import { blockPath, groovePath } from './section.js';
import type { VCradleSolution } from './solve.js';
import type { Say } from './words.js';

/** What one piece's end is drawn with. */
interface Sight {
  readonly s: VCradleSolution;
  readonly piece: Piece;
  readonly say: Say;
  readonly font: Font;
}

/** Flanks drawn on to the virtual apex, and the groove's middle above and below the groove. */
const constructionLines = ({ s: { groove }, piece }: Sight): Item[] => {
  const apex = point(0, groove.apexDepth);
  return [
    ...(groove.flat === 0 ? [] : [-1, 1].map((side) =>
      shape('hidden', line(point((side * groove.flat) / 2, groove.depth), apex)))),
    shape('centre', line(point(0, -14), point(0, -2))),
    shape('centre', line(point(0, Math.max(groove.apexDepth, groove.depth) + 1), point(0, piece.height + 4))),
  ];
};

const dimensions = ({ s: { groove, block }, piece, say, font }: Sight): Item[] => {
  const { a, b } = piece.sides;
  const mouth = groove.width / 2;
  const low = piece.height;
  return [
    ...dimension({ from: point(-mouth, 0), to: point(mouth, 0), offset: 17, label: `groove ${say.length(groove.width)}` }, font),
    ...levelDimension({ high: point(b, 0), low: point(groove.flat / 2, groove.depth), x: b + 8, side: 'right', label: `cut ${say.length(groove.depth)}` }),
    ...levelDimension({ high: point(b, groove.depth), low: point(b, low), x: b + 8, side: 'right', label: `floor ${say.length(block.floor)}` }),
    ...dimension({ from: point(mouth, 0), to: point(b, low), along: 0, offset: -(low + 8), label: `wall ${say.length(b - mouth)}` }, font),
    ...dimension({ from: point(-a, low), to: point(b, low), offset: -17, label: say.length(piece.width) }, font),
  ];
};

const notes = ({ s: { groove, sawing }, piece, say, font }: Sight): Item[] => {
  const left = -piece.sides.a - 7;
  const half = groove.flat / 2;
  const middle = (groove.width / 2 + half) / 2;
  return [
    ...leader({ at: point(-middle, groove.depth / 2), elbow: point(left, groove.depth / 2 - 3), side: 'left', label: [`blade ${say.angle(sawing.tilt)}`, 'from upright'] }),
    ...leader({ at: point(-half / 2, groove.depth), elbow: point(left, Math.max(groove.depth + 4, groove.depth / 2 + 8)), side: 'left', label: groove.flat === 0 ? 'sharp' : `flat ${say.length(groove.flat)}` }),
    ...(2 * middle - 8 < font.width('waste', 2.5) || groove.depth < 8 ? [] : [letter(point(0, groove.depth / 2), 'waste', { anchor: 'middle' })]),
    letter(point(-piece.sides.a, -2), 'A'), letter(point(piece.sides.b, -2), 'B', { anchor: 'end' }),
  ];
};

/**
 * The end of the block or the carrier, true size: to set the blade to, and to glue on. Part `groove` is the sawn V (top, flank,
 * flat, flank), part `block-end` the rest of the outline; of a carrier `carrier-groove` and `carrier-block-end`, seen from its far end.
 */
export const drawEndSection = (s: VCradleSolution, piece: Piece, name: string, { say, font }: { say: Say; font: Font }): Drawing => {
  const { groove } = s;
  const sight: Sight = { s, piece, say, font };
  const isBlock = piece.name === 'block';
  const prefix = isBlock ? '' : 'carrier-';
  return {
    name: isBlock ? 'end-section' : 'carrier-section', title: `end of the ${piece.name}`, whole: true, spine: false,
    datum: point(-piece.sides.a, 0), keepClear: [], lands: [],
    items: [
      shape('edge', blockPath(groove, piece.sides, piece.height), `${prefix}block-end`),
      shape('edge', groovePath(groove), `${prefix}groove`),
      ...wasteTicks(groovePath(groove), { side: 'left', spacing: 6 }),
      ...constructionLines(sight), ...dimensions(sight), ...notes(sight),
      ...patternLettering(point(-piece.sides.a, piece.height + 27), `${name}: end of the ${piece.name}`, [
        `Glue it on the ${isBlock ? 'end' : 'far end, A on side A'}, top edge to top edge, or set blade and fence to it.`,
        `${isBlock ? 'Block' : 'Carrier'} ${say.length(piece.width)} wide, ${say.length(piece.height)} high; included angle ${say.angle(2 * groove.halfAngle)}.`,
        `Holds ${s.held.map((h) => say.round(h.round)).join(', ')}.`,
      ], font),
    ],
  };
};
