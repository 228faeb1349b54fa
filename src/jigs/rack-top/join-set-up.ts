import type { Font } from '../../drawing/font.js';
import type { SetUp } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { countOf, lengthOf, words, type Words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { jointPicture, splineHalf } from './draw-joint.js';
import type { RackTop } from './rack-top.js';

/** The page for joining the parts of the board. */
export const joinSetUp = (top: RackTop, context: Context, font: Font): SetUp => {
  const { spline, splits, board } = top;
  const parts = [...splits, board.length].map((x, i) => x - (splits[i - 1] ?? 0));
  const where = (i: number): string => (i === 0 ? ', left end' : i === splits.length ? ', right end' : '');
  return {
    code: 'join', parts: ['joint'],
    operation: 'Join the parts of the board', machine: 'Saw or shooting board, router with a slot cutter, clamps',
    picture: jointPicture(top, context, font), pictureIs: 'true-size', pictureNote: ['Section along the board, the loose spline in its grooves.'],
    numbers: [
      { code: 'spline', label: ['Spline, thick × wide'], value: words`${lengthOf(spline.thickness)} × ${lengthOf(2 * splineHalf(spline))}` },
      { code: 'groove', label: ['Groove, deep in each part'], value: [lengthOf(spline.groove)] },
      { code: 'play', label: ['So the spline is narrower than both together by'], value: [lengthOf(2 * spline.groove - 2 * splineHalf(spline), 'mm')] },
      { code: 'margin', label: ['Grooves stop short of the edges by'], value: [lengthOf(spline.margin)] },
      { code: 'spline-length', label: ['Length of the spline'], value: [lengthOf(board.width - 2 * spline.margin)] },
      { code: 'number', label: ['Make'], value: [countOf(splits.length)] },
    ],
    tables: [
      {
        code: 'parts', heading: ['Parts of the board, cut square to these lengths'], columns: [{ code: 'part', head: 'part' }, { code: 'length', head: 'length' }],
        rows: parts.map((length, i): Words[] => [[`${i + 1}${where(i)}`], [lengthOf(length)]]),
      },
      {
        code: 'joints', heading: ['Joints, from the left end'], columns: [{ code: 'joint', head: 'joint' }, { code: 'station', head: 'station' }],
        rows: splits.map((x, i): Words[] => [[String(i + 1)], [lengthOf(x)]]),
      },
    ],
    steps: [
      { code: 'cut', words: ['Cut the ends square and true, the whole width; the line is the joint, no saw kerf is allowed for.'] },
      { code: 'groove', words: words`Groove both ends ${lengthOf(spline.groove)} deep from the top face with the same setting, so that the tops come level.` },
      { code: 'dry', words: ['Dry: witness lines across the joint in one line, and the length from the left end to the farthest station right with a steel rule. Then glue.'] },
      { code: 'carry', words: ['End grain holds little: put the joint over a leg or a rail, or screw a batten across it underneath.'] },
    ],
    cautions: cautionsAt('join', context.units),
  };
};
