import { carrierTurn, faceLength, heelToToe, toeShift } from '../../geometry/steep-cut.js';
import { nextSize } from '../../shop/sizes.js';
import { handsFromBlade, settingError } from '../../shop/tools.js';
import { usualBlockWall } from '../../shop/walls.js';
import type { Round } from '../../spec/spec.js';
import type { Units } from '../../units/units.js';
import { leastSideA, leastToeToFence, usualSeat, wasteRoom } from './limits.js';

/** The saddle cope whose first cut the carrier makes. */
export interface CarrierPair {
  readonly jig: string;
  readonly end: 'near' | 'far';
  /** From the finished tip, the horn, to the toe of the first cut, along the branch, mm. */
  readonly toeBeyondHorn: number;
}

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
  /** Along the groove's middle. */
  readonly length: number;
  /** Along side B, where its oblique end reaches furthest: what the carrier is cut from. */
  readonly blankLength: number;
  /** seatSide + bladeSide. */
  readonly width: number;
  /** From the groove's middle to the carrier's side away from the blade, and to the one that the blade crosses. */
  readonly seatSide: number;
  readonly bladeSide: number;
  /** Along the blade's line, from the fence to the toe and to the round's axis. */
  readonly toeToFence: number;
  readonly bladeToAxis: number;
  /** Along the blade's line, from the fence to the heel: how far the saw must reach. */
  readonly bladeReach: number;
  /** Along the round, from the toe to the fence: the greatest waste that lies beyond the toe, toe·cos μ ÷ sin κ. */
  readonly greatestWaste: number;
  /** Along the carrier's middle, from its end at the fence to the blade's line. */
  readonly endToBlade: number;
  /** What is left of the carrier's end on the fence beside the blade. */
  readonly seat: number;
  /** The corner of the carrier's far end that stands nearest to the blade, side B's, square off the blade's line. */
  readonly handDistance: number;
  readonly twist?: number;
  readonly pair?: CarrierPair;
}

/** What the spec says of a carrier, its round chosen. */
export interface CarrierRequest {
  readonly round: Round;
  readonly sharpAngle: number;
  readonly sawReading: number;
  readonly length?: number | undefined;
  readonly width?: number | undefined;
  readonly twist?: number | undefined;
  readonly pair?: CarrierPair | undefined;
}

/**
 * Least length along the groove's middle that keeps every corner of the far end as far from the blade as hands are, and leaves some of side A
 * beside the oblique end. mm, exact.
 */
export const leastLengthOf = ({ endToBlade, seatSide, bladeSide, sharpAngle, turn }: Pick<Carrier, 'endToBlade' | 'seatSide' | 'bladeSide' | 'sharpAngle' | 'turn'>): number => Math.max(
  endToBlade + (handsFromBlade + bladeSide * Math.cos(sharpAngle)) / Math.sin(sharpAngle), seatSide / Math.tan(turn) + leastSideA);

/** The carrier for a groove `grooveWidth` wide; `sawReading + sharpAngle` must be under 90°, else there is no turn left to give it. */
export const carrierOf = (request: CarrierRequest, grooveWidth: number, units: Units): Carrier => {
  const { round, sharpAngle, sawReading, twist, pair } = request;
  const cut = { diameter: round.diameter, sharpAngle, sawReading };
  const turn = carrierTurn(cut);
  const face = faceLength(cut);
  const alongRound = Math.cos(sawReading) / Math.sin(turn);
  const toeToFence = Math.max(leastToeToFence, wasteRoom / alongRound);
  const bladeToAxis = face / 2 + toeToFence;
  const endToBlade = bladeToAxis * alongRound;
  const axisOffBlade = bladeToAxis * Math.sin(sharpAngle);
  const bladeSide = Math.max(grooveWidth / 2 + usualBlockWall, axisOffBlade + leastToeToFence);
  const width = request.width ?? nextSize(usualSeat * Math.sin(turn) + axisOffBlade + bladeSide, 'sawn', units);
  const seatSide = width - bladeSide;
  const length = request.length ?? nextSize(leastLengthOf({ endToBlade, seatSide, bladeSide, sharpAngle, turn }), 'sawn', units);
  return {
    round, sharpAngle, sawReading, turn, endCut: Math.PI / 2 - turn,
    faceLength: face, heelToToe: heelToToe(cut), toeShift: toeShift(cut, settingError),
    length, blankLength: length + bladeSide / Math.tan(turn), width, seatSide, bladeSide, toeToFence, bladeToAxis, endToBlade,
    bladeReach: toeToFence + face, greatestWaste: toeToFence * alongRound,
    seat: (seatSide - axisOffBlade) / Math.sin(turn),
    handDistance: (length - endToBlade) * Math.sin(sharpAngle) - bladeSide * Math.cos(sharpAngle),
    ...(twist === undefined ? {} : { twist }), ...(pair === undefined ? {} : { pair }),
  };
};
