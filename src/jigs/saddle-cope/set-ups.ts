import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Finding } from '../../errors/finding.js';
import { angleLabel, fractionInches, lengthLabel, lengthMain, millimetres, riseOverRun } from '../../units/format.js';
import { degrees, type Units } from '../../units/units.js';
import { holeExtra } from './pin.js';
import { jointPicture } from './joint-picture.js';
import { layOutStrip } from './strip-layout.js';
import { step, type SaddleCopeSolution, type SaddleEnd } from './solve.js';

/** What the set-up pages are made from. */
export interface SetUpSource {
  readonly name: string;
  readonly units: Units;
  readonly solution: SaddleCopeSolution;
  readonly findings: readonly Finding[];
  readonly font: Font;
}

const manual = 'The machine’s manual and local rules come first. For anything people hang from, climb or sleep under, ask a qualified person.';

const sawCautions = [
  'Clamp the stock in a V or a carrier; never hold a round free at a saw: it rolls.',
  'Cut from the long blank, support the toe, hands 150 mm (6 in) from the blade; let it stop before you reach in.',
  'Eye protection; extraction and a respirator for dust of oak and beech.',
  manual,
];

const drillCautions = [
  'Clamp or stop the work on the left of the column; a ledge on the downhill side of a tilted table.',
  'No gloves, no loose sleeves; chuck key out before the motor starts.',
  'Back up the exit; ease off before a bit breaks through.',
  manual,
];

/** All three conventions that a shop has for one angle. */
const angleRows = (end: SaddleEnd, units: Units): readonly NumberRow[] => [
  { label: 'Angle between the axes, and on a gauge from the fence', value: angleLabel(end.joint.angle) },
  { label: 'Off square: what a saw set from square reads', value: `${angleLabel(end.sawAngle)}: ${riseOverRun(end.sawAngle, units)}` },
];

const endRows = (end: SaddleEnd, s: SaddleCopeSolution, units: Units): readonly NumberRow[] => {
  const label = (mm: number): string => lengthLabel(mm, units);
  return [
    ...angleRows(end, units),
    ...(end.joint.offset === 0 ? [] : [{ label: 'Offset between the axes', value: label(end.joint.offset) }]),
    ...(end.name === 'near' ? [] : [{
      label: 'Twist of this throat against the near one',
      value: `${angleLabel(end.twist)}, ${label((end.twist * s.wrapLength) / (2 * Math.PI))} along the wrap`,
    }]),
    { label: 'Hollow, deepest, square to the main', value: label(end.saddleDepth) },
    { label: 'Wood angle left at the wing', value: angleLabel(end.wingAngle) },
    { label: `Sanding form: main’s radius less ${millimetres(s.abrasive)} abrasive`, value: `R ${label(end.formRadius)}` },
    { label: 'Main’s axis to the throat', value: label(end.throat) },
    { label: 'Main’s axis to the long point', value: label(end.longPoint) },
    ...(Math.abs(end.horn - end.longPoint) < 0.05 ? [] : [{ label: 'Main’s axis to the horn, the tip', value: label(end.horn) }]),
  ];
};

/** The allowances, in the order in which they are applied. */
const allowances = (s: SaddleCopeSolution): string =>
  `Allowances, in the order applied: 1. paper ${millimetres(s.paperThickness)}, in the wrap’s length; `
  + `2. abrasive ${millimetres(s.abrasive)}, off the form’s radius. Nothing else is allowed for.`;

const ordinateTable = (end: SaddleEnd, s: SaddleCopeSolution, units: Units) => {
  const { datumToHorn } = layOutStrip(s, units);
  const down = (height: number): number => datumToHorn - (height - end.horn);
  const near = end.name === 'near';
  return {
    heading: near
      ? `Without a printer: a ring round the branch ${lengthLabel(datumToHorn, units)} from the horn; from it towards the end:`
      : 'Far end: along the branch from a ring at the far horn, back towards the branch:',
    columns: ['Clock', 'Along the wrap', 'To the line', 'Clock', 'Along the wrap', 'To the line'],
    rows: Array.from({ length: 12 }, (_, i) => [i, i + 12].flatMap((j) => {
      const value = near ? down(end.ordinates[j]!) : end.ordinates[j]! - end.horn;
      const along = (j * step * s.wrapLength) / (2 * Math.PI);
      const both = (mm: number): string => (units === 'inch' ? `${fractionInches(mm)} (${mm.toFixed(1)})` : `${mm.toFixed(1)} (${fractionInches(mm)})`);
      return [`${Math.round(degrees(j * step))}°`, both(along), both(value)];
    })),
  };
};

const lengthRows = (s: SaddleCopeSolution, units: Units): readonly NumberRow[] => {
  if (s.centres === undefined) return [];
  const label = (mm: number): string => lengthLabel(mm, units);
  return [
    { label: 'Axis to axis, along the branch', value: label(s.centres) },
    ...(s.lengths === undefined ? [] : [
      { label: 'Horn to horn: cut the blank no shorter', value: label(s.lengths.hornToHorn) },
      { label: 'Throat to throat', value: label(s.lengths.throatToThroat) },
    ]),
  ];
};

const cutSteps = (end: SaddleEnd, s: SaddleCopeSolution, units: Units): readonly string[] => [
  ...(end.pin === undefined ? [] : ['The hole for the pin is drilled first, while the end is whole.']),
  'Check the bars with a steel rule. Cut the paper on its outline; wrap it, left edge to the line at the right, tab under, top edges level.',
  'THROAT to the acute side: at small cants a template turned half round looks right in the hand and does not fit.',
  `Saw the dash-two-dots line first, ${angleLabel(end.sawAngle)} off square, in a V, throat up; then hollow to the full line from both wings inwards.`,
  `Finish on a form of R ${lengthLabel(end.formRadius, units)}. Light 0.1 mm wide is good, 0.5 mm a remake. Gap at throat and long point: form too small; at the wings: too large.`,
  allowances(s),
];

/** Whether a finding is of this end, or of the whole branch. */
const concerns = (end: SaddleEnd, s: SaddleCopeSolution) => ({ message }: Finding): boolean =>
  s.far === undefined || !message.includes(` at the ${end.name === 'near' ? 'far' : 'near'} end`);

const cutSetUp = (end: SaddleEnd, { name, units, solution: s, findings, font }: SetUpSource): SetUp => {
  const where = s.far === undefined ? '' : `, ${end.name} end`;
  return {
    operation: `Hollow the end of ${s.branch.name}${where}`,
    machine: 'Saw, then gouge, rasp and sanding form',
    picture: jointPicture(end, `${name}${where}`, units, font),
    pictureNote: 'True proportions, not to scale. Full line: finished wood; short dashes: hidden; long and short: axis.',
    numbers: [
      ...endRows(end, s, units), ...lengthRows(s, units),
      { label: 'Wrap round the branch, at the paper’s middle', value: lengthLabel(s.wrapLength, units) },
    ],
    tables: [ordinateTable(end, s, units)],
    steps: cutSteps(end, s, units),
    warnings: findings.filter(concerns(end, s)).map((f) => `${f.message} ${f.remedy}`),
    cautions: sawCautions,
  };
};

const pinSetUp = (end: SaddleEnd, { name, units, solution: s, font }: SetUpSource): readonly SetUp[] => {
  const { pin } = end;
  if (pin === undefined) return [];
  const label = (mm: number): string => lengthLabel(mm, units);
  const where = s.far === undefined ? '' : `, ${end.name} end`;
  return [{
    operation: `Drill ${s.branch.name} and ${end.main.name} for the pin${where}`,
    machine: 'Drill press, or a hand drill in a guide block',
    picture: jointPicture(end, `${name}${where}`, units, font),
    pictureNote: 'True proportions, not to scale. The pin, in short dashes, lies on the branch’s axis.',
    numbers: [
      { label: 'Pin or loose tenon, and bit', value: `Ø ${label(pin.diameter)}` },
      { label: 'Hole in the branch, from its finished tip, the horn', value: label(pin.hornToHollow + pin.intoBranch + holeExtra) },
      { label: `  of it hollowed away ${lengthMain(pin.hornToHollow, units)}, for the pin`, value: `${label(pin.intoBranch)} + ${lengthMain(holeExtra, units)} for glue` },
      { label: `Hole in the main, along the bit: ${lengthMain(pin.intoMain, units)} + ${lengthMain(holeExtra, units)}`, value: label(pin.intoMain + holeExtra) },
      { label: 'Length of the pin', value: label(pin.intoBranch + pin.intoMain) },
      ...angleRows(end, units),
      { label: 'Left of the main beyond the hole', value: label(pin.wall) },
      { label: 'Left of the main beside the hole', value: label(pin.skin) },
    ],
    tables: [],
    steps: [
      `Drill the branch before its end is hollowed, on its axis, while the end is square: ${lengthLabel(pin.hornToHollow + pin.intoBranch + holeExtra, units)} deep from where the finished tip will be; from a blank that is longer, so much deeper.`,
      `Tilt the table ${angleLabel(end.sawAngle)} (${riseOverRun(end.sawAngle, units)}), the main in a V along the tilt, throat side uphill; or use a drill guide made from this cope.`,
      'In the main the depth is along the bit, from where its axis enters the wood. Try the fit in a test piece of the same wood.',
    ],
    cautions: drillCautions,
  }];
};

/** The pages for the machines in the order of work: per end the pin’s holes, then the hollow. */
export const setUps = (source: SetUpSource): readonly SetUp[] => {
  const { near, far } = source.solution;
  return [near, ...(far === undefined ? [] : [far])].flatMap((end) => [...pinSetUp(end, source), cutSetUp(end, source)]);
};
