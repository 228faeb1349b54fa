import { lengthMain, millimetres } from '../../units/format.js';
import type { Units } from '../../units/units.js';

/** Lengths of shop practice in words, in the spec's units. Round figures in either, so that they are not conversions of each other. */
export const practice = (units: Units) => units === 'inch' ? {
  sheet: '1⁄4″ to 1⁄2″', offLine: '1⁄16″', pass: '1⁄4″', hands: '4″ (100 mm)',
} as const : {
  sheet: '6 to 12 mm', offLine: '1.5 mm', pass: '6 mm', hands: '100 mm (4″)',
} as const;

/** Says lengths in the spec's own unit, but in millimetres what is too thin for a fraction of an inch (a glue line). */
export const sayThin = (units: Units) => (mm: number): string => (mm > 0 && mm < 25.4 / 128 ? millimetres(mm) : lengthMain(mm, units));

/** The size nearest a third of the board that spline stock is bought or planed to, mm; a third itself for a board too thin for any. */
export const splineThickness = (board: number, units: Units): number => {
  const sizes = (units === 'inch' ? [1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2, 3 / 4, 1].map((inches) => 25.4 * inches) : [3, 4, 6, 8, 10, 12, 15, 20, 25]).filter((size) => size <= board / 2);
  return sizes.length === 0 ? board / 3 : sizes.reduce((best, size) => (Math.abs(size - board / 3) < Math.abs(best - board / 3) ? size : best));
};
