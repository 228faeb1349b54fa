import { carrierTurn, faceLength, heelToToe, toeShift } from '../../geometry/steep-cut.js';
import type { Round } from '../../spec/spec.js';
import type { Units } from '../../units/units.js';
import { radians } from '../../units/units.js';
import { handsFromBlade, toeShiftError, toeToFence, usualSeat, usualWall } from './limits.js';
import { roundUp } from './round-up.js';

/**
 * A carrier: a V-block whose end, sawn at `endCut` from square, stands against the saw's fence, so that the round leads away
 * from the fence at `turn`. The blade then meets the round at the sharp angle α = 90° − (μ + κ). mm, radians.
 *
 * Plan frame: origin where the blade's line meets the fence, fence along x, y towards the maker; the round leads to the left.
 */
export interface Carrier {
  readonly round: Round;
  readonly sharpAngle: number;
  /** μ: the saw's own gauge, from square, turned towards the carrier. */
  readonly sawReading: number;
  /** κ: the round's turn away from lying along the fence. */
  readonly turn: number;
  /** Carrier's own end, from square to its length: 90° − κ = α + μ. */
  readonly endCut: number;
  readonly faceLength: number;
  readonly heelToToe: number;
  /** How far the toe moves for half a degree of error. */
  readonly toeShift: number;
  readonly length: number;
  /** seatSide + bladeSide. */
  readonly width: number;
  /** From the groove's middle to the carrier's side away from the blade, and to the one that the blade crosses. */
  readonly seatSide: number;
  readonly bladeSide: number;
  /** Along the blade's line, from the fence to the round's axis. */
  readonly bladeToAxis: number;
  /** Along the carrier's middle, from its end at the fence to the blade's line. */
  readonly endToBlade: number;
  /** What is left of the carrier's end on the fence beside the blade. */
  readonly seat: number;
  /** The groove's middle at the carrier's far end, square off the blade. */
  readonly handDistance: number;
  readonly twist?: number;
}

/** What the spec says of a carrier, its round chosen. */
export interface CarrierRequest {
  readonly round: Round;
  readonly sharpAngle: number;
  readonly sawReading: number;
  readonly length?: number | undefined;
  readonly width?: number | undefined;
  readonly twist?: number | undefined;
}

/** The carrier for a groove `grooveWidth` wide; `sawReading + sharpAngle` must be under 90°, else there is no turn left to give it. */
export const carrierOf = (request: CarrierRequest, grooveWidth: number, units: Units): Carrier => {
  const { round, sharpAngle, sawReading, twist } = request;
  const cut = { diameter: round.diameter, sharpAngle, sawReading };
  const turn = carrierTurn(cut);
  const bladeToAxis = faceLength(cut) / 2 + toeToFence;
  const endToBlade = (bladeToAxis * Math.cos(sawReading)) / Math.sin(turn);
  const axisOffBlade = bladeToAxis * Math.sin(sharpAngle);
  const bladeSide = Math.max(grooveWidth / 2 + usualWall, axisOffBlade + toeToFence);
  const width = request.width ?? roundUp(usualSeat * Math.sin(turn) + axisOffBlade + bladeSide, 'block', units);
  const seatSide = width - bladeSide;
  const length = request.length ?? roundUp(endToBlade + handsFromBlade / Math.sin(sharpAngle), 'block', units);
  return {
    round, sharpAngle, sawReading, turn, endCut: Math.PI / 2 - turn,
    faceLength: faceLength(cut),
    heelToToe: heelToToe(cut),
    toeShift: toeShift(cut, radians(toeShiftError)),
    length, width, seatSide, bladeSide, bladeToAxis, endToBlade,
    seat: (seatSide - axisOffBlade) / Math.sin(turn),
    handDistance: (length - endToBlade) * Math.sin(sharpAngle),
    ...(twist === undefined ? {} : { twist }),
  };
};
