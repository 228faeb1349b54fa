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
import { blockPath, groovePath } from './section.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

/** Flanks drawn on to the virtual apex, and the groove's middle above and below the groove. */
const constructionLines = ({ groove, block }: VCradleSolution): Item[] => {
  const apex = point(0, groove.apexDepth);
  return [
    ...(groove.flat === 0 ? [] : [-1, 1].map((side) =>
      shape('hidden', line(point((side * groove.flat) / 2, groove.depth), apex)))),
    shape('centre', line(point(0, -14), point(0, -2))),
    shape('centre', line(point(0, Math.max(groove.apexDepth, groove.depth) + 1), point(0, block.height + 4))),
  ];
};

const dimensions = ({ groove, block }: VCradleSolution, say: Words, font: Font): Item[] => {
  const half = block.width / 2;
  const mouth = groove.width / 2;
  return [
    ...dimension({ from: point(-mouth, 0), to: point(mouth, 0), offset: 17, label: `groove ${say.length(groove.width)}` }, font),
    ...levelDimension({ high: point(half, 0), low: point(groove.flat / 2, groove.depth), x: half + 8, side: 'right', label: `cut ${say.length(groove.depth)}` }),
    ...levelDimension({ high: point(half, groove.depth), low: point(half, block.height), x: half + 8, side: 'right', label: `floor ${say.length(block.floor)}` }),
    ...dimension({ from: point(mouth, 0), to: point(half, block.height), along: 0, offset: -(block.height + 8), label: `wall ${say.length(block.wall)}` }, font),
    ...dimension({ from: point(-half, block.height), to: point(half, block.height), offset: -17, label: say.length(block.width) }, font),
  ];
};

const notes = ({ groove, block, sawing }: VCradleSolution, say: Words, font: Font): Item[] => {
  const left = -block.width / 2 - 7;
  const half = groove.flat / 2;
  const middle = (groove.width / 2 + half) / 2;
  return [
    ...leader({ at: point(-middle, groove.depth / 2), elbow: point(left, groove.depth / 2 - 3), side: 'left', label: [`blade ${say.angle(sawing.tilt)}`, 'from upright'] }),
    ...leader({ at: point(-half / 2, groove.depth), elbow: point(left, Math.max(groove.depth + 4, groove.depth / 2 + 8)), side: 'left', label: groove.flat === 0 ? 'sharp' : `flat ${say.length(groove.flat)}` }),
    ...(2 * middle - 8 < font.width('waste', 2.5) || groove.depth < 8 ? [] : [letter(point(0, groove.depth / 2), 'waste', { anchor: 'middle' })]),
  ];
};

/**
 * The block's end, true size: to set the blade to, and to glue on. Part `groove` is the sawn V (block's top, flank, flat, flank),
 * part `block-end` the rest of the outline.
 */
export const drawEndSection = (s: VCradleSolution, name: string, say: Words, font: Font): Drawing => {
  const { groove, block } = s;
  return {
    name: 'end-section', title: 'End of the block', whole: true, spine: false,
    datum: point(-block.width / 2, 0), keepClear: [], lands: [],
    items: [
      shape('cut', blockPath(groove, block), 'block-end'),
      shape('cut', groovePath(groove), 'groove'),
      ...wasteTicks(groovePath(groove), { side: 'left', spacing: 6 }),
      ...constructionLines(s), ...dimensions(s, say, font), ...notes(s, say, font),
      ...patternLettering(point(-block.width / 2, block.height + 27), `${name}: end of the block`, [
        'Glue it on the end, top edge to top edge, or set blade and fence to it.',
        `Block ${say.length(block.width)} wide, ${say.length(block.height)} high; included angle ${say.angle(2 * groove.halfAngle)}.`,
        `Holds ${s.held.map((h) => say.round(h.round)).join(', ')}.`,
      ], font),
    ],
  };
};
