import type { Font } from '../../drawing/font.js';
import type { Figure, SetUp, Step } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { routerPractice } from '../../shop/router.js';
import { diameterOf, lengthOf, radiusOf, words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { drawRecessTemplate } from './draw-recess-template.js';
import type { Cutter, RackTop } from './rack-top.js';
import type { Recess } from './recess.js';

/** A bend tighter than this is a sharp corner, mm. */
const sharp = 0.05;

const shapeFigures = (recess: Recess, { board }: RackTop): readonly Figure[] => [
  { code: 'face', label: ['Face'], value: [recess.face === 'top' ? 'top' : 'underside: the template lies as seen from below'] },
  { code: 'size', label: ['Size, along × across'], value: words`${lengthOf(recess.width)} × ${lengthOf(recess.height)}` },
  { code: 'middle', label: ['Middle, along from the left end, across from the front edge'], value: words`${lengthOf(recess.along)}, ${lengthOf(recess.across)}` },
  { code: 'depth', label: ['Depth'], value: [lengthOf(recess.depth)] },
  { code: 'floor', label: ['Floor left under it'], value: [lengthOf(board.thickness - recess.depth)] },
  { code: 'inside-radius', label: ['Tightest inside radius'], value: recess.insideRadius < sharp ? ['sharp: left with the cutter’s'] : [radiusOf(recess.insideRadius)] },
];

/** What guides the cutter, and how it must stand to ride on the template from the first pass. */
const guideFigures = ({ depth }: Recess, { diameter, bushing, offset, length, templateThickness }: Cutter, pass: number): readonly Figure[] => [
  { code: 'cutter', label: ['Cutter'], value: [diameterOf(diameter)] },
  { code: 'plunge', label: ['Plunge stop: depth and template'], value: words`${lengthOf(depth + templateThickness)}: ${lengthOf(depth, 'short')} + ${lengthOf(templateThickness, 'short')}` },
  ...(bushing !== undefined ? [
    { code: 'bushing', label: ['Guide bushing; template larger all round by'], value: words`${diameterOf(bushing)}; ${lengthOf(offset)}` },
    { code: 'collar', label: ['The bushing’s collar: shorter than the template is thick'], value: words`under ${lengthOf(templateThickness)}` },
  ] : [
    {
      code: 'edges', label: ['Bearing on the shank; its edges at most'],
      value: words`${lengthOf(templateThickness + Math.min(pass, depth))}, to ride from a first pass of ${lengthOf(Math.min(pass, depth))}`,
    },
    ...(length === undefined ? [] : [{
      code: 'first-pass', label: words`With edges of ${lengthOf(length)} it rides from`, value: words`${lengthOf(Math.max(0, length - templateThickness))} of depth on`,
    }]),
  ]),
];

const guideStep = ({ bushing, length, templateThickness }: Cutter): Step => (bushing !== undefined
  ? { code: 'guide', words: ['Template above. The bushing rides on its edge from the first pass on, however shallow.'] }
  : {
    code: 'guide',
    words: length === undefined || length <= templateThickness ? ['Template above, a bit with its bearing on the SHANK; one with a bearing at the tip is for holes right through, template below. See that the bearing touches the template’s edge before the motor starts.']
      : words`Template above, a bit with its bearing on the SHANK, not at the tip. It rides on the template’s edge only from ${lengthOf(length - templateThickness)} of depth: until then keep off the line by eye.`,
  });

/** The page for one recess. */
export const recessSetUp = (recess: Recess, top: RackTop, context: Context, font: Font): SetUp => {
  const { cutter } = top;
  const { pass } = routerPractice(context.units);
  return {
    code: 'rout-recess', parts: [`recess-${recess.number}`],
    operation: `Rout recess ${recess.number}`, machine: 'Plunge router with a template',
    picture: drawRecessTemplate(recess, top, context, font, 'picture'), pictureIs: 'true-size', pictureNote: ['The template as printed on its own sheet.'],
    numbers: [...shapeFigures(recess, top), ...guideFigures(recess, cutter, pass)],
    tables: [],
    steps: [
      {
        code: 'lay',
        words: [`Lay the template’s centre lines on the board’s, ruled ${recess.face === 'top' ? 'on the top' : 'on the underside, the board rolled over its front edge,'} through the middle square to the front edge; screw or tape it where waste or the recess hides it.`],
      },
      guideStep(cutter),
      {
        code: 'plunge',
        words: words`Set the plunge stop to ${lengthOf(recess.depth + cutter.templateThickness)} below the template’s face. Plunge in the middle, in passes of at most ${lengthOf(pass)}; clear the middle first, then run the edge once, at full depth, against the rotation: clockwise round the inside.`,
      },
      { code: 'measure', words: ['Measure the floor before the template comes off.'] },
    ],
    cautions: cautionsAt('plunge-router', context.units),
  };
};
