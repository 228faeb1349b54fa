import type { Figure, SetUp, Step } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { usualReach } from '../../shop/tools.js';
import { angleOf, countOf, lengthOf, radiusOf, slopeOf, words } from '../../units/quantity.js';
import type { Shop } from '../../spec/shop.js';
import { angleFigures, isSquareAngle } from '../kit/angle-figures.js';
import { blockPicture } from './block-picture.js';
import { isSawn } from './draw-faces.js';
import type { DrillGuideSolution } from './solve.js';
import type { Page } from './words.js';
import { offsetOf } from './work.js';

const grooveFigures = ({ sole, work }: DrillGuideSolution): readonly Figure[] => {
  if (sole.depth === 0 || work.kind === 'flat') return [];
  const size: Figure = { code: 'groove-size', label: [`${sole.form === 'v' ? 'V' : 'Cove'}: depth, width at the sole`], value: words`${lengthOf(sole.depth)}, ${lengthOf(2 * sole.mouth)}` };
  return sole.form === 'v' ? [
    { code: 'flank', label: ['V: each flank from upright, the sole level'], value: [slopeOf(sole.halfAngle)] }, size,
    { code: 'contact', label: ['V touches the round, up from the sole'], value: [lengthOf(sole.depth - sole.contact!.depth)] },
  ] : [{ code: 'cove-radius', label: ['Cove: radius of the round'], value: [radiusOf(work.radius)] }, size];
};

const figures = (s: DrillGuideSolution): readonly Figure[] => {
  const { block } = s;
  const end = isSquareAngle(s.angle) ? 'front' : 'acute end';
  return [
    { code: 'number', label: ['Number to make, of wood harder than the work'], value: [countOf(1)] },
    { code: 'block', label: ['Block: length × width × height'], value: words`${lengthOf(block.length)} × ${lengthOf(block.width)} × ${lengthOf(block.height)}` },
    ...(isSawn(s) ? [{ code: 'long-blank', label: ['Blank to saw it in: length, at least'], value: [lengthOf(block.longBlank)] }] : []),
    { code: 'bore-from-front', label: [`Bore’s centre from the ${end}, the blank’s end`], value: [lengthOf(block.length / 2)] },
    { code: 'bore-from-left', label: ['Bore’s centre from the left side'], value: [lengthOf(block.width / 2 + offsetOf(s.work))] },
    ...angleFigures(s.angle, 'Sole to the bore'),
    { code: 'bore', label: ['Bore in the finished block'], value: [lengthOf(block.boreLength)] },
    ...grooveFigures(s),
  ];
};

/** Whether the shop's saw, or most saws, make the sole's cut: the long blank flat on its side, its top to the fence. */
const isSawable = ({ angle, block }: DrillGuideSolution, { saw }: Shop): boolean =>
  angle <= (saw?.maxReading ?? usualReach) + 1e-9 && block.width <= (saw?.maxDepth ?? Infinity) + 1e-9;

const soleSteps = (s: DrillGuideSolution, shop: Shop): readonly Step[] => (isSquareAngle(s.angle) ? [] : [
  {
    code: 'saw-sole',
    words: words`Saw the sole in the long blank, at the band saw or by hand: the blank’s left side flat on the table, clamped, along the dash-two-dots line of its right side, which lies up, ${angleOf(Math.PI / 2 - s.angle)} from the blank’s length. Plane to half the line.`,
  },
  ...(isSawable(s, shop) ? [{
    code: 'saw-sole-at-saw',
    words: words`Or at a saw: the long blank flat on its left side, its top to the fence, clamped, acute end to your left, the saw turned ${angleOf(s.angle)} from square, its handle swung to your right: the wedge in front at the left comes free. Never the blank stood on end, never a short piece.`,
  }] : []),
]);

const grooveSteps = ({ sole, angle }: DrillGuideSolution): readonly Step[] => (sole.form === 'flat' ? [] : [sole.form === 'v' ? {
  code: 'saw-v',
  words: words`Saw the V along the sole, in the middle of its width, still in the long blank: held in the vice with the sole level, both flanks by hand, ${angleOf(sole.halfAngle)} from upright, to the lines on its ${isSquareAngle(angle) ? 'front' : 'acute end'}. Test it on the round.`,
} : { code: 'cove', words: ['Hollow the cove along the sole to the section, still in the long blank, and finish on abrasive wrapped round the work itself.'] }]);

const steps = (s: DrillGuideSolution, shop: Shop): readonly Step[] => {
  const sawn = isSawn(s);
  const square = isSquareAngle(s.angle);
  return [
    {
      code: 'glue', words: sawn ? words`Check the bars on the sheet with a steel rule. Square a blank at least ${lengthOf(s.block.longBlank)} long; glue top and faces on its ${square ? 'end, front' : 'end, acute end'} outwards. The back goes on last.`
        : ['Check the bars on the sheet with a steel rule. Square the blank on all sides, cut out the faces and the top and glue them on.'],
    },
    { code: 'bore', words: ['Clamp the blank on the drill press, table square to the bit both ways, backing under it. Centre-punch the open cross and bore right through.'] },
    { code: 'try-bit', words: ['Try the bit in the bore: it must turn freely and not shake. A bore that wandered shows against the dashed lines: make another.'] },
    ...soleSteps(s, shop), ...grooveSteps(s),
    ...(sawn ? [{ code: 'cut-off', words: words`Last, cut the block off the blank ${lengthOf(s.block.length)} from its ${square ? 'front' : 'acute end'}, and glue the back on.` }] : []),
    ...(s.work.kind === 'flat' ? [{ code: 'check-sole', words: [`Hold the printed sole against the ${sawn ? 'sawn one' : 'block'}: the bore must come out in the ${square ? 'circle' : 'ellipse'}.`] }] : []),
    {
      code: 'test', words: square ? ['Test: seat the block on scrap, drill, and stand the bit in the hole against a square. Off: plane the sole on the side to which the bit leans away.']
        : ['Test: seat the block on scrap, drill, and stand the bit in the hole against a bevel set to the angle. Too steep: plane the sole at its acute end; too flat: at its obtuse end.'],
    },
  ];
};

/** How the block is made. */
export const blockSetUp = (page: Page, shop: Shop): SetUp => ({
  code: 'make-block', operation: 'Make the guide block', machine: `Drill press${isSawn(page.s) ? '; band saw or hand saw' : ''}`,
  picture: blockPicture(page), pictureIs: 'not-to-scale',
  pictureNote: [isSawn(page.s) ? 'True proportions. Bore in short dashes; the thin corner is sawn away after boring; the long blank is broken off.' : 'True proportions. Bore in short dashes.'],
  numbers: figures(page.s), tables: [], steps: steps(page.s, shop),
  cautions: cautionsAt(isSawn(page.s) ? 'saw-a-block' : 'drill-press', page.units),
});
