import { GeometryError } from '../errors/geometry-error.js';

/**
 * A number as both file formats read it: at most `decimals` (≤ 6) places, no trailing zeros, no exponent, no −0.
 * Rounds by at most half a unit of the last place: four places of a millimetre are within 0.05 µm.
 * Refuses what is not finite, or too far away to be a place on paper.
 */
export const formatNumber = (value: number, decimals: number): string => {
  if (!(Math.abs(value) < 1e9)) throw new GeometryError(`a coordinate on the paper is ${value}`, { value });
  const unit = 10 ** decimals;
  return String(Math.round(value * unit) / unit);
};
