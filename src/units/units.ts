/** The unit of a bare number in a spec, and the one that a sheet prints first. */
export type Units = 'inch' | 'mm';

/** Exact by definition (1 July 1959). */
export const mmPerInch = 25.4;
/** 72 pt = 1 in = 25.4 mm, exact. */
export const pointsPerMm = 72 / 25.4;

/** Degrees from radians. */
export const degrees = (radians: number): number => (radians * 180) / Math.PI;
/** Radians from degrees. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
