import { dimension } from '../../drawing/dimension.js';
import type { Drawing, Item } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { line, polyline, rectangle } from '../../geometry/shapes.js';
import { point } from '../../geometry/point.js';
import { rotation, scaling, after, transformPath, translation, type Transform } from '../../geometry/transform.js';
import { angleLabel, lengthLabel, riseOverRun } from '../../units/format.js';
import { onSide, planeOverBottom, soleOverBottom, stationAt } from './frame.js';
import { groovePath } from './groove-path.js';
import { identity, lettersIn, titled, type Page } from './words.js';
import { offsetOf } from './work.js';

/** Width of the strip under which the wrap's end is glued, mm. */
const tab = 8;

/** The left side's lines under `map`: x from the obtuse end, y down from the top. */
const sideLines = ({ s }: Page, map: Transform): Item[] => {
  const { block, angle, drill, sole, work } = s;
  const across = offsetOf(work);
  const half = block.length / 2;
  const place = (u: number, up: number) => onSide(block, u, up);
  const upright = (u: number) => line(place(u, block.height), place(u, soleOverBottom(s, u, across)));
  const slanting = (over: number) => line(place(-half, planeOverBottom(block, angle, -half) + over), place(half, planeOverBottom(block, angle, half) + over));
  const u = stationAt(s);
  const foot = place(u, planeOverBottom(block, angle, u));
  const reach = Math.min(6, 0.4 * block.shortEnd + 2);
  const station = line(point(foot.x + 3 * Math.cos(angle), foot.y + 3 * Math.sin(angle)), point(foot.x - reach * Math.cos(angle), foot.y - reach * Math.sin(angle)));
  const put = (path: Parameters<typeof transformPath>[1]) => transformPath(map, path);
  return [
    shape('saw', put(slanting(0)), 'sole-line'),
    ...(sole.depth === 0 ? [] : [shape('hidden', put(slanting(sole.depth / Math.sin(angle))), 'groove-crown')]),
    shape('hidden', put(upright(-drill / 2)), 'bore'), shape('hidden', put(upright(drill / 2)), 'bore'),
    shape('centre', put(upright(0)), 'centre-line'),
    shape('reference', put(station), 'station'),
  ];
};

/** An end's lines, x from `left`: centre line in the plane of the tilt, the sole's line, the groove as the slanting end shows it. */
const endLines = ({ s }: Page, left: number, end: 'front' | 'back'): Item[] => {
  const { block, angle, work, sole } = s;
  const side = end === 'front' ? 1 : -1;
  const level = block.height - planeOverBottom(block, angle, (side * block.length) / 2);
  const middle = left + block.width / 2;
  const centre = middle + side * offsetOf(work);
  return [
    shape('centre', line(point(centre, 0), point(centre, block.height)), 'centre-line'),
    shape('saw', line(point(left, level), point(left + block.width, level)), 'sole-line'),
    ...(sole.depth === 0 ? [] : [shape('saw', transformPath(
      after(scaling(1, 1 / Math.sin(angle)), translation(middle, level)), groovePath(sole)), 'groove')]),
  ];
};

/** Along the waste side of the sole's line on the left side: what angle it runs at, where it fits. */
const soleWords = ({ s, units, font }: Page): Item[] => {
  const { block, angle } = s;
  const tilt = Math.PI / 2 - angle;
  const height = 2.5;
  const below = height + 1.6;
  // Between the line, the block's bottom edge and its acute edge, `below` under the line.
  const start = tilt === 0 ? Infinity : below * Math.tan(angle) + 1;
  const room = block.soleLength - start - below / Math.tan(angle) - 1;
  const words = [
    `saw: ${angleLabel(angle)} to the bore, ${angleLabel(tilt)} off square, ${riseOverRun(tilt, units)}`,
    `saw: ${angleLabel(angle)} to the bore, ${angleLabel(tilt)} off square`, `saw: ${angleLabel(angle)} to the bore`, 'waste',
  ].find((text) => font.width(text, height) <= room);
  if (words === undefined) return [];
  const at = point(start * Math.sin(angle) + below * Math.cos(angle), block.height - start * Math.cos(angle) + below * Math.sin(angle));
  return [letter(at, words, { height, turn: -tilt })];
};

/** Names and identity in the bare columns of the four faces. */
const faceWords = (page: Page, lefts: readonly [number, number, number, number]): Item[] => {
  const { s, font } = page;
  const { block, drill, work } = s;
  const column = (block.length - drill) / 2 - 3;
  const upwards = { font, upwards: true };
  const sideColumn = (left: number, words: readonly (readonly string[])[]): Item[] =>
    lettersIn(point(left + 1.5, block.height - 4 - column / Math.tan(s.angle)), { width: block.height - 6 - column / Math.tan(s.angle), height: column }, words, upwards);
  const endColumn = (left: number, end: 'front' | 'back', words: readonly (readonly string[])[]): Item[] => {
    const side = end === 'front' ? 1 : -1;
    const width = block.width / 2 + side * offsetOf(work) - 3;
    const crown = s.sole.depth / Math.sin(s.angle);
    const height = end === 'front' ? block.shortEnd - crown : block.height - crown;
    return lettersIn(point(left + 1.5, height - 3), { width: height - 5, height: width }, words, upwards);
  };
  const rightColumn = lefts[2] + block.length / 2 + drill / 2;
  return [
    ...sideColumn(lefts[0], [['LEFT SIDE', 'LEFT'], ...identity(page)]),
    ...endColumn(lefts[1], 'front', [['FRONT – acute end', 'FRONT', 'F']]),
    ...lettersIn(point(rightColumn + 1.5, block.height - 4 - block.soleLength * Math.cos(s.angle) / 2),
      { width: block.height - 6 - block.soleLength * Math.cos(s.angle) / 2, height: column }, [['RIGHT SIDE', 'RIGHT'], ...identity(page)], upwards),
    ...endColumn(lefts[3], 'back', [['BACK – obtuse end', 'BACK'], ...identity(page)]),
  ];
};

const outline = ({ s }: Page, lefts: readonly number[]): Item[] => {
  const { block } = s;
  const width = 2 * (block.length + block.width);
  return [
    shape('cut', rectangle(0, 0, width, block.height), 'block'),
    ...lefts.slice(1).map((x) => shape('reference', line(point(x, 0), point(x, block.height)), 'fold')),
    shape('cut', polyline([point(width, 0), point(width + tab, 3), point(width + tab, block.height - 3), point(width, block.height)]), 'glue-tab'),
  ];
};

const dimensions = ({ s, units, font }: Page, lefts: readonly number[]): Item[] => {
  const { block } = s;
  const say = (mm: number): string => lengthLabel(mm, units);
  return [
    ...[block.length, block.width].flatMap((size, i) =>
      dimension({ from: point(lefts[i]!, 0), to: point(lefts[i]! + size, 0), offset: 8, label: say(size) }, font)),
    ...dimension({ from: point(0, block.height), to: point(0, 0), offset: 8, label: say(block.height) }, font),
    ...dimension({ from: point(lefts[2]!, 0), to: point(lefts[2]! + block.length / 2, 0), offset: 8, label: say(block.length / 2) }, font),
  ];
};

/**
 * The block's four faces as one wrap, true size, seen from outside, top up: left side, acute end, right side, obtuse end. Parts
 * `block`, `bore`, `centre-line`, `sole-line`, `groove` (on the ends, where the slant stretches it), `station`.
 */
export const drawFaces = (page: Page): Drawing => {
  const { s, name } = page;
  const { block } = s;
  const lefts = [0, block.length, block.length + block.width, 2 * block.length + block.width] as const;
  const mirrored = after(scaling(-1, 1), translation(lefts[2] + block.length, 0));
  return {
    name: 'faces', title: 'Faces of the block', whole: true, spine: false, datum: point(0, block.height), keepClear: [], lands: [],
    items: [
      ...outline(page, lefts),
      ...sideLines(page, rotation(0)), ...endLines(page, lefts[1], 'front'), ...sideLines(page, mirrored), ...endLines(page, lefts[3], 'back'),
      ...soleWords(page), ...faceWords(page, lefts), ...dimensions(page, lefts),
      ...titled(point(0, block.height + 8), `${name}: faces of the block`, [
        'Cut out, wrap round the blank with the top edges level and the folds on its corners, tab under, and glue on.',
        'Saw along the dash-two-dots line. Left and right: seen from the acute end, block upright.',
      ]),
    ],
  };
};
