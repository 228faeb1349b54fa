import { multiplyRatios, ratio, ratioFromNumber, roundRatio, type Ratio } from './ratio.js';
import { degrees, type Units } from './units.js';

/*
 * Everything printed is rounded half away from zero, and a tie is judged on the decimal to nine places: 0.79375 to four
 * places is 0.7938, and so is what arithmetic leaves a hair beside it. So 1/32 in reads the same here as in charts that
 * round up, and equal parts get equal labels, a length and its mirror image labels that differ in the sign alone.
 */

/** A number to nine places, exactly. Throws on NaN and infinities. */
const settled = (value: number): Ratio => ratio(roundRatio(multiplyRatios(ratioFromNumber(value), ratio(billion))), billion);

const billion = 1_000_000_000n;

/** Fixed number of decimals (at most 9), rounded half away from zero, true minus sign, never "−0". Throws on NaN and infinities. */
export function fixed(value: number, decimals: number): string {
  const steps = roundRatio(multiplyRatios(settled(value), ratio(10n ** BigInt(decimals))));
  const digits = String(steps < 0n ? -steps : steps).padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  return `${steps < 0n ? '−' : ''}${whole}${decimals > 0 ? `.${digits.slice(-decimals)}` : ''}`;
}

/** One decimal, or none where the value is whole to within what arithmetic leaves behind (1e-9). */
function tenths(value: number): string {
  const near = Math.round(value);
  return Math.abs(value - near) <= 1e-9 ? fixed(near, 0) : fixed(value, 1);
}

/** `34.9 mm`, `38 mm`: nearest 0.1 mm; whole millimetres without `.0`. */
export const millimetres = (mm: number): string => `${tenths(mm)} mm`;

/** `1 3⁄8″`, `63⁄64″`, `56″`: nearest 1/64 in, reduced, with the fraction slash U+2044. At most 1/128 in (0.198 mm) off. */
export function fractionInches(mm: number): string {
  const steps = roundRatio(multiplyRatios(settled(mm), ratio(64n * 5n, 127n)));
  const size = steps < 0n ? -steps : steps;
  const whole = size / 64n;
  let [top, bottom] = [size % 64n, 64n];
  while (top > 0n && top % 2n === 0n) [top, bottom] = [top / 2n, bottom / 2n];
  const parts = [whole > 0n || top === 0n ? String(whole) : '', top > 0n ? `${top}⁄${bottom}` : ''];
  return `${steps < 0n ? '−' : ''}${parts.filter((part) => part !== '').join(' ')}″`;
}

/** A length in the spec's own unit alone: `1 3⁄8″` or `34.9 mm`. */
export const lengthMain = (mm: number, units: Units): string => (units === 'inch' ? fractionInches(mm) : millimetres(mm));

/** A length in both units, the spec's own first: `1 3⁄8″ (34.9 mm)` or `34.9 mm (1 3⁄8″)`. */
export const lengthLabel = (mm: number, units: Units): string =>
  units === 'inch' ? `${fractionInches(mm)} (${millimetres(mm)})` : `${millimetres(mm)} (${fractionInches(mm)})`;

/** `24°`, `24.5°`: nearest 0.1°; whole degrees without `.0`. */
export const angleLabel = (rad: number): string => `${tenths(degrees(rad))}°`;

/** An angle as a rise over a fixed run, to set with rule and square: `44.5 mm in 100 mm`, `5 11⁄32″ in 12″`; `upright` where the rise passes 100 runs. */
export function riseOverRun(rad: number, units: Units): string {
  const run = units === 'inch' ? 12 * 25.4 : 100;
  const rise = run * Math.tan(rad);
  if (Math.abs(rise) > 100 * run) return 'upright';
  return `${lengthMain(rise, units)} in ${lengthMain(run, units)}`;
}
