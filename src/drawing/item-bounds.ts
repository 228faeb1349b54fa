import { boxOf, growBox, uniteBoxes, type Box } from '../geometry/box.js';
import { pathBounds } from '../geometry/bounds.js';
import { after, rotation, transformPoint, translation } from '../geometry/transform.js';
import type { Item, Lettering } from './drawing.js';
import type { Font } from './font.js';
import { lineStyles } from './line-types.js';

/** How far the font's signs reach above the base line and below it, in heights of a capital; marked letters (Ắ, ķ) further. */
const plain = { above: 1.15, below: 0.32 };
const marked = { above: 1.62, below: 0.37 };

/** The four corners of a line of lettering as set, mm, in order round it. */
export const letteringCorners = (item: Lettering, font: Font) => {
  const width = font.width(item.text, item.height);
  const { above, below } = /\p{M}/u.test(item.text.normalize('NFD')) ? marked : plain;
  const left = { start: 0, middle: -width / 2, end: -width }[item.anchor];
  const map = after(rotation(item.turn), translation(item.at.x, item.at.y));
  return [[left, -above], [left + width, -above], [left + width, below], [left, below]]
    .map(([x, y]) => transformPoint(map, { x: x!, y: y! * item.height }));
};

/** The box of an item with its pen width, mm. Lettering: its set width, from accents to descenders. */
export const itemBounds = (item: Item, font: Font): Box => {
  if (item.kind === 'lettering') return boxOf(letteringCorners(item, font));
  const box = pathBounds(item.path);
  return item.filled ? box : growBox(box, lineStyles[item.line].width / 2);
};

/** The box of all items with their pen widths, mm. */
export const itemsBounds = (items: readonly Item[], font: Font): Box => uniteBoxes(items.map((i) => itemBounds(i, font)));
