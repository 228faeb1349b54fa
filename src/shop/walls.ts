/** Two limits for one figure: what is sound, and what is least (strong warning). */
export interface TwoLimits {
  readonly sound: number;
  readonly least: number;
}

/*
 * Wood that is left round holes and grooves, mm unless said otherwise. All of it common practice, none of it a standard.
 */

/** A hole's diameter as a share of its round's, at most. */
export const holeShare: TwoLimits = { sound: 0.4, least: 0.5 };
/** Beside a hole, to an edge or to another cut. */
export const sideWall: TwoLimits = { sound: 8, least: 6 };
/** Beyond the end of a blind hole, point and slant counted. */
export const farWall: TwoLimits = { sound: 6, least: 4 };
/** Beside a hole off the axis of a round, to its surface. */
export const skin: TwoLimits = { sound: 5, least: 3 };
/** Under and beside a recess. */
export const recessWall: TwoLimits = { sound: 6, least: 4 };
/** Beside the groove of a block, or beside the bore of a guide. */
export const blockWall: TwoLimits = { sound: 6, least: 6 };
/** The same where the spec does not size the block. */
export const usualBlockWall = 12;
/** Under the groove of a block that is drilled into. */
export const blockFloor: TwoLimits = { sound: 10, least: 10 };
/** The same where the spec does not size the block. */
export const usualBlockFloor = 12;

/** From hole to hole along the grain, for the larger diameter. */
export function alongGrain(diameter: number): TwoLimits {
  return { sound: Math.max(diameter, 10), least: 6 };
}

/** From a hole to the end of the board or round. */
export function holeToEnd(diameter: number): TwoLimits {
  return { sound: Math.max(2 * diameter, 25), least: 12 };
}

/** Between two slots of a rack of this thickness. */
export function land(thickness: number): TwoLimits {
  return { sound: Math.max(19, thickness), least: 12 };
}
