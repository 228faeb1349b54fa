import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item, Zone } from '../../drawing/drawing.js';
import { shape } from '../../drawing/items.js';
import { point } from '../../geometry/point.js';
import { line, polyline, rectangle } from '../../geometry/shapes.js';
import { lengthLabel } from '../../units/format.js';
import { isSquareAngle } from '../kit/angle-figures.js';
import { type Face, faceAt, faces, faceWidth } from './faces.js';
import { planeOverBottom } from './frame.js';
import type { DrillGuideSolution } from './solve.js';
import { titled, type Page } from './words.js';

/** Width of the strip under which the next face is glued, mm. */
const tab = 8;
/** What the height's dimension takes on the left, mm. */
const dimensionRoom = 13;

/** The height, along the left edge; widths above the faces, those too narrow for their figures a step higher, clear of their neighbour's. */
const dimensions = ({ s, units, font }: Page, run: readonly { face: Face; x: number; width: number }[]): Item[] => {
  const say = (mm: number): string => lengthLabel(mm, units);
  const { block } = s;
  const above = (from: number, size: number, offset: number): Item[] =>
    dimension({ from: point(from, 0), to: point(from + size, 0), offset, label: say(size) }, font);
  const narrow = (size: number): boolean => font.width(say(size), 2.5) + 2 > size;
  const [first, second, third] = run;
  const secondLevel = second !== undefined && narrow(second.width) ? 14 : 8;
  const firstLevel = first !== undefined && narrow(first.width) ? secondLevel + 6 : 8;
  return [
    ...(first === undefined ? [] : above(first.x, first.width, firstLevel)),
    ...(second === undefined ? [] : above(second.x, second.width, secondLevel)),
    // On the right side: how far the bore stands from the acute end.
    ...(third === undefined ? [] : above(third.x, block.length / 2, 8)),
    ...dimension({ from: point(0, block.height), to: point(0, 0), offset: 8, label: say(block.height) }, font),
  ];
};

/** Where the sole's line turns the block's corners and where it is lettered seams would cost most: a band along it on the ends. */
const clearZones = (s: DrillGuideSolution, run: readonly { face: Face; x: number; width: number }[]): readonly Zone[] =>
  run.filter(({ face }) => face === 'front' || face === 'back').map(({ face, x, width }) => {
    const level = s.block.height - planeOverBottom(s.block, s.angle, ((face === 'front' ? 1 : -1) * s.block.length) / 2);
    return { box: { x0: x, y0: level - 5, x1: x + width, y1: level + 5 }, why: 'sole line' };
  });

/** Whether anything is sawn after boring: a square block with a flat sole is finished then. */
export const isSawn = ({ angle, sole }: DrillGuideSolution): boolean => angle < Math.PI / 2 || sole.depth > 0;

/** Some of the faces side by side, with a tab at their end. */
const drawRun = (page: Page, chosen: readonly Face[], of: { name: string; title: string }): Drawing => {
  const { s, name } = page;
  const { height } = s.block;
  let end = 0;
  const run = chosen.map((face) => {
    const x = end;
    const width = faceWidth(s, face);
    end += width;
    return { face, x, width };
  });
  return {
    name: of.name, title: of.title, whole: true, spine: false, datum: point(0, height), keepClear: clearZones(s, run), lands: [],
    items: [
      shape('edge', rectangle(0, 0, end, height), 'block'),
      ...run.slice(1).map(({ x }) => shape('reference', line(point(x, 0), point(x, height)), 'fold')),
      shape('edge', polyline([point(end, 0), point(end + tab, 3), point(end + tab, height - 3), point(end, height)]), 'glue-tab'),
      ...run.flatMap(({ face, x }) => faceAt(page, face, x)),
      ...dimensions(page, run),
      ...titled(point(0, height + 8), `${name}: ${of.title}`, [
        isSawn(s) ? 'Cut out; cut the back off at its fold and keep it. Wrap the rest round the end of the long blank, top edges level, folds on its corners.'
          : 'Cut out, wrap round the blank with the top edges level and the folds on its corners, tab under, and glue on.',
        `${isSawn(s) ? 'The back goes on when the block is cut off. Saw along the dash-two-dots line. ' : ''}Left and right: seen from the ${isSquareAngle(s.angle) ? 'front' : 'acute end'}, block upright.`,
      ], page.font),
    ],
  };
};

/**
 * The block's four faces as one wrap, true size, seen from outside, top up: left side, acute end, right side, obtuse end; as two
 * halves where one sheet, `room` mm long, does not hold it. Parts `block`, `bore`, `centre-line`, `sole-line`, `groove` (on the
 * ends, where the slant stretches it), `station`.
 */
export const drawFaces = (page: Page, room: number): readonly Drawing[] => {
  const { block } = page.s;
  if (2 * (block.length + block.width) + tab + dimensionRoom <= room) {
    return [drawRun(page, faces, { name: 'faces', title: 'faces of the block' })];
  }
  return [
    drawRun(page, faces.slice(0, 2), { name: 'faces', title: 'faces of the block: left and front' }),
    drawRun(page, faces.slice(2), { name: 'faces-right', title: 'faces of the block: right and back' }),
  ];
};
