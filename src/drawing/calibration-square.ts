import { add, point, type Point } from '../geometry/point.js';
import { line, rectangle } from '../geometry/shapes.js';
import { lengthLabel } from '../units/format.js';
import { mmPerInch, type Units } from '../units/units.js';
import type { Item } from './drawing.js';
import { letter, shape } from './items.js';

/** Side of the square: 100 mm, or 4 in where the sheet speaks inches. Exact. */
export const calibrationSide = (units: Units): number => (units === 'inch' ? 4 * mmPerInch : 100);

/**
 * The calibration square with its diagonals, from its top left corner, with what to measure written in its four fields:
 * sides across and down, and that the diagonals must be equal. Outline part `calibration-square`, exact.
 */
export const calibrationSquare = (at: Point, units: Units): Item[] => {
  const side = calibrationSide(units);
  const corner = (x: number, y: number): Point => add(at, point(x * side, y * side));
  const across = lengthLabel(side, units);
  const note = (y: number, text: string, height = 2.5) => letter(add(corner(0.5, 0), point(0, y)), text, { height, anchor: 'middle' });
  const upright = (x: number) => letter(add(corner(0, 0.5), point(x, 0)), `down: ${across}`, { height: 3.5, turn: -Math.PI / 2, anchor: 'middle' });
  return [
    shape('reference', rectangle(at.x, at.y, side, side), 'calibration-square'),
    shape('reference', line(corner(0, 0), corner(1, 1)), 'calibration-diagonal-1'),
    shape('reference', line(corner(1, 0), corner(0, 1)), 'calibration-diagonal-2'),
    note(8, `across: ${across}`, 3.5),
    note(side - 13, 'both diagonals alike:'),
    note(side - 8, lengthLabel(side * Math.SQRT2, units)),
    upright(8),
    upright(side - 4.5),
  ];
};
