import type { SetUp } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Finding } from '../../errors/finding.js';
import { lengthLabel } from '../../units/format.js';
import type { Context } from '../jig.js';
import { reportsOn } from './check.js';
import { joinCautions, routerCautions } from './cautions.js';
import { jointPicture } from './draw-joint.js';
import { plugGroups } from './draw-plug.js';
import { drawRecessTemplate } from './draw-recess-template.js';
import { holeSetUp } from './hole-set-up.js';
import { templateGroups } from './pins.js';
import { practice } from './practice.js';
import type { RackTop } from './rack-top.js';
import type { Recess } from './recess.js';
import { findingOf, type Part } from './report.js';
import { slotSetUp } from './slot-set-up.js';

const recessSetUp = (recess: Recess, top: RackTop, context: Context, font: Font): SetUp => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const { cutter, board } = top;
  return {
    operation: `Rout recess ${recess.number}`, machine: 'Router with a template',
    picture: drawRecessTemplate(recess, top, context, font), pictureNote: 'The template as printed on its own sheet.',
    numbers: [
      { label: 'Depth', value: say(recess.depth) }, { label: 'Floor left under it', value: say(board.thickness - recess.depth) },
      { label: 'Size', value: `${say(recess.width)} × ${say(recess.height)}` }, { label: 'Tightest inside radius', value: recess.insideRadius < 0.05 ? 'sharp: left with the cutter’s' : say(recess.insideRadius) },
      { label: 'Cutter', value: `Ø ${say(cutter.diameter)}` },
      ...(cutter.bushing === undefined ? [] : [{ label: 'Guide bushing; template larger all round by', value: `Ø ${say(cutter.bushing)}; ${say(cutter.offset)}` }]),
      { label: 'Face', value: recess.face === 'top' ? 'top' : 'underside' }, { label: 'Middle, along and across', value: `${say(recess.along)}, ${say(recess.across)}` },
    ],
    tables: [],
    steps: [
      'Lay the template’s centre lines on the board’s, ruled through the middle square to the front edge; screw or tape it where waste or the recess hides it.',
      `Plunge in the middle, in passes of at most ${practice(context.units).pass}; clear the middle first, then run the edge once, at full depth, against the rotation.`,
      'Measure the floor before the template comes off.',
    ],
    cautions: routerCautions(context.units),
  };
};

const joinSetUp = (top: RackTop, context: Context, font: Font): SetUp => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const { spline, splits, board } = top;
  const parts = [...splits, board.length].map((x, i) => x - (splits[i - 1] ?? 0));
  return {
    operation: 'Join the parts of the board', machine: 'Saw or shooting board, router with a slot cutter, clamps',
    picture: jointPicture(top, context, font), pictureNote: 'Section along the board, the loose spline in its grooves.',
    numbers: [
      { label: 'Spline', value: `${say(spline.thickness)} × ${say(2 * spline.groove)}` }, { label: 'Grooves stop short of the edges by', value: say(spline.margin) },
      { label: 'Length of the spline', value: say(board.width - 2 * spline.margin) }, { label: 'Make', value: String(splits.length) },
    ],
    tables: [
      { heading: 'Parts of the board, cut square to these lengths', columns: ['part', 'length'], rows: parts.map((length, i) => [`${i + 1}${i === 0 ? ', left end' : i === splits.length ? ', right end' : ''}`, say(length)]) },
      { heading: 'Joints, from the left end', columns: ['joint', 'station'], rows: splits.map((x, i) => [String(i + 1), say(x)]) },
    ],
    steps: [
      'Cut the ends square and true, the whole width; the line is the joint, no saw kerf is allowed for.',
      'Groove both ends from the top face with the same setting, so that the tops come level.',
      'Dry: witness lines across the joint in one line, and the length from the left end to the farthest station right with a steel rule. Then glue.',
      'End grain holds little: put the joint over a leg or a rail, or screw a batten across it underneath.',
    ],
    cautions: joinCautions,
  };
};

/** A page for a machine, and the parts of the board that are worked there. */
interface Page {
  readonly page: SetUp;
  readonly parts: readonly Part[];
}

/** What was found about a page's parts; what is about none of any page stands on the first. */
const foundFor = (pages: readonly Page[], { page, parts }: Page, findings: readonly Finding[], about: ReadonlyMap<string, readonly Part[]>): SetUp => {
  const all = new Set(pages.flatMap((other) => other.parts));
  const here = findings.filter(({ message }) => {
    const of = about.get(message) ?? [];
    return of.some((part) => parts.includes(part)) || (page === pages[0]?.page && !of.some((part) => all.has(part)));
  });
  if (here.length === 0) return page;
  const found = { heading: 'Found by the check', columns: ['what', 'what would do'], rows: here.map((f) => [f.message, f.remedy]) };
  return { ...page, tables: [found, ...page.tables] };
};

/** The pages for the machines; what was found stands with its own operation, after the cautions, which so keep to the first sheet however much it is. */
export const setUps = (top: RackTop, context: Context, font: Font, findings: readonly Finding[]): readonly SetUp[] => {
  const pages: Page[] = [
    ...templateGroups(top).map((group) => ({ page: slotSetUp(group, top, context, font), parts: group.slots.map((s) => `slot-${s.number}` as const) })),
    ...plugGroups(top.holes).map((holes) => ({ page: holeSetUp(holes, top, context, font), parts: holes.map((h) => `hole-${h.number}` as const) })),
    ...top.recesses.map((recess) => ({ page: recessSetUp(recess, top, context, font), parts: [`recess-${recess.number}` as const] })),
    ...(top.splits.length > 0 ? [{ page: joinSetUp(top, context, font), parts: ['joint' as const] }] : []),
  ];
  const about = new Map(reportsOn(top, context).map((report) => [findingOf(context, report).message, report.about ?? []]));
  return pages.map((each) => foundFor(pages, each, findings, about));
};
