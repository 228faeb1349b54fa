import { nextSize } from '../../shop/sizes.js';
import { handsFromBlade, leastSawBlank } from '../../shop/tools.js';
import type { Units } from '../../units/units.js';
import type { DrillGuideFields } from './schema.js';
import { type Sole, soleHeight } from './sole.js';

/** The block, mm: the blank, and where things lie in it. Heights along the bore from the blank's bottom. */
export interface Block {
  /** Square to the bore, in the plane of the tilt; the bore in its middle. */
  readonly length: number;
  /** Across the plane of the tilt; the round's axis in its middle, the bore beside it by the offset. */
  readonly width: number;
  /** Of the blank, along the bore. */
  readonly height: number;
  /** In the block along the bore's axis, from its top to the sole. */
  readonly boreLength: number;
  /** From the blank's bottom to where the bore's axis leaves the sole. */
  readonly soleAtBore: number;
  /** From the top to the sole on the acute end, to the crown of a groove: the least height that is left of the block. */
  readonly shortEnd: number;
  /** Least wood beside the bore. */
  readonly wall: number;
  /** Length of the sole along the work. */
  readonly soleLength: number;
  /** Of the blank in which the sole is sawn, before the block is cut off it: long enough to hold and to clamp. */
  readonly longBlank: number;
}

/** Common practice: bore of 38 mm and three drill diameters at least; wood beside it and beside the groove; mm. */
export const leastBore = (drill: number): number => Math.max(38, 3 * drill);
/** Least height that the sole leaves at the block's short end, mm. Common practice. */
export const leastShortEnd = 6;
const usualWall = 10;
const usualShortEnd = 12;
const usualSole = 75;
const leastWidth = 38;

/** What the block is made for. */
export interface BlockRequest {
  readonly drill: number;
  readonly angle: number;
  readonly offset: number;
  readonly sole: Sole;
  readonly wanted: DrillGuideFields['block'];
  readonly units: Units;
}

/**
 * The block with what the spec leaves out filled in; exact. The sole runs at θ to the bore, lowest at the obtuse end. Where
 * no height is given the bore is `leastBore`, or longer where a flat angle would saw the acute end away.
 */
export const blockOf = ({ drill, angle, offset, sole, wanted, units }: BlockRequest): Block => {
  const [sin, tan] = [Math.sin(angle), Math.tan(angle)];
  const length = wanted.length ?? nextSize(Math.max(drill + 2 * usualWall, usualSole * sin), 'sawn', units);
  const width = wanted.width ?? nextSize(
    Math.max(leastWidth, 2 * Math.abs(offset) + drill + 2 * usualWall, sole.mouth === 0 ? 0 : 2 * sole.mouth + 2 * usualWall), 'sawn', units);
  const groove = (soleHeight(sole, offset) - sole.plane) / sin;
  const crown = sole.depth / sin - groove;
  const rise = angle === Math.PI / 2 ? 0 : length / 2 / tan;
  const soleAtBore = groove + rise;
  const boreLength = wanted.height === undefined
    ? Math.max(leastBore(drill), rise + crown + usualShortEnd)
    : wanted.height - soleAtBore;
  return {
    length, width, height: boreLength + soleAtBore, boreLength, soleAtBore,
    shortEnd: boreLength - crown - rise,
    wall: Math.min(length / 2, width / 2 - Math.abs(offset)) - drill / 2,
    soleLength: length / sin,
    longBlank: nextSize(Math.max(leastSawBlank, length + handsFromBlade), 'sawn', units),
  };
};
