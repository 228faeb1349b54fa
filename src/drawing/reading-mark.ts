import { add, point, type Point } from '../geometry/point.js';
import { line, polyline } from '../geometry/shapes.js';
import type { Item } from './drawing.js';
import type { Font } from './font.js';
import { letter, shape } from './items.js';

/** Size of the reading mark, mm. */
export const readingMarkSize = { width: 30, height: 10 } as const;

const words = 'THIS FACE';
const note = ['flag flies right,', 'words read: no mirror'] as const;

/**
 * A mark that reads rightly only when the sheet is neither mirrored nor face down: a flag that flies to the right of its
 * pole, with words on it. `at` is the foot of the pole, bottom left of the mark. Part `reading-mark`.
 */
export const readingMark = (at: Point, font: Font): Item[] => {
  const place = (x: number, y: number): Point => add(at, point(x, -y));
  const height = 2.5;
  const fly = font.width(words, height) + 3;
  const [top, bottom] = [10, 5.2];
  const flag = polyline([place(0, top), place(fly + 2.5, top), place(fly, (top + bottom) / 2), place(fly + 2.5, bottom), place(0, bottom)]);
  return [
    shape('mark', line(place(0, 0), place(0, top)), 'reading-mark'),
    shape('mark', flag),
    letter(place(1.2, (top + bottom) / 2 - height / 2), words, { height }),
    ...note.map((text, i) => letter(place(1.2, 2.9 - 2.7 * i), text, { height: 1.8 })),
  ];
};
