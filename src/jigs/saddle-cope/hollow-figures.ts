import type { Figure } from '../../drawing/set-up.js';
import { angleOf, lengthOf, radiusOf, words } from '../../units/quantity.js';
import { angleFigures } from '../kit/angle-figures.js';
import { offsetOverMain, sideOf } from './side-words.js';
import { isSquare, type SaddleCopeSolution, type SaddleEnd } from './solve.js';

/** The angle between the axes as gauges read it. */
export function jointAngleFigures({ joint }: SaddleEnd): readonly Figure[] {
  return angleFigures(joint.angle, 'Angle between the axes');
}

/** The offset with its side, as it is seen at the bench; nothing where there is none. */
export function offsetFigures(end: SaddleEnd): readonly Figure[] {
  const offset = offsetOverMain(end);
  if (offset === 0) return [];
  const seen = isSquare(end) ? 'seen along the main from clock 0' : 'seen from the acute side';
  return [{
    code: 'offset', label: ['Branch’s axis beside the main’s'],
    value: words`${lengthOf(Math.abs(offset))} to the ${sideOf(offset)}, ${seen}, the main below`,
  }];
}

const twistFigures = (end: SaddleEnd, { wrapLength }: SaddleCopeSolution): readonly Figure[] => {
  if (end.name === 'near') return [];
  if (end.twist === 0) return [{ code: 'twist', label: ['Twist of the ends'], value: words`${angleOf(0)}: both throats on one line` }];
  const forward = end.twist > 0;
  return [{
    code: 'twist', label: [`From the near throat to this one, ${forward ? 'counter-clockwise' : 'clockwise'} seen from the far end`],
    value: words`${angleOf(Math.abs(end.twist))}; on the strip, far end up, ${lengthOf((Math.abs(end.twist) * wrapLength) / (2 * Math.PI))} to the ${sideOf(end.twist)}`,
  }];
};

const fromCrossing = 'From the crossing of the axes, along the branch, to the';

const heightFigures = (end: SaddleEnd): readonly Figure[] => {
  const figure = (code: string, what: string, mm: number): Figure => ({ code, label: [`${fromCrossing} ${what}`], value: [lengthOf(mm)] });
  if (isSquare(end)) return [figure('crest', 'bottom of the hollow', end.crest), figure('horn', 'horn, the tip', end.horn)];
  const hornApart = Math.abs(end.horn - end.longPoint) >= 0.05;
  return [
    figure('throat', 'throat', end.throat), figure('long-point', hornApart ? 'long point' : 'long point, here the horn', end.longPoint),
    ...(hornApart ? [figure('horn', 'horn, the tip', end.horn)] : []),
  ];
};

const firstCutFigures = (end: SaddleEnd): readonly Figure[] => [
  {
    code: 'wing-allowance', label: ['First cut leaves at the wings; half a degree out moves it there by'],
    value: words`${lengthOf(end.firstCut.allowance, 'mm')}; ${lengthOf(end.firstCut.shift, 'mm')}`,
  },
  {
    code: 'toe-beyond-horn', label: [isSquare(end) ? 'First cut beyond the horn' : 'Toe of the first cut beyond the horn'],
    value: [lengthOf(end.firstCut.toeBeyondHorn)],
  },
];

const lengthFigures = ({ centres, lengths }: SaddleCopeSolution, square: boolean): readonly Figure[] => [
  ...(centres === undefined ? [] : [{ code: 'centres', label: ['Crossing to crossing of the axes, along the branch'], value: [lengthOf(centres)] }]),
  ...(lengths === undefined ? [] : [
    { code: 'horn-to-horn', label: ['Finished, horn to horn: no blank shorter'], value: [lengthOf(lengths.hornToHorn)] },
    { code: 'toe-to-toe', label: ['Least blank for both whole first cuts, toe to toe, without the waste that a carrier asks for beyond them'], value: [lengthOf(lengths.toeToToe)] },
    ...(square ? [] : [{ code: 'throat-to-throat', label: ['Throat to throat'], value: [lengthOf(lengths.throatToThroat)] }]),
  ]),
];

/** All numbers of the page for hollowing one end. */
export function hollowFigures(end: SaddleEnd, s: SaddleCopeSolution): readonly Figure[] {
  return [
    ...jointAngleFigures(end), ...offsetFigures(end), ...twistFigures(end, s),
    { code: 'saddle-depth', label: ['Hollow, deepest, square to the main'], value: [lengthOf(end.saddleDepth)] },
    { code: 'wing-angle', label: ['Wood angle left at the wing'], value: [angleOf(end.wingAngle)] },
    {
      code: 'form-radius', label: words`Sanding form: main’s radius less ${lengthOf(s.abrasive, 'mm')} abrasive`, value: [radiusOf(end.formRadius)],
    },
    ...heightFigures(end), ...firstCutFigures(end), ...lengthFigures(s, isSquare(end) && (s.far === undefined || isSquare(s.far) && isSquare(s.near))),
    { code: 'wrap-length', label: ['Wrap round the branch, at the paper’s middle'], value: [lengthOf(s.wrapLength)] },
  ];
}
