import type { SetUp } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Finding } from '../../errors/finding.js';
import { lengthLabel, millimetres } from '../../units/format.js';
import type { Context } from '../jig.js';
import { joinCautions, routerCautions } from './cautions.js';
import { jointPicture } from './draw-joint.js';
import { plugGroups } from './draw-plug.js';
import { drawRecessTemplate } from './draw-recess-template.js';
import { holeSetUp } from './hole-set-up.js';
import { templateGroups } from './pins.js';
import type { RackTop } from './rack-top.js';
import type { Recess } from './recess.js';
import { slotSetUp } from './slot-set-up.js';

const recessSetUp = (recess: Recess, top: RackTop, context: Context, font: Font): SetUp => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const { cutter, board } = top;
  return {
    operation: `Rout recess ${recess.number}`, machine: 'Router with a template',
    picture: drawRecessTemplate(recess, top, context, font), pictureNote: 'The template as printed on its own sheet.',
    numbers: [
      { label: 'Depth', value: say(recess.depth) }, { label: 'Floor left under it', value: say(board.thickness - recess.depth) },
      { label: 'Size', value: `${say(recess.width)} × ${say(recess.height)}` }, { label: 'Tightest inside radius', value: say(recess.insideRadius) },
      { label: 'Cutter', value: `Ø ${say(cutter.diameter)}` },
      ...(cutter.bushing === undefined ? [] : [{ label: 'Guide bushing; template larger all round by', value: `Ø ${say(cutter.bushing)}; ${millimetres(cutter.offset)}` }]),
      { label: 'Face', value: recess.face === 'top' ? 'top' : 'underside' }, { label: 'Middle, along and across', value: `${say(recess.along)}, ${say(recess.across)}` },
    ],
    tables: [],
    steps: [
      'Lay the template’s centre lines on the board’s, ruled through the middle square to the front edge; screw or tape it where waste or the recess hides it.',
      'Plunge in the middle, in passes of at most 6 mm; clear the middle first, then run the edge once, at full depth, against the rotation.',
      'Measure the floor before the template comes off.',
    ],
    cautions: routerCautions,
  };
};

const joinSetUp = (top: RackTop, context: Context, font: Font): SetUp => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const { spline, splits, board } = top;
  return {
    operation: 'Join the parts of the board', machine: 'Saw or shooting board, router with a slot cutter, clamps',
    picture: jointPicture(top, context, font), pictureNote: 'Section along the board, the loose spline in its grooves.',
    numbers: [
      { label: 'Spline', value: `${say(spline.thickness)} × ${say(2 * spline.groove)}` }, { label: 'Grooves stop short of the edges by', value: say(spline.margin) },
      { label: 'Length of the spline', value: say(board.width - 2 * spline.margin) }, { label: 'Make', value: String(splits.length) },
    ],
    tables: [{ heading: 'Joints, from the left end', columns: ['joint', 'station'], rows: splits.map((x, i) => [String(i + 1), say(x)]) }],
    steps: [
      'Cut the ends square and true, the whole width; the line is the joint, no saw kerf is allowed for.',
      'Groove both ends from the top face with the same setting, so that the tops come level.',
      'Dry: witness lines across the joint in one line, and the length from the left end to the farthest station right with a steel rule. Then glue.',
      'End grain holds little: put the joint over a leg or a rail, or screw a batten across it underneath.',
    ],
    cautions: joinCautions,
  };
};

/** The pages for the machines; what was found stands on the first, after the cautions, which so keep to its first sheet however much it is. */
export const setUps = (top: RackTop, context: Context, font: Font, findings: readonly Finding[]): readonly SetUp[] => {
  const pages = [
    ...templateGroups(top).map((group) => slotSetUp(group, top, context, font)), ...plugGroups(top.holes).map((holes) => holeSetUp(holes, top, context, font)),
    ...top.recesses.map((recess) => recessSetUp(recess, top, context, font)), ...(top.splits.length > 0 ? [joinSetUp(top, context, font)] : []),
  ];
  if (findings.length === 0) return pages;
  const found = { heading: 'Found by the check', columns: ['what', 'what would do'], rows: findings.map((f) => [f.message, f.remedy]) };
  return pages.map((page, i) => (i === 0 ? { ...page, tables: [found, ...page.tables] } : page));
};
