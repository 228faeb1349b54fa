import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import { carrierCodes } from './check-carrier.js';
import { sawCautions } from './cautions.js';
import { allowances } from './allowances.js';
import { sawPicture } from './saw-picture.js';
import type { BySide, Sawing } from './sawing.js';
import type { SetUpSource } from './set-ups.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

/** Fence face to the near side of the blade, at the table; one row where both passes agree. */
const fenceRows = (what: string, { fence, flatFences }: Sawing, say: Words): NumberRow[] => {
  const both = ({ a, b }: BySide): string => Math.abs(a - b) < 1e-9 ? say.length(a) : `A ${say.length(a)}, B ${say.length(b)}`;
  return [
    { label: `${what}: fence face to the blade’s near side at the table, passes 1 and 2`, value: both(fence) },
    ...flatFences.map((f, i) => ({ label: `${what}: the same for the flat, blade upright${i === 0 ? '' : `, setting ${i + 1}`}`, value: both(f) })),
  ];
};

const numbers = (s: VCradleSolution, say: Words): NumberRow[] => {
  const { groove, block, sawing, carrier, carrierSawing } = s;
  return [
    { label: 'Block: length × width × height', value: [block.length, block.width, block.height].map(say.length).join(' × ') },
    { label: 'Included angle of the groove', value: say.angle(2 * groove.halfAngle) },
    { label: 'Blade from upright, passes 1 and 2', value: say.slope(sawing.tilt) },
    { label: 'Blade’s highest point above the table = depth of the groove', value: say.length(sawing.height) },
    ...fenceRows('Block', sawing, say),
    ...(carrierSawing === undefined ? [] : fenceRows(`Carrier, ${say.length(carrier!.width)} wide`, carrierSawing, say)),
    { label: 'Groove at the block’s top', value: say.length(groove.width) },
    { label: 'Flat at the bottom', value: groove.flat === 0 ? 'none: a sharp V' : say.length(groove.flat) },
    { label: 'V’s point (virtual) below the block’s top', value: say.length(groove.apexDepth) },
    { label: sawing.kerfAssumed ? 'Kerf assumed: the shop names none' : 'Kerf', value: say.length(sawing.kerf) },
    { label: 'Number to make', value: carrier === undefined ? '1 block' : '1 block and 1 carrier' },
  ];
};

/** What the flat is made with: upright passes, or a chisel where the blade is wider than the flat. */
const flatStep = ({ groove, sawing }: VCradleSolution, say: Words): string[] => {
  if (groove.flat === 0) return [];
  return sawing.flatFences.length > 0
    ? ['The flat: stand the blade upright, keep the height, set the fence anew, and cut once with A and once with B to the fence.']
    : [`The flat of ${say.length(groove.flat)} is narrower than the kerf: pare away the ridge that the two passes leave.`];
};

/** How a measured round in the test cut shows what is out, and by how much. */
const testSteps = (s: VCradleSolution, say: Words): string[] => {
  const thick = s.held[0]!;
  const thin = s.held.at(-1)!;
  const top = s.block.height + thick.proud;
  return [
    `Test: lay ${say.round(thick.round)} in a cut of waste. Its top should stand ${say.length(thick.proud)} above the block, ${say.length(top)} above the block’s underside. Too high by 1: move the fence ${Math.tan(s.groove.halfAngle).toFixed(2)} nearer to the blade. Too low: away.`,
    'Groove too wide at the top by 1: fence 0.5 away from the blade; one wall thicker than the other: the block was not square or not held to the fence.',
    ...(s.held.length < 2 ? ['Round touches one flank high and rocks: the tilt is out. Check it with a square set to the included angle.'] : [
      `Tilt: the tops of ${thick.round.name} and ${thin.round.name} differ by ${say.length(thick.proud - thin.proud)}. A larger difference means the V is too narrow: tilt further; a smaller one: less.`,
    ]),
  ];
};

/** The two tilted passes at the table saw and the upright ones for the flat. */
export const sawSetUp = ({ solution: s, findings, say, font }: SetUpSource): SetUp => ({
  operation: 'Saw the V',
  machine: 'Table saw',
  picture: sawPicture(s, say, font),
  pictureNote: 'Seen along the fence, not to scale. The block lies face down; A and B are its two sides.',
  numbers: numbers(s, say),
  tables: [allowances(s, say)],
  steps: [
    'Letter one side of the block A, the other B. Glue the end section on; top edge to top edge.',
    'Set tilt and height with the blade stopped; the blade leans away from the fence.',
    'Pass 1: face down, A to the fence. Pass 2: turn the block end for end, B to the fence; nothing else is moved. The off-cut lies free.',
    ...flatStep(s, say), ...testSteps(s, say),
    ...findings.filter((f) => !carrierCodes.includes(f.code)).map((f) => `Note: ${f.message} ${f.remedy}`),
  ],
  cautions: sawCautions,
});
