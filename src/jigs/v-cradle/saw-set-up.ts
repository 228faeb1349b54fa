import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import { carrierCodes } from './check-carrier.js';
import { sawCautions } from './cautions.js';
import { allowances } from './allowances.js';
import { sawPicture } from './saw-picture.js';
import type { BySide, Sawing } from './sawing.js';
import type { SetUpSource } from './set-ups.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

/** Fence face to the near side of the blade, at the table; one figure where both passes agree. */
const fenceRows = (what: string, { fence, flatFences }: Sawing, say: Words): NumberRow[] => {
  const both = ({ a, b }: BySide): string => Math.abs(a - b) < 1e-9 ? say.length(a) : `A ${say.length(a)}, B ${say.length(b)}`;
  return [
    { label: `${what}: fence, passes 1 and 2`, value: both(fence) },
    ...(flatFences.length === 0 ? [] : [{ label: `${what}: fence for the flat`, value: flatFences.map(both).join('; then ') }]),
  ];
};

const numbers = (s: VCradleSolution, say: Words): NumberRow[] => {
  const { groove, block, sawing, carrier, carrierSawing } = s;
  return [
    { label: 'Block, length × width × height', value: [block.length, block.width, block.height].map(say.length).join(' × ') },
    { label: 'Blade from upright, passes 1 and 2', value: say.slope(sawing.tilt) },
    { label: 'Blade above the table, all passes', value: say.length(sawing.height) },
    ...fenceRows('Block', sawing, say),
    ...(carrierSawing === undefined ? [] : fenceRows(`Carrier, ${say.length(carrier!.width)} wide`, carrierSawing, say)),
    { label: 'Groove at the top; flat at the bottom', value: `${say.length(groove.width)}; ${groove.flat === 0 ? 'none' : say.length(groove.flat)}` },
    { label: 'Number to make; kerf', value: `${carrier === undefined ? '1 block' : '1 block, 1 carrier'}; ${say.length(sawing.kerf)}${sawing.kerfAssumed ? ', assumed' : ''}` },
  ];
};

/** What the flat is made with: upright passes, or a chisel where the blade is wider than the flat. */
const flatStep = ({ groove, sawing }: VCradleSolution, say: Words): string[] => {
  if (groove.flat === 0) return [];
  return sawing.flatFences.length > 0
    ? ['The flat: blade upright, same height, fence set anew; cut with A and then with B to the fence.']
    : [`The flat of ${say.length(groove.flat)} is narrower than the kerf: pare away the ridge that the two passes leave.`];
};

/** How a measured round in the test cut shows what is out, and by how much. */
const testSteps = (s: VCradleSolution, say: Words): string[] => {
  const thick = s.held[0]!;
  const thin = s.held.at(-1)!;
  const top = s.block.height + thick.proud;
  return [
    `Test: lay ${say.round(thick.round)} in a cut of waste: its top stands ${say.length(thick.proud)} above the block, ${say.length(top)} above its underside. Too high by 1: fence ${Math.tan(s.groove.halfAngle).toFixed(2)} nearer to the blade; too low: away.`,
    s.held.length < 2 ? 'One flank touches and the other does not: the tilt is out; check it with a square set to the included angle.'
      : `Tilt: the tops of ${thick.round.name} and ${thin.round.name} differ by ${say.length(thick.proud - thin.proud)}. More: tilt further; less: tilt less. Walls unequal: the block was not square or left the fence.`,
  ];
};

/** The two tilted passes at the table saw and the upright ones for the flat. */
export const sawSetUp = ({ solution: s, findings, say, font }: SetUpSource): SetUp => ({
  operation: 'Saw the V',
  machine: 'Table saw',
  picture: sawPicture(s, say, font),
  pictureNote: 'Seen along the fence. The block lies face down; A and B are its two sides.',
  numbers: numbers(s, say),
  tables: [],
  steps: [
    'Letter one side of the block A, the other B; glue the end pattern on. Fence distances run from its face to the blade’s near side, at the table.',
    'Pass 1: face down, A to the fence, blade leaning away from it. Pass 2: turn the block end for end, B to the fence; the off-cut lies free.',
    ...flatStep(s, say), ...testSteps(s, say), allowances(s, say),
    ...findings.filter((f) => !carrierCodes.includes(f.code)).map((f) => `Note: ${f.message} ${f.remedy}`),
  ],
  cautions: sawCautions,
});
