import { GeometryError } from '../errors/geometry-error.js';

const units = [1, 10, 100, 1e3, 1e4, 1e5, 1e6] as const;

/** A fraction in steps of 10^−places as its decimals: leading zeros kept, trailing ones dropped. */
const decimalsOf = (steps: number, places: number): string => {
  let digits = places;
  let left = steps;
  for (; left % 10 === 0; left /= 10) digits -= 1;
  return String(left).padStart(digits, '0');
};

/**
 * A number as both file formats read it: at most `decimals` (≤ 6) places, no trailing zeros, no exponent, no −0.
 * Rounds by at most half a unit of the last place: four places of a millimetre are within 0.05 µm.
 * Refuses what is not finite, or too far away to be a place on paper.
 */
export const formatNumber = (value: number, decimals: number): string => {
  if (!(Math.abs(value) < 1e9)) throw new GeometryError('coordinate-out-of-reach', `a coordinate on the paper is ${value}`, { value });
  // In whole steps: a drawing has a hundred thousand numbers, and printing a double the shortest way takes three times as long.
  const unit = units[decimals] ?? 10 ** decimals;
  const steps = Math.round(value * unit);
  const size = Math.abs(steps);
  const whole = Math.floor(size / unit);
  const rest = size - whole * unit;
  const sign = steps < 0 ? '-' : '';
  return rest === 0 ? `${size === 0 ? '' : sign}${whole}` : `${sign}${whole}.${decimalsOf(rest, decimals)}`;
};
