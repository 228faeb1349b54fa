import { degrees, radians, type Units } from './units.js';

/*
 * What a remedy says must clear its finding when the maker writes it down as printed, in either of the two units that
 * labels give. So a least figure is rounded up and a most figure down, to a step at which both printed figures keep to
 * that side.
 */

/** Equal to a step within this, steps: a figure that is on a step stays there. */
const slack = 1e-7;

const stepOf = (units: Units): number => (units === 'inch' ? 25.4 / 64 : 0.1);

/** What the label's other unit prints of a length, mm. */
const otherLabel = (mm: number, units: Units): number => {
  const step = units === 'inch' ? 0.1 : 25.4 / 64;
  // A tie is judged as labels judge it: on the decimal, not on what arithmetic leaves beside it.
  return Math.round(Math.round((mm / step) * 1e8) / 1e8) * step;
};

const safe = (mm: number, units: Units, side: 1 | -1): number => {
  const step = stepOf(units);
  const first = side * Math.ceil(side * (mm / step) - slack);
  const steps = [0, 1, 2, 3, 4].map((i) => (first + side * i) * step);
  return steps.find((value) => side * (otherLabel(value, units) - mm) >= -slack) ?? steps[0]!;
};

/** The least length that labels can print in full, in both units, and that is no less than `mm`. mm. */
export function roundedUp(mm: number, units: Units): number {
  return safe(mm, units, 1);
}

/** The greatest length that labels can print in full, in both units, and that is no more than `mm`. mm. */
export function roundedDown(mm: number, units: Units): number {
  return safe(mm, units, -1);
}

/** An angle rounded up to the next 0.1°, as labels print it. Radians. */
export function angleRoundedUp(rad: number): number {
  return radians(Math.ceil(degrees(rad) * 10 - slack) / 10);
}

/** An angle rounded down to 0.1°, as labels print it. Radians. */
export function angleRoundedDown(rad: number): number {
  return radians(Math.floor(degrees(rad) * 10 + slack) / 10);
}
