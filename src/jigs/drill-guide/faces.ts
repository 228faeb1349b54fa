import type { Item } from '../../drawing/drawing.js';
import { letter, moveItems, shape } from '../../drawing/items.js';
import type { Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';
import { after, scaling, transformPath, translation, type Transform } from '../../geometry/transform.js';
import { angleLabel, riseOverRun } from '../../units/format.js';
import { isSquareAngle } from '../kit/angle-figures.js';
import { onSide, planeOverBottom, soleOverBottom, stationAt } from './frame.js';
import { groovePath } from './groove-path.js';
import type { DrillGuideSolution } from './solve.js';
import { identity, lettersIn, type Page } from './words.js';
import { offsetOf } from './work.js';

/** The block's upright faces, in the order in which they follow to the right on paper read from outside. `front` is the acute end. */
export const faces = ['left', 'front', 'right', 'back'] as const;
/** One of the upright faces. */
export type Face = (typeof faces)[number];

/** Width of a face, mm. */
export const faceWidth = ({ block }: DrillGuideSolution, face: Face): number =>
  (face === 'left' || face === 'right' ? block.length : block.width);

const identityMap = translation(0, 0);

/** The lines of the left side, or under a mirror of the right: x from the obtuse end, y down from the top. */
const sideLines = ({ s }: Page, map: Transform): Item[] => {
  const { block, angle, drill, sole, work } = s;
  const half = block.length / 2;
  const upright = (u: number): Path => line(onSide(block, u, block.height), onSide(block, u, soleOverBottom(s, u, offsetOf(work))));
  const slanting = (over: number): Path => line(
    onSide(block, -half, planeOverBottom(block, angle, -half) + over), onSide(block, half, planeOverBottom(block, angle, half) + over));
  const put = (path: Path): Path => transformPath(map, path);
  return [
    shape('saw', put(slanting(0)), 'sole-line'),
    ...(sole.depth === 0 ? [] : [shape('hidden', put(slanting(sole.depth / Math.sin(angle))), 'groove-crown')]),
    shape('hidden', put(upright(-drill / 2)), 'bore'), shape('hidden', put(upright(drill / 2)), 'bore'),
    shape('centre', put(upright(0)), 'centre-line'),
    ...stationMark(s).map((path) => shape('reference', put(path), 'station')),
  ];
};

/** Square to the sole, where the bit's axis enters a round under the groove; on flat soles the centre line itself stands there. */
const stationMark = (s: DrillGuideSolution): readonly Path[] => {
  const { block, angle, sole, work } = s;
  if (sole.depth === 0 && work.kind === 'flat') return [];
  const u = stationAt(s);
  const up = planeOverBottom(block, angle, u);
  const reach = stationReach(s);
  return [line(onSide(block, u, up), onSide(block, u - reach * Math.cos(angle), up + reach * Math.sin(angle)))];
};

const stationReach = ({ block }: DrillGuideSolution): number => Math.min(6, 0.4 * block.shortEnd + 2);

/** How far over the blank's bottom the bare column beside the bore begins: above the groove, and above the station mark where that leans into it. */
const columnFoot = (s: DrillGuideSolution): number => {
  const { block, drill, angle, sole } = s;
  const edge = -drill / 2;
  const groove = planeOverBottom(block, angle, edge) + sole.depth / Math.sin(angle);
  const u = stationAt(s);
  const leans = u - stationReach(s) * Math.cos(angle) < edge;
  return leans ? Math.max(groove, planeOverBottom(block, angle, u) + stationReach(s) * Math.sin(angle)) : groove;
};

/** An end's lines: centre line in the plane of the tilt, the sole's line, the groove as the slanting end shows it. */
const endLines = ({ s }: Page, face: 'front' | 'back'): Item[] => {
  const { block, angle, work, sole } = s;
  const side = face === 'front' ? 1 : -1;
  const level = block.height - planeOverBottom(block, angle, (side * block.length) / 2);
  const middle = block.width / 2;
  const centre = middle + side * offsetOf(work);
  const stretched = after(scaling(1, 1 / Math.sin(angle)), translation(middle, level));
  return [
    shape('centre', line(point(centre, 0), point(centre, block.height)), 'centre-line'),
    shape('saw', line(point(0, level), point(block.width, level)), 'sole-line'),
    ...(sole.depth === 0 ? [] : [shape('saw', transformPath(stretched, groovePath(sole)), 'groove')]),
  ];
};

/** Along the waste side of the sole's line on the left side: what angle it runs at, where it fits. */
const soleWords = ({ s, units, font }: Page): Item[] => {
  const { block, angle } = s;
  const tilt = Math.PI / 2 - angle;
  if (tilt < 1e-9) return [];
  const height = 2.5;
  const below = height + 1.6;
  // Clear of the line, of the block's bottom and of its acute edge, tails counted.
  const deep = below + 0.32 * height + 0.5;
  const start = deep * Math.tan(angle) + 1;
  const room = block.soleLength - start - deep / Math.tan(angle) - 1;
  const words = [
    `saw: ${angleLabel(angle)} to the bore, ${angleLabel(tilt)} off square, ${riseOverRun(tilt, units)}`,
    `saw: ${angleLabel(angle)} to the bore, ${angleLabel(tilt)} off square`, `saw: ${angleLabel(angle)} to the bore`, 'waste',
  ].find((text) => font.width(text, height) <= room);
  if (words === undefined) return [];
  const at = point(start * Math.sin(angle) + below * Math.cos(angle), block.height - start * Math.cos(angle) + below * Math.sin(angle));
  return [letter(at, words, { height, turn: -tilt })];
};

/** Name and identity beside the bore on the obtuse side, above the groove; `x` is the column's left edge. */
const sideWords = (page: Page, x: number, names: readonly string[]): Item[] => {
  const { block, drill } = page.s;
  const foot = block.height - columnFoot(page.s) - 3;
  const room = { width: foot - 2, height: (block.length - drill) / 2 - 3 };
  return lettersIn(point(x + 1.5, foot), room, [names, ...identity(page)], { font: page.font, upwards: true });
};

const backWords = (page: Page): Item[] => {
  const { block, angle, sole, work } = page.s;
  const foot = block.height - sole.depth / Math.sin(angle) - 3;
  const room = { width: foot - 2, height: block.width / 2 - offsetOf(work) - 3 };
  return lettersIn(point(1.5, foot), room, [isSquareAngle(angle) ? ['BACK'] : ['BACK – obtuse end', 'BACK'], ...identity(page)], { font: page.font, upwards: true });
};

/** The acute end's name above its sole, and where its waste is. */
const frontWords = ({ s, font }: Page): Item[] => {
  const { block, angle, work } = s;
  const width = block.width / 2 + offsetOf(work) - 3;
  const waste = planeOverBottom(block, angle, block.length / 2);
  const whole = 'FRONT – acute end';
  const names = isSquareAngle(angle) ? [['FRONT']] : font.width(whole, 2.5) <= width ? [[whole]] : [['FRONT'], ['acute end']];
  return [
    ...lettersIn(point(1.5, 2), { width, height: block.shortEnd - 3 }, names, { font }),
    ...lettersIn(point(1.5, block.height - waste + 2), { width, height: waste - 3 }, [['waste']], { font }),
  ];
};

/** All that stands on one face, true size, seen from outside, its top left corner at the origin. */
const faceItems: Readonly<Record<Face, (page: Page) => Item[]>> = {
  left: (page) => [...sideLines(page, identityMap), ...soleWords(page), ...sideWords(page, 0, ['LEFT SIDE', 'LEFT'])],
  front: (page) => [...endLines(page, 'front'), ...frontWords(page)],
  right: (page) => [
    ...sideLines(page, after(scaling(-1, 1), translation(page.s.block.length, 0))),
    ...sideWords(page, (page.s.block.length + page.s.drill) / 2, ['RIGHT SIDE', 'RIGHT']),
  ],
  back: (page) => [...endLines(page, 'back'), ...backWords(page)],
};

/** A face moved to where its left edge stands in a wrap. */
export const faceAt = (page: Page, face: Face, x: number): Item[] => moveItems(faceItems[face](page), x, 0);
