import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { openCross } from '../../drawing/hole-cross.js';
import { letter, shape } from '../../drawing/items.js';
import { uniteBoxes } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';
import { after, scaling, transformPath, translation } from '../../geometry/transform.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { openingLeaders } from './edge-leaders.js';
import { cutterWords, edgeWords } from './edge-words.js';
import type { RackTop } from './rack-top.js';
import type { Recess } from './recess.js';

/**
 * The template of one recess alone, its middle at the origin, as it lies on its own face: a recess in the top seen from above, one
 * in the underside seen from below, the board rolled over its front edge (the left end stays left). Centre lines to lay on the board's own.
 */
export const drawRecessTemplate = (recess: Recess, top: RackTop, context: Context, font: Font, as: 'pattern' | 'picture' = 'pattern'): Drawing => {
  const under = recess.face === 'under';
  const map = after(translation(-recess.centre.x, -recess.centre.y), scaling(1, under ? -1 : 1));
  const outline = transformPath(map, recess.outline);
  const opening = recess.template === undefined ? undefined : transformPath(map, recess.template);
  const reached = recess.reached === undefined ? undefined : transformPath(map, recess.reached);
  const box = uniteBoxes([outline, ...(opening === undefined ? [] : [opening])].map(pathBounds));
  const { x0, y0, x1, y1 } = pathBounds(outline);
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const n = recess.number;
  const arms = [line(point(box.x0 - 10, 0), point(box.x0 - 2, 0)), line(point(box.x1 + 2, 0), point(box.x1 + 10, 0)),
    line(point(0, box.y0 - 10), point(0, box.y0 - 2)), line(point(0, box.y1 + 2), point(0, box.y1 + 10))];
  const words = [
    `${context.name}: recess ${n}, ${say(recess.depth)} deep`,
    under ? 'in the UNDERSIDE, seen from below: lay it on as it is, left end left, front edge up' : 'in the top, seen from above',
    edgeWords(top, context.units).join(opening === undefined ? ' ' : '; '), cutterWords(top, context.units).join(', '),
    ...(reached === undefined ? [] : ['short dashes: what the cutter leaves in the corners']),
    `middle: along ${say(recess.along)}, across ${say(recess.across)} from the front`,
  ];
  const items: Item[] = [
    ...(opening === undefined ? [shape('edge', outline, `template-of-recess-${n}`)]
      : [shape('edge', opening, `template-of-recess-${n}`), shape('reference', outline, `finished-recess-${n}`)]),
    ...(reached === undefined ? [] : [shape('hidden', reached, `template-of-recess-${n}-reached`)]),
    ...(opening === undefined ? [] : openingLeaders(opening, outline)),
    ...openCross(point(0, 0), { reach: 4, line: 'centre' }), ...arms.map((path) => shape('centre', path)),
    ...dimension({ from: point(x0, 0), to: point(x1, 0), offset: -(box.y1 + 17), along: 0, label: say(x1 - x0), gap: box.y1 + 3 }, font),
    ...dimension({ from: point(0, y1), to: point(0, y0), offset: -(box.x1 + 17), along: -Math.PI / 2, label: say(y1 - y0), gap: box.x1 + 3 }, font),
    ...(as === 'picture' ? [] : words).map((text, i) => letter(point(x0, box.y1 + 30 + 4.4 * i), text, { height: i === 0 ? 3.5 : 2.5 })),
  ];
  return { name: `recess-${n}`, title: `template of recess ${n}`, items, whole: true, spine: false, datum: point(box.x0, 0), keepClear: [], lands: [] };
};
