import type { Units } from '../units/units.js';

/** Round figures of routing with a template, mm: chosen for each system of units, not converted from the other. Common practice. */
export interface RouterPractice {
  /** Thickness of the sheet that templates are made of: from, to, and usual. */
  readonly sheet: readonly [number, number];
  readonly usualSheet: number;
  /** Waste left outside the line by saw or drill before flush trimming, at most; and at least. */
  readonly offLine: number;
  readonly leastOffLine: number;
  /** Depth of one pass, at most. */
  readonly pass: number;
}

/** The figures of a system of units. */
export function routerPractice(units: Units): RouterPractice {
  return units === 'inch'
    ? { sheet: [6.35, 12.7], usualSheet: 12.7, offLine: 25.4 / 16, leastOffLine: 0.5, pass: 6.35 }
    : { sheet: [6, 12], usualSheet: 12, offLine: 1.5, leastOffLine: 0.5, pass: 6 };
}

/** A loose spline is so much narrower than its two grooves together, mm: room for glue, and for a groove a little shallow. Common practice: 1 to 2. */
export const splinePlay = 1.5;
/** Between the cutter's farthest reach and what must not be cut, mm. Common practice. */
export const cutterClearance = 3;
/** Inside radius over the cutter's, so that the cutter does not fill the corner and burn, mm. Common practice. */
export const radiusToSpare = 0.5;
/** The thinnest cutter that a spec may ask for, mm: a tighter corner is sharp. */
export const leastCutter = 1.5;
