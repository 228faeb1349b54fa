import { lengthLabel } from '../units/format.js';
import { mmPerInch, type Units } from '../units/units.js';

const stepOf = (units: Units): number => (units === 'inch' ? mmPerInch / 64 : 0.1);

/** Arithmetic may leave a limit this share of a step beside a whole step. */
const slack = 1e-6;

/** A limit that must not be passed, in both units, rounded down so that what is printed keeps to it. mm */
export const atMost = (mm: number, units: Units): string => lengthLabel(Math.floor(mm / stepOf(units) + slack) * stepOf(units), units);

/** A limit that must be reached, in both units, rounded up so that what is printed reaches it. mm */
export const atLeast = (mm: number, units: Units): string => lengthLabel(Math.ceil(mm / stepOf(units) - slack) * stepOf(units), units);
