import type { Drawing } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { circle, line, polyline, rectangle } from '../../geometry/shapes.js';
import { scaling, transformPath } from '../../geometry/transform.js';
import { levelDimension } from './level-dimension.js';
import { blockPath, groovePath } from './section.js';
import type { VCradleSolution } from './solve.js';
import type { Say } from './words.js';

/** The second unit under the first. */
const inLines = (length: string): string[] => length.split(/ (?=\()/);

/** Size that the block is drawn at, mm. */
const drawnWidth = 34;

/** The thickest round in the cradle under the bit, seen from the end. Not to scale. */
export const drillPicture = (s: VCradleSolution, say: Say): Drawing => {
  const { groove, block } = s;
  const thickest = s.held[0]!;
  const k = drawnWidth / Math.max(block.width, thickest.round.diameter);
  const map = scaling(k, k);
  const axis = k * (groove.apexDepth - thickest.axisHeight);
  const top = -k * thickest.proud;
  const [half, low] = [(k * block.width) / 2, k * block.height];
  const side = Math.max(half, k * thickest.radius);
  const lift = block.height - groove.apexDepth;
  return {
    name: 'drill-picture', title: 'In the cradle', whole: true, spine: false, datum: point(0, 0), keepClear: [], lands: [],
    items: [
      shape('reference', line(point(-side - 14, low), point(side + 14, low))),
      shape('edge', transformPath(map, blockPath(groove, { a: block.width / 2, b: block.width / 2 }, block.height))), shape('edge', transformPath(map, groovePath(groove))),
      shape('edge', circle(point(0, axis), k * thickest.radius)),
      shape('bore', polyline([point(-2, top - 12), point(-2, top - 3), point(0, top - 1.5), point(2, top - 3), point(2, top - 12)])),
      shape('centre', line(point(0, top - 15), point(0, low + 4))),
      ...levelDimension({ high: point(0, axis), low: point(half, low), x: side + 8, side: 'right', label: ['axis', ...inLines(say.length(lift + thickest.axisHeight))] }),
      ...levelDimension({ high: point(0, top), low: point(-half, low), x: -side - 8, side: 'left', label: ['top', ...inLines(say.length(block.height + thickest.proud))] }),
      shape('reference', rectangle(-side - 2, low, 2 * side + 4, 3)),
      letter(point(side + 14, low + 4.5), 'table', { anchor: 'end' }),
    ],
  };
};
