import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import { faceLength, heelToToe, toeShift } from '../../geometry/steep-cut.js';
import { radians } from '../../units/units.js';
import type { Carrier } from './carrier.js';
import { carrierPicture } from './carrier-picture.js';
import { carrierCautions } from './cautions.js';
import { carrierCodes } from './check-carrier.js';
import { toeShiftError } from './limits.js';
import type { SetUpSource } from './set-ups.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

const numbers = (c: Carrier, say: Words): NumberRow[] => [
  { label: 'Cut from the axis', value: say.slope(c.sharpAngle) },
  { label: 'Cut from square', value: say.slope(Math.PI / 2 - c.sharpAngle) },
  { label: 'On the saw’s gauge', value: `${say.angle(c.sawReading)}, towards the carrier` },
  { label: 'Turn from the fence', value: say.slope(c.turn) },
  { label: 'Own end from square', value: say.slope(c.endCut) },
  { label: 'Carrier’s length', value: say.length(c.length) },
  { label: 'Carrier’s width', value: say.length(c.width) },
  { label: 'Axis from the fence', value: say.length(c.bladeToAxis) },
  { label: 'Seat on the fence', value: say.length(c.seat) },
  { label: 'Hands from the blade', value: say.length(c.handDistance) },
  ...(c.twist === undefined ? [] : [
    { label: 'Twist of the ends', value: `${say.angle(c.twist)}; ${say.length(Math.abs(c.twist) * (c.round.diameter / 2))} round` },
  ]),
];

/** The finished end of every round that the groove holds, cut at the same angle. */
const ends = (c: Carrier, s: VCradleSolution, say: Words): SetUp['tables'][number] => ({
  heading: 'The finished end, by round',
  columns: ['Round', 'Measured', 'Face', 'Heel to toe', 'Toe, half a degree out'],
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
  pictureNote: 'From above, not to scale; the maker stands below. Axis from the fence: measured along the blade’s line.',
  numbers: numbers(c, say),
  tables: [ends(c, s, say)],
  steps: [
    `Saw the same V in a piece ${say.length(c.width)} wide, ${say.length(c.seatSide)} from its side A to the groove’s middle; saw one end at ${say.angle(c.endCut)} from square and glue the pattern on.`,
    `Stand that end against the fence, blade line under the blade, the saw at ${say.angle(c.sawReading)}; clamp it. Cut once without a round: the carrier now shows where every cut falls.`,
    'Mark the toe on the round, 15 mm or more of waste beyond; lay the mark to the cut edge near the fence.',
    ...(c.twist === undefined ? [] : ['Other end: rule a line along the round from this toe and turn the round by the twist, as the pattern shows.']),
    `Test: face ${say.length(c.faceLength)} long, heel to toe ${say.length(c.heelToToe)}. Too long: cut too sharp, turn the carrier a little less from the fence; half a degree moves the toe ${say.length(c.toeShift)}.`,
    ...findings.filter((f) => carrierCodes.includes(f.code)).map((f) => `Note: ${f.message} ${f.remedy}`),
  ],
  cautions: carrierCautions,
});
