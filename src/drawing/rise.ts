import { pathBounds } from '../geometry/bounds.js';
import type { Font } from './font.js';

/** Letters that rise no higher than a capital, or by less than shows. */
const level = /^[\x20-\x7e·–—…‘’“”°×Ø½¼¾′″⁄]*$/;

/** How far a line's accents stand above its capitals, mm: a block whose first line it is begins lower by as much. Exact, by the outlines. */
export const riseAbove = (text: string, height: number, font: Font): number => {
  if (level.test(text)) return 0;
  return font.outlines(text, height).reduce((most, path) => Math.max(most, -pathBounds(path).y0 - height), 0);
};
