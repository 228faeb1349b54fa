import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import { faceLength, heelToToe, toeShift } from '../../geometry/steep-cut.js';
import { radians } from '../../units/units.js';
import type { Carrier } from './carrier.js';
import { carrierPicture } from './carrier-picture.js';
import { carrierCautions } from './cautions.js';
import { carrierCodes } from './check-carrier.js';
import { handsFromBlade, toeShiftError } from './limits.js';
import type { SetUpSource } from './set-ups.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

const numbers = (c: Carrier, say: Words): NumberRow[] => [
  { label: 'Cut, from the axis (sharp angle)', value: say.slope(c.sharpAngle) },
  { label: 'Cut, from square', value: say.slope(Math.PI / 2 - c.sharpAngle) },
  { label: 'Cut, on the saw’s own gauge', value: `${say.angle(c.sawReading)} from square, turned towards the carrier` },
  { label: 'Carrier’s turn away from lying along the fence', value: say.slope(c.turn) },
  { label: 'Carrier’s own end, from square', value: say.slope(c.endCut) },
  { label: 'Carrier: length × width', value: `${say.length(c.length)} × ${say.length(c.width)}` },
  { label: 'Fence face to the round’s axis, along the blade’s line', value: say.length(c.bladeToAxis) },
  { label: 'Carrier’s end left on the fence beside the blade', value: say.length(c.seat) },
  { label: `Far end of the carrier from the blade’s line (hands: ${say.length(handsFromBlade)} at least)`, value: say.length(c.handDistance) },
  ...(c.twist === undefined ? [] : [
    { label: 'Other end’s cut against this one, counter-clockwise seen from the other end', value: `${say.angle(c.twist)}; ${say.length(Math.abs(c.twist) * (c.round.diameter / 2))} round the girth` },
  ]),
];

/** The finished end of every round that the groove holds, cut at the same angle. */
const ends = (c: Carrier, s: VCradleSolution, say: Words): SetUp['tables'][number] => ({
  heading: 'The finished end, by round',
  columns: ['Round', 'Measured', 'Face', 'Heel to toe', 'Toe moves for half a degree'],
  rows: s.held.map(({ round }) => {
    const cut = { diameter: round.diameter, sharpAngle: c.sharpAngle, sawReading: c.sawReading };
    return [round.name, ...[round.diameter, faceLength(cut), heelToToe(cut), toeShift(cut, radians(toeShiftError))].map(say.length)];
  }),
});

/** The cut that is steeper than the saw goes. */
export const carrierSetUp = (c: Carrier, { solution: s, findings, say }: SetUpSource): SetUp => ({
  operation: `Cut the end of ${c.round.name} on the carrier`,
  machine: 'Mitre saw',
  picture: carrierPicture(c),
  pictureNote: 'From above, not to scale. The maker stands below; the saw’s line runs square to the fence at a reading of 0.',
  numbers: numbers(c, say),
  tables: [ends(c, s, say)],
  steps: [
    `Saw the same V along the middle of a piece ${say.length(c.width)} wide; then saw one end at ${say.angle(c.endCut)} from square. Glue the carrier pattern on with its end line on that end.`,
    `Stand that end against the fence with the pattern’s blade line under the blade, the saw at ${say.angle(c.sawReading)}; clamp it to fence and table.`,
    'Without a round: cut down once. The carrier now ends at the blade’s line and shows where every cut will fall.',
    `Mark the toe on the round; lay it in the V, toe to the cut edge near the fence, clamp it, cut. Leave 15 mm or more of waste beyond the toe.`,
    ...(c.twist === undefined ? [] : ['Other end: rule a line along the round from this toe, turn the round by the twist as the pattern shows, and cut with the line at its mark.']),
    `Test: the face should be ${say.length(c.faceLength)} long, heel to toe ${say.length(c.heelToToe)}. Too long: the angle is too sharp, give the saw less; half a degree moves the toe ${say.length(c.toeShift)}.`,
    ...findings.filter((f) => carrierCodes.includes(f.code)).map((f) => `Note: ${f.message} ${f.remedy}`),
  ],
  cautions: carrierCautions,
});
