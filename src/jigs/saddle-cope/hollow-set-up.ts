import { besideEachOther, pictureOf, underEachOther } from '../../drawing/arrange.js';
import type { SetUp, Step } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { usualReach } from '../../shop/tools.js';
import { angleOf, lengthOf, radiusOf, words } from '../../units/quantity.js';
import { clockView } from './clock-picture.js';
import { firstCutViews } from './first-cut-picture.js';
import { hollowFigures } from './hollow-figures.js';
import { jointViews } from './joint-picture.js';
import { ordinateTable } from './ordinates.js';
import type { SetUpSource } from './set-ups.js';
import { isSquare, type SaddleCopeSolution, type SaddleEnd } from './solve.js';

/** How the round lies for the first cut; decided by solids in the tests. */
const sawSteps = (end: SaddleEnd, mostTilt: number): readonly Step[] => {
  const { firstCut: { allowance, toeBeyondHorn }, sawAngle } = end;
  if (isSquare(end)) {
    return [{ code: 'first-cut', words: words`Saw the dash-two-dots line first, square, ${lengthOf(toeBeyondHorn)} beyond the horn; it leaves ${lengthOf(allowance)} at the wings.` }];
  }
  const tilted = sawAngle <= mostTilt + 1e-9;
  return [
    {
      code: 'first-cut',
      words: words`Saw the dash-two-dots line first, ${angleOf(sawAngle)} off square; its toe, on the long point’s side, lies ${lengthOf(toeBeyondHorn)} beyond the horn. It leaves ${lengthOf(allowance)} at the wings.`,
    },
    {
      code: 'first-cut-turned',
      words: ['Blade turned, band saw or carrier: throat and long point LEVEL, the long point at the fence. Kept part and off-cut as drawn.'],
    },
    ...(tilted ? [{
      code: 'first-cut-tilted',
      words: ['Blade tilted: throat UP if the kept part lies on the side that the blade leans to, throat DOWN if it lies on the other. Any other way cuts into finished wood.'],
    }] : []),
  ];
};

/** The allowances, in the order in which they are applied. */
const allowances = (end: SaddleEnd, s: SaddleCopeSolution): Step => ({
  code: 'allowances',
  words: words`Allowances, in the order applied: 1. paper ${lengthOf(s.paperThickness, 'mm')}, in the wrap’s length; 2. ${lengthOf(end.firstCut.allowance, 'mm')} left at the wings by the first cut; 3. abrasive ${lengthOf(s.abrasive, 'mm')}, off the form’s radius. Nothing else is allowed for.`,
});

const steps = (end: SaddleEnd, s: SaddleCopeSolution, mostTilt: number): readonly Step[] => [
  ...(end.pin === undefined ? [] : [{ code: 'pin-first', words: ['The hole for the pin is drilled first, while the end is whole.'] }]),
  {
    code: 'wrap', words: ['Check the bars with a steel rule. Cut the paper on its outline; wrap it, left edge to the line at the right, tab under, top edges level.'],
  },
  ...(isSquare(end) ? [] : [{
    code: 'clock', words: ['THROAT to the acute side: at small cants a template turned half round looks right in the hand and does not fit.'],
  }]),
  ...sawSteps(end, mostTilt),
  { code: 'hollow', words: ['Hollow to the full line, from both wings inwards.'] },
  {
    code: 'finish',
    words: words`Finish on a form of ${radiusOf(end.formRadius)}. Light 0.1 mm wide is good, 0.5 mm a remake. Gap ${isSquare(end) ? 'at the bottom of the hollow' : 'at throat and long point'}: form too small; at the wings: too large.`,
  },
  allowances(end, s),
];

/** The page for sawing and hollowing one end. */
export function hollowSetUp(end: SaddleEnd, { name, units, solution: s, shop, font }: SetUpSource): SetUp {
  const where = s.far === undefined ? '' : `, ${end.name} end`;
  const mostTilt = shop.saw?.maxTilt ?? usualReach;
  // The pin's page comes first and shows the joint.
  const joint = end.pin === undefined ? [jointViews(end, units, font)] : [];
  const ways = besideEachOther(firstCutViews(end, mostTilt), 6, font);
  const views = besideEachOther([...joint, ...(isSquare(end) ? [] : [clockView(end)])], 8, font);
  return {
    code: 'hollow', end: end.name,
    operation: `Hollow the end of ${s.branch.name}${where}`,
    machine: 'Saw, then gouge, rasp and sanding form',
    picture: pictureOf(`first-cut-${end.name}`, `${name}${where}`, end.pin === undefined ? underEachOther([views, ways], 5, font) : besideEachOther([ways, views], 8, font)),
    pictureIs: 'not-to-scale',
    pictureNote: [`${end.pin === undefined ? 'Joint in true proportions. ' : 'The joint is drawn with the holes for its pin. '}Full line: finished wood; short dashes: hidden; dash and two dots: the blade.`],
    numbers: hollowFigures(end, s),
    tables: [{ ...ordinateTable(end, s, units), ifItFits: !s.printOrdinates }],
    steps: steps(end, s, mostTilt),
    cautions: cautionsAt('saw-a-round', units),
  };
}
