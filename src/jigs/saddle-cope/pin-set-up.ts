import { pictureOf } from '../../drawing/arrange.js';
import type { Figure, SetUp, Step } from '../../drawing/set-up.js';
import { holeAllowance } from '../../shop/bit-length.js';
import { cautionsAt } from '../../shop/cautions.js';
import type { Shop } from '../../spec/shop.js';
import { angleOf, diameterOf, lengthOf, slopeOf, words, type Words } from '../../units/quantity.js';
import { jointAngleFigures, offsetFigures } from './hollow-figures.js';
import { jointViews } from './joint-picture.js';
import type { Pin } from './pin.js';
import type { SetUpSource } from './set-ups.js';
import { offsetOverMain, sideOf } from './side-words.js';
import { isSquare, type SaddleEnd } from './solve.js';

const holeFigures = (pin: Pin): readonly Figure[] => [
  { code: 'pin', label: ['Pin or loose tenon, and bit'], value: [diameterOf(pin.diameter)] },
  { code: 'pin-length', label: ['Length of the pin, into the branch and into the main'], value: words`${lengthOf(pin.intoBranch + pin.intoMain)}: ${lengthOf(pin.intoBranch, 'short')} + ${lengthOf(pin.intoMain, 'short')}` },
  { code: 'hole-in-branch', label: ['Hole in the branch, from its finished tip, the horn'], value: [lengthOf(pin.holeInBranch)] },
  {
    code: 'hole-in-branch-sum', label: ['  of it hollowed away, for the pin, for glue'],
    value: words`${lengthOf(pin.hornToHollow, 'short')} + ${lengthOf(pin.intoBranch, 'short')} + ${lengthOf(holeAllowance, 'thin')}`,
  },
  { code: 'hole-in-main', label: ['Hole in the main, along the bit, from where its axis enters'], value: [lengthOf(pin.holeInMain)] },
];

/** Where the bit's axis enters the main. */
const entryFigures = (end: SaddleEnd): readonly Figure[] => {
  const { station, toThroat, toHorn, girth } = end.entry;
  return [
    ...(isSquare(end) ? [{ code: 'entry', label: ['Bit enters the main'], value: ['at the crossing of the axes'] }] : [
      { code: 'entry', label: ['Bit enters the main, along it from the crossing of the axes'], value: words`${lengthOf(station)} towards the throat` },
      { code: 'entry-to-throat', label: ['  from there to where the throat stands on the main'], value: words`${lengthOf(toThroat)} on` },
      { code: 'entry-to-horn', label: ['  from there to where the horn stands on the main'], value: words`${lengthOf(toHorn)} back` },
    ]),
    ...offsetFigures(end),
    ...(girth === 0 ? [] : [{
      code: 'entry-girth', label: ['  round the main, from the line on its top'], value: words`${lengthOf(girth)} to the ${sideOf(offsetOverMain(end))}`,
    }]),
  ];
};

const wallFigures = (pin: Pin): readonly Figure[] => [
  { code: 'wall', label: ['Wood that stays in the main beyond the hole and the bit’s point'], value: [lengthOf(pin.wall)] },
  { code: 'skin', label: ['Wood that stays in the main beside the hole'], value: [lengthOf(pin.skin)] },
];

const branchStep = (end: SaddleEnd, pin: Pin): Step => ({
  code: 'drill-branch',
  words: words`Drill the branch on its axis before the first cut, while its end is square, clamped upright and plumb both ways: ${lengthOf(pin.holeInBranch)} deep from where the horn will be, ${lengthOf(pin.holeInBranch + end.firstCut.toeBeyondHorn)} from the end of a blank cut off at the toe; with waste beyond the toe, so much more.`,
});

const markStep = (end: SaddleEnd): Step => {
  const offset = offsetOverMain(end);
  const aside: Words = offset === 0 ? ['on the line along its top']
    : words`${lengthOf(end.entry.girth)} round to the ${sideOf(offset)} of the line along its top, ${isSquare(end) ? 'seen along the main from clock 0' : 'seen from the acute side'}`;
  const along: Words = isSquare(end) ? ['at the crossing of the axes'] : words`${lengthOf(end.entry.station)} from the crossing of the axes towards the throat`;
  return { code: 'mark-main', words: words`Mark the main where the bit’s axis enters: ${along}, ${aside}. The hole is not drilled at the crossing’s own mark unless the joint is square.` };
};

/** How a guide block is asked for that meets an end's pin. */
const pairedWith = (end: SaddleEnd, name: string): string => `drill-guide, from: ${name}${end.name === 'far' ? ', end: far' : ''}`;

/** By hand where the shop's table does not tilt so far: a step asks for nothing that the machine cannot do. */
const guideStep = (end: SaddleEnd, name: string, most: number): Step => ({
  code: 'drill-main',
  words: words`Drill the main by hand in a guide block made from this cope (${pairedWith(end, name)}): the hole leans ${slopeOf(end.sawAngle)} off square, and the shop’s table tilts to ${angleOf(most)}. The rim bites on the uphill side first: start slowly.`,
});

const pressStep = (end: SaddleEnd, name: string, { drillPress }: Shop): Step => {
  const most = drillPress?.maxTableTilt;
  if (most !== undefined && !isSquare(end) && end.sawAngle > most + 1e-9) return guideStep(end, name, most);
  const guide = `; or by hand in a guide block made from this cope (${pairedWith(end, name)})`;
  const offset = offsetOverMain(end);
  const beside: Words = offset === 0 ? [''] : words` The bit stands ${lengthOf(Math.abs(offset))} to the ${sideOf(offset)} of the round’s middle, ${isSquare(end) ? 'seen along the main from clock 0' : 'seen from the acute side'}: move the fence.`;
  if (isSquare(end)) return { code: 'drill-main', words: words`Drill the main square, in a V, table level${guide}.${beside}` };
  return {
    code: 'drill-main',
    words: words`Tilt the table ${slopeOf(end.sawAngle)}, the main in a V along the tilt, throat side uphill${guide}. The rim bites on the uphill side first: start slowly.${beside}`,
  };
};

/** The page for the pin's two holes; none where there is no pin. */
export function pinSetUp(end: SaddleEnd, { name, units, solution: s, shop, font }: SetUpSource): readonly SetUp[] {
  const { pin } = end;
  if (pin === undefined) return [];
  const where = s.far === undefined ? '' : `, ${end.name} end`;
  return [{
    code: 'drill-pin', end: end.name,
    operation: `Drill ${s.branch.name} and ${end.main.name} for the pin${where}`,
    machine: 'Drill press, or a hand drill in a guide block',
    picture: pictureOf(`pin-${end.name}`, `${name}${where}`, jointViews(end, units, font)), pictureIs: 'not-to-scale',
    pictureNote: ['In true proportions. The pin, in short dashes, lies on the branch’s axis.'],
    numbers: [...holeFigures(pin), ...entryFigures(end), ...jointAngleFigures(end), ...wallFigures(pin)],
    tables: [],
    steps: [
      branchStep(end, pin), markStep(end), pressStep(end, name, shop),
      {
        code: 'depth',
        words: words`In the main the depth, ${lengthOf(pin.holeInMain)}, is along the bit from where its axis enters the wood; from the rim’s first touch the quill goes ${lengthOf(pin.travelInMain)}. Try the fit in a test piece of the same wood.`,
      },
    ],
    cautions: cautionsAt('drill-a-round', units),
  }];
}
