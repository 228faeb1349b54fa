import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import { openCross } from '../../drawing/hole-cross.js';
import { shape } from '../../drawing/items.js';
import { leader } from '../../drawing/leader.js';
import { endOf, type Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { circle, line } from '../../geometry/shapes.js';
import { transformPath, translation } from '../../geometry/transform.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import { isSquareAngle } from '../kit/angle-figures.js';
import { groovePath } from './groove-path.js';
import { soleHeight } from './sole.js';
import { titled, type Page } from './words.js';
import type { RoundWork } from './work.js';

/** How much of the block the section shows above its groove, mm. */
const shown = 14;

/** The block's lower part: side, flat, groove, flat, side; open at the top, where the section breaks off. */
const sectionPath = (groove: Path, half: number, plane: number, top: number): Path => ({
  start: point(-half, top),
  segments: [
    { kind: 'line', to: point(-half, plane) }, { kind: 'line', to: groove.start }, ...groove.segments,
    { kind: 'line', to: point(half, plane) }, { kind: 'line', to: point(half, top) },
  ],
  closed: false,
});

/** Sole and round in a section square to the round, true size, seen from the acute end: to set cutter or blade to. Part `sole-section`. */
export const drawSection = (page: Page, work: RoundWork): Drawing => {
  const { s, name, units, font } = page;
  const { sole, block, drill } = s;
  const half = block.width / 2;
  const groove = sole.depth === 0 ? undefined : transformPath(translation(0, -sole.plane), groovePath(sole));
  const top = -(sole.plane + sole.depth + shown);
  const say = (mm: number): string => lengthLabel(mm, units);
  const bore = (across: number): Path => line(point(across, top), point(across, -soleHeight(sole, across)));
  const left = Math.max(half, work.radius);
  const items: Item[] = [
    shape('edge', groove === undefined ? line(point(-half, -sole.plane), point(half, -sole.plane)) : sectionPath(groove, half, -sole.plane, top), 'sole-section'),
    shape('reference', circle(point(0, 0), work.radius), 'round'),
    ...openCross(point(0, 0), { reach: Math.min(6, work.radius / 2), line: 'centre' }),
    shape('hidden', bore(work.offset - drill / 2), 'bore'), shape('hidden', bore(work.offset + drill / 2), 'bore'),
    shape('centre', line(point(work.offset, top - 3), point(work.offset, -soleHeight(sole, work.offset))), 'centre-line'),
    ...contactLines(page, work), ...grooveDimensions(page, work, left),
    ...dimension({ from: point(-half, top), to: point(half, top), offset: 8, gap: 1, label: say(block.width) }, font),
    ...titled(point(-left, Math.max(work.radius, groove === undefined ? 0 : endOf(groove.segments.at(-1)!).y) + 14), `${name}: section of the sole`, [
      `Square to the round, Ø ${say(2 * work.radius)}, seen from the ${isSquareAngle(s.angle) ? 'front' : 'acute end'}.`,
    ], font),
  ];
  return { name: 'section', title: 'section of the sole', whole: true, spine: false, datum: point(-half, -sole.plane), keepClear: [], lands: [], items };
};

/** Where a V touches the round. */
const contactLines = ({ s }: Page, work: RoundWork): Item[] => {
  const { contact, halfAngle } = s.sole;
  if (contact === undefined) return [];
  const y = -work.radius * Math.sin(halfAngle);
  return [-1, 1].map((side) => {
    const [dx, dy] = [side * Math.cos(halfAngle), -Math.sin(halfAngle)];
    return shape('mark', line(point(side * contact.halfWidth - 1.5 * dx, y - 1.5 * dy), point(side * contact.halfWidth + 1.5 * dx, y + 1.5 * dy)), 'contact');
  });
};

const grooveDimensions = ({ s, units, font }: Page, work: RoundWork, left: number): Item[] => {
  const { sole } = s;
  if (sole.depth === 0) return [];
  const say = (mm: number): string => lengthLabel(mm, units);
  const radius = (sole.depth ** 2 + sole.mouth ** 2) / (2 * sole.depth);
  const words = sole.form === 'v' ? [`V ${angleLabel(2 * sole.halfAngle)},`, `blade ${angleLabel(sole.halfAngle)} from upright`] : ['cove', `R ${say(radius)}`];
  const flank = sole.form === 'v' ? point(sole.mouth / 2, -sole.plane - sole.depth / 2)
    : point(radius * Math.sin(0.6), -radius * Math.cos(0.6));
  return [
    ...dimension({ from: point(-sole.mouth, -sole.plane), to: point(0, -sole.plane - sole.depth), along: -Math.PI / 2, offset: left - sole.mouth + 8, label: say(sole.depth) }, font),
    ...dimension({ from: point(-sole.mouth, -sole.plane), to: point(sole.mouth, -sole.plane), offset: -(sole.plane + Math.max(work.radius, -sole.plane) + 6), gap: 1, label: say(2 * sole.mouth) }, font),
    ...leader({ at: flank, elbow: point(left + 6, flank.y - 6), side: 'right', label: words }),
  ];
};
