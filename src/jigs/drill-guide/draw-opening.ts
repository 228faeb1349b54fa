import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item, Zone } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { pathBounds } from '../../geometry/bounds.js';
import { growBox } from '../../geometry/box.js';
import type { Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { ellipse, line, rectangle } from '../../geometry/shapes.js';
import { angleLabel, lengthLabel, millimetres } from '../../units/format.js';
import { centreLines } from './centre-lines.js';
import { openingPath } from './opening.js';
import { jointOf } from './solve.js';
import { isSquareAngle } from '../kit/angle-figures.js';
import { identity, lettersIn, titled, type Page } from './words.js';
import type { RoundWork } from './work.js';

/** Seams keep out of the hole's edge and its centre. */
const clearOf = (opening: Path): Zone => ({ box: growBox(pathBounds(opening), 3), why: 'opening' });

/** The sole of a block for flat work, true size, seen from below, acute end to the right; opening an exact ellipse. */
const flatSole = (page: Page): Drawing => {
  const { s, name, units, font } = page;
  const { block, drill, hole } = s;
  const [rx, ry] = [hole.openingLength / 2, drill / 2];
  const { soleLength: length, width } = block;
  const centre = point(length / 2, width / 2);
  const opening = ellipse(centre, rx, ry, 0);
  const say = (mm: number): string => lengthLabel(mm, units);
  return {
    name: 'sole', title: 'sole of the block', whole: true, spine: false, datum: point(0, 0), keepClear: [clearOf(opening)], lands: [],
    items: [
      shape('edge', rectangle(0, 0, length, width), 'sole'),
      shape('bore', opening, 'opening'),
      ...centreLines(point(0, 0), point(length, width), { centre, rx, ry }),
      ...holeCross(centre),
      ...lettersIn(point(1.5, 1.8), { width: length / 2 - rx - 4, height: width / 2 - 3.4 }, [['SOLE'], ...identity(page)], { font }),
      letter(point(length + 2, centre.y + 1.25), isSquareAngle(s.angle) ? 'front' : 'acute end'),
      ...dimension({ from: point(0, width), to: point(length, width), offset: -7, label: say(length) }, font),
      ...dimension({ from: point(centre.x - rx, centre.y), to: point(centre.x + rx, centre.y), offset: width / 2 + 7, gap: 1, label: `opening ${say(hole.openingLength)}` }, font),
      ...titled(point(0, width + 16), `${name}: sole, and mark on the work`, [
        isSquareAngle(s.angle) ? 'On the sole: the bore must come out in the circle. On the work: cross on the mark.'
          : 'On the sole: the bore must come out in the ellipse. On the work: cross on the mark, long axis along the tilt.',
      ], font),
    ],
  };
};

/** Room for the pattern's own words under the opening, mm. */
const wordsStrip = 7;

/** The opening unrolled from the round: wrapped on it at the mark, or pressed into a cove, it shows where the bit must come out. */
const openingOnRound = (page: Page, work: RoundWork): Drawing => {
  const { s, name, units, font } = page;
  const girth = work.radius + s.paperThickness / 2;
  const up = (across: number): number => -girth * Math.asin(Math.max(-1, Math.min(1, across / work.radius)));
  const [axis, top, bottom] = [up(work.offset), up(work.offset + s.drill / 2), up(work.offset - s.drill / 2)];
  const rx = s.hole.openingLength / 2;
  const opening = openingPath(jointOf(work, s.drill, s.angle), s.paperThickness);
  const low = point(-rx - 16, Math.min(top, 0) - 9);
  const high = point(rx + 16, Math.max(bottom, 0) + 9 + wordsStrip);
  const say = (mm: number): string => lengthLabel(mm, units);
  return {
    name: 'opening', title: 'opening on the round', whole: true, spine: false, datum: low, keepClear: [clearOf(opening)], lands: [],
    items: [
      shape('edge', rectangle(low.x, low.y, high.x - low.x, high.y - low.y), 'sole'),
      shape('bore', opening, 'opening'),
      ...centreLines(low, point(high.x, high.y - wordsStrip), { centre: point(0, axis), rx: rx + 1, ry: Math.max(axis - top, bottom - axis) }),
      ...(work.offset === 0 ? [] : crownLine(low.x, high.x, rx)),
      ...holeCross(point(0, axis)),
      ...(isSquareAngle(s.angle) ? [] : [letter(point(high.x + 2, axis + 1.25), 'acute side')]),
      ...lettersIn(point(low.x + 2, high.y - wordsStrip + 1.5), { width: high.x - low.x - 4, height: wordsStrip - 3 },
        [[`${name}: ${say(s.drill)}, ${angleLabel(s.angle)}, ${work.round.name}`, `${name}: ${angleLabel(s.angle)}`, name]], { font }),
      ...titled(point(low.x, high.y + 8), `${name}: opening on ${work.round.name}`, [
        `Wrap it on the round, Ø ${say(2 * work.radius)}, cross on the mark, long line along the round${isSquareAngle(s.angle) ? '' : ', acute side to where the bit’s shank leans'}.`,
        `Opening ${say(s.hole.openingLength)} along the round; for paper ${millimetres(s.paperThickness)} thick.`,
      ], font),
    ],
  };
};

/** The line along the round that faces the bit, on either side of the opening. */
const crownLine = (left: number, right: number, rx: number): Item[] => [
  shape('reference', line(point(left, 0), point(-rx - 3, 0)), 'crown-line'), shape('reference', line(point(rx + 3, 0), point(right, 0)), 'crown-line'),
  letter(point(left - 2, 1.25), 'line facing the bit', { anchor: 'end' }),
];

/** Where the bit comes out of the sole and enters the work, true size. Part `opening`. */
export const drawOpening = (page: Page): Drawing =>
  (page.s.work.kind === 'flat' ? flatSole(page) : openingOnRound(page, page.s.work));
