import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import { angleLabel, lengthLabel, riseOverRun } from '../../units/format.js';
import { blockPicture } from './block-picture.js';
import type { DrillGuideSolution } from './solve.js';
import type { Page } from './words.js';
import { offsetOf } from './work.js';

/** What stands under every set-up. */
export const manual = 'The machine’s manual and local rules come first. For anything people hang from, climb or sleep under, ask a qualified person.';

/** One angle in the three ways in which shops read it, with rise over run. */
export const angleRows = ({ angle }: DrillGuideSolution, what: string, page: Page): readonly NumberRow[] => [
  { label: `${what} (square reads 90)`, value: `${angleLabel(angle)}: ${riseOverRun(angle, page.units)}` },
  { label: 'Off square (square reads 0)', value: `${angleLabel(Math.PI / 2 - angle)}: ${riseOverRun(Math.PI / 2 - angle, page.units)}` },
];

const grooveRows = ({ s, units }: Page): readonly NumberRow[] => {
  const { sole, work } = s;
  const say = (mm: number): string => lengthLabel(mm, units);
  if (sole.depth === 0 || work.kind === 'flat') return [];
  return sole.form === 'v' ? [
    { label: 'V: blade from upright, two passes', value: `${angleLabel(sole.halfAngle)}: ${riseOverRun(sole.halfAngle, units)}` },
    { label: 'V: depth, width at the sole', value: `${say(sole.depth)}, ${say(2 * sole.mouth)}` },
    { label: 'V touches the round, up from the sole', value: say(sole.depth - sole.contact!.depth) },
  ] : [
    { label: 'Cove: radius of the round', value: `R ${say(work.radius)}` },
    { label: 'Cove: depth, width at the sole', value: `${say(sole.depth)}, ${say(2 * sole.mouth)}` },
  ];
};

const numbers = (page: Page): readonly NumberRow[] => {
  const { s, units } = page;
  const { block } = s;
  const say = (mm: number): string => lengthLabel(mm, units);
  const offset = offsetOf(s.work);
  return [
    { label: 'Number to make', value: '1, harder than the work' },
    { label: 'Blank: length, width, height', value: `${say(block.length)} × ${say(block.width)} × ${say(block.height)}` },
    { label: 'Bore’s centre from the acute end', value: say(block.length / 2) },
    { label: 'Bore’s centre from the left side', value: say(block.width / 2 + offset) },
    ...angleRows(s, 'Sole to the bore', page),
    { label: 'Bore in the finished block', value: say(block.boreLength) },
    ...grooveRows(page),
  ];
};

const steps = ({ s }: Page): readonly string[] => {
  const { sole, angle } = s;
  return [
    'Check the bars on the sheet with a steel rule. Square the blank on all sides, cut out the faces and the top and glue them on.',
    'Clamp the blank on the drill press, table square to the bit both ways, backing under it. Centre-punch the open cross and bore right through.',
    'Try the bit in the bore: it must turn freely and not shake. A bore that wandered shows against the dashed lines: make another.',
    ...(angle === Math.PI / 2 ? [] : ['Saw the sole along the dash-two-dots line, the blank’s left side flat on the table, and plane to half the line.']),
    ...(sole.form === 'flat' ? [] : [sole.form === 'v'
      ? 'Saw the V along the sole, in the middle of its width, in two passes; set the blade to the section and stop at the lines on the ends.'
      : 'Hollow the cove along the sole to the section, and finish on abrasive wrapped round the work itself.']),
    ...(s.work.kind === 'flat' ? ['Hold the printed sole against the sawn one: the bore must come out in the ellipse.'] : []),
    'Test: seat the block on scrap, drill, and stand the bit in the hole against a bevel set to the angle. Off: plane the sole, low end or high end.',
  ];
};

/** How the block is made. */
export const blockSetUp = (page: Page): SetUp => ({
  operation: 'Make the guide block', machine: 'Drill press and saw',
  picture: blockPicture(page), pictureNote: 'True proportions. Bore in short dashes; the thin corner is sawn away after boring.',
  numbers: numbers(page), tables: [], steps: steps(page),
  cautions: [
    'Clamp the blank or stop it on the left of the column. No gloves, no loose sleeves; chuck key out before the motor starts.',
    'Clear the chips often in a deep bore; ease off before the bit breaks through.',
    'At the saw clamp the blank to the gauge or a carrier: a small block on a steep line lifts. Hands 150 mm (6 in) from the blade; let it stop.',
    manual,
  ],
});
