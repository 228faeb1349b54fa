import { arrow } from '../../drawing/arrow.js';
import { angleDimension } from '../../drawing/angle-dimension.js';
import type { Item } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { openCross } from '../../drawing/hole-cross.js';
import { letter, shape } from '../../drawing/items.js';
import { add, point, polar } from '../../geometry/point.js';
import { line, rectangle } from '../../geometry/shapes.js';
import { angleLabel } from '../../units/format.js';
import type { Resultant } from './tilt.js';

/** A way on the work's face seen from above, in words: from the front-to-rear line towards a side. */
export interface LeanWay {
  /** The end of the front-to-rear line from which the angle is counted, and the side that it is turned to. */
  readonly from: 'rear' | 'front';
  readonly towards: 'right' | 'left';
  /** Between the two, 0…90°, radians. */
  readonly angle: number;
}

/** Where the shank leans, going up from the face: rake leans it to the rear, splay to the right, negative ones the other way. */
export function leanWay({ rake, splay }: Pick<Resultant, 'rake' | 'splay'>): LeanWay {
  return {
    from: rake >= 0 ? 'rear' : 'front', towards: splay >= 0 ? 'right' : 'left',
    angle: Math.atan2(Math.abs(Math.tan(splay)), Math.abs(Math.tan(rake))),
  };
}

const reach = 17;

/** The face from above, rear up: the arrow points where the bit's shank leans and the block's acute end stands. */
export function leanPlan(tilts: Resultant, font: Font): readonly Item[] {
  const way = leanWay(tilts);
  // On paper the rear is up (−y) and the right is +x.
  const turn = way.from === 'rear' ? -Math.PI / 2 : Math.PI / 2;
  const clockwise = (way.from === 'rear') === (way.towards === 'right');
  const heading = turn + (clockwise ? way.angle : -way.angle);
  const tip = add(point(0, 0), polar(heading, reach));
  const wide = way.angle > 0.12;
  return [
    shape('reference', rectangle(-24, -24, 48, 48), 'plan-face'),
    shape('centre', line(point(0, 22), point(0, -22)), 'plan-rake-line'),
    shape('dimension', line(add(point(0, 0), polar(heading, 3)), tip), 'plan-lean'), arrow(tip, heading),
    ...openCross(point(0, 0), { reach: 3, line: 'bore' }),
    ...(wide ? angleDimension({
      centre: point(0, 0), radius: 10, from: Math.min(turn, heading), to: Math.max(turn, heading), label: angleLabel(way.angle), drawn: [22, reach],
    }, font) : []),
    letter(point(0, -25.5), 'rear', { anchor: 'middle' }), letter(point(0, 28.5), 'front', { anchor: 'middle' }),
    letter(point(25, 1.25), 'right'), letter(point(-25, 1.25), 'left', { anchor: 'end' }),
    letter(point(-24, 34), 'the face from above; arrow:'), letter(point(-24, 38), 'shank leans, acute end stands'),
  ];
}
