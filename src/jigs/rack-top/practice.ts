import { millimetres, lengthMain } from '../../units/format.js';
import { lengthOf, words, type Words } from '../../units/quantity.js';
import { routerPractice } from '../../shop/router.js';
import type { Units } from '../../units/units.js';

/** The sheet that templates are made of, from and to, in the spec's units. */
export const sheetWords = (units: Units): Words => {
  const [from, to] = routerPractice(units).sheet;
  return words`${lengthOf(from, 'short')} to ${lengthOf(to, 'short')} sheet`;
};

/** Says lengths in the spec's own unit, but in millimetres what is too thin for a fraction of an inch (a glue line). */
export const sayThin = (units: Units) => (mm: number): string => (mm > 0 && mm < 25.4 / 128 ? millimetres(mm) : lengthMain(mm, units));

/** The size nearest a third of the board that spline stock is bought or planed to, mm; a third itself for a board too thin for any. */
export const splineThickness = (board: number, units: Units): number => {
  const sizes = (units === 'inch' ? [1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2, 3 / 4, 1].map((inches) => 25.4 * inches) : [3, 4, 6, 8, 10, 12, 15, 20, 25])
    .filter((size) => size <= board / 2);
  return sizes.length === 0 ? board / 3 : sizes.reduce((best, size) => (Math.abs(size - board / 3) < Math.abs(best - board / 3) ? size : best));
};
