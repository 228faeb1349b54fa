import type { Drawing } from '../../drawing/drawing.js';
import { dimension } from '../../drawing/dimension.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { letter, shape } from '../../drawing/items.js';
import { boxOf, growBox } from '../../geometry/box.js';
import { point } from '../../geometry/point.js';
import { circle, rectangle } from '../../geometry/shapes.js';
import { lengthLabel } from '../../units/format.js';
import { centreLines } from './centre-lines.js';
import { isSquareAngle } from '../kit/angle-figures.js';
import { identity, lettersIn, titled, type Page } from './words.js';
import { offsetOf } from './work.js';

/** The block's top, true size, seen from above, acute end to the right: where the bore starts. Parts `top`, `bore`, `centre-line`. */
export const drawTop = (page: Page): Drawing => {
  const { s, name, units, font } = page;
  const { block, drill, work } = s;
  const { length, width } = block;
  // Right of the round's axis, seen from the acute end, lies at the top of the paper.
  const centre = point(length / 2, width / 2 - offsetOf(work));
  const say = (mm: number): string => lengthLabel(mm, units);
  const rows = centre.y >= width / 2 ? { top: 1.8, height: centre.y - 3.4 } : { top: centre.y + 1.8, height: width - centre.y - 3.4 };
  return {
    name: 'top', title: 'top of the block', whole: true, spine: false, datum: point(0, 0), keepClear: [{ box: growBox(boxOf([centre]), drill / 2 + 3), why: 'bore' }], lands: [],
    items: [
      shape('edge', rectangle(0, 0, length, width), 'top'),
      shape('bore', circle(centre, drill / 2), 'bore'),
      ...centreLines(point(0, 0), point(length, width), { centre, rx: drill / 2, ry: drill / 2 }),
      ...holeCross(centre),
      ...lettersIn(point(1.5, rows.top), { width: length / 2 - drill / 2 - 3, height: rows.height }, [['TOP'], ...identity(page)], { font }),
      letter(point(length + 2, centre.y + 1.25), isSquareAngle(s.angle) ? 'front' : 'acute end', {}),
      ...dimension({ from: point(centre.x, width), to: point(length, width), offset: -7, label: say(length / 2) }, font),
      ...dimension({ from: point(0, width), to: point(0, centre.y), offset: 7, label: say(width - centre.y) }, font),
      ...titled(point(0, width + 16), `${name}: top of the block`, ['Centre-punch the open cross; bore square from this face.'], font),
    ],
  };
};
