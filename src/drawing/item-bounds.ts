import { boxOf, growBox, uniteBoxes, type Box } from '../geometry/box.js';
import { pathBounds } from '../geometry/bounds.js';
import type { Point } from '../geometry/point.js';
import type { Item, Lettering } from './drawing.js';
import type { Font } from './font.js';
import { lineStyles } from './line-types.js';

/** How far the font's signs reach above the base line and below it, in heights of a capital; marked letters (Ắ, ķ) further. */
const plain = { above: 1.15, below: 0.32 };
const marked = { above: 1.62, below: 0.37 };

/** Signs that cannot be marked, told apart first: most words are of these, and decomposing costs. */
const unmarked = /^[\x00-\xbf\u2010-\u205f]*$/;
const hasMarks = (text: string): boolean => !unmarked.test(text) && /\p{M}/u.test(text.normalize('NFD'));

/** How much of its width a line of lettering has to the left of its anchor. */
const before = { start: 0, middle: 0.5, end: 1 } as const;

/** The four corners of a line of lettering as set, mm, in order round it. */
export const letteringCorners = ({ at, text, height, anchor, turn }: Lettering, font: Font): readonly Point[] => {
  const width = font.width(text, height);
  const { above, below } = hasMarks(text) ? marked : plain;
  const [cos, sin] = turn === 0 ? [1, 0] : [Math.cos(turn), Math.sin(turn)];
  const left = -before[anchor] * width;
  const [right, top, bottom] = [left + width, -above * height, below * height];
  const corner = (x: number, y: number): Point => ({ x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos });
  return [corner(left, top), corner(right, top), corner(right, bottom), corner(left, bottom)];
};

/** The box of an item with its pen width, mm. Lettering: its set width, from accents to descenders. */
export const itemBounds = (item: Item, font: Font): Box => {
  if (item.kind === 'lettering') return boxOf(letteringCorners(item, font));
  const box = pathBounds(item.path);
  return item.filled ? box : growBox(box, lineStyles[item.line].width / 2);
};

/** The box of all items with their pen widths, mm. */
export const itemsBounds = (items: readonly Item[], font: Font): Box => uniteBoxes(items.map((i) => itemBounds(i, font)));

/** The box of what shows: lettering no further than its clip. */
export const shownBounds = (items: readonly Item[], font: Font): Box => uniteBoxes(items.map((item) => {
  const box = itemBounds(item, font);
  if (item.kind !== 'lettering' || item.clip === undefined) return box;
  const { clip } = item;
  return { x0: Math.max(box.x0, clip.x0), y0: Math.max(box.y0, clip.y0), x1: Math.min(box.x1, clip.x1), y1: Math.min(box.y1, clip.y1) };
}));
