import type { Finding } from '../../errors/finding.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import { degrees } from '../../units/units.js';
import type { Context, Report } from '../jig.js';
import { checkPin } from './check-pin.js';
import type { SaddleCopeSolution, SaddleEnd } from './solve.js';
import { layOutStrip, tabWidth } from './strip-layout.js';

/** Common practice: thin wings above 0.85 of the main's radius, a knife edge above 0.95. */
const thin = 0.85;
const knife = 0.95;

const wingFindings = (end: SaddleEnd, where: string, label: (mm: number) => string): readonly Report[] => {
  const { main, branch, offset } = end.joint;
  const ratio = (Math.abs(offset) + branch) / main;
  if (ratio <= thin) return [];
  const isKnife = ratio > knife;
  const limit = isKnife ? knife : thin;
  const nearest = limit * main - Math.abs(offset);
  return [{
    code: isKnife ? 'wing-knife-edge' : 'wing-thin', severity: 'warn', measured: ratio, limit,
    message: `The branch reaches to ${ratio.toFixed(3)} of the main's radius${where}; the wings end at ${angleLabel(end.wingAngle)} of wood`
      + `${isKnife ? ', a knife edge that crumbles' : ', thin and short in the grain'}.`,
    remedy: nearest > 0
      ? `A branch of up to ${label(2 * nearest)} here, or a main of at least ${label((2 * (Math.abs(offset) + branch)) / limit)}; or blunt the wings and fill.`
      : `A smaller offset, or a main of at least ${label((2 * (Math.abs(offset) + branch)) / limit)}.`,
  }];
};

const tightFit = (end: SaddleEnd, where: string): readonly Report[] => {
  const { main, branch, offset } = end.joint;
  const spare = main - Math.abs(offset) - branch;
  if (spare > 0.2) return [];
  return [{
    code: 'measured-stock-tight', severity: 'note', measured: spare, limit: 0.2,
    message: `Only ${spare.toFixed(2)} mm is left between the branch's side and the main's${where}: stock that measures ${spare < 0.005 ? 'any' : `${(2 * spare).toFixed(2)} mm`} more does not close.`,
    remedy: 'Measure the pieces that will be joined, not their labels, and print again with those figures.',
  }];
};

const sawReach = (end: SaddleEnd, where: string, { shop }: Context): readonly Report[] => {
  const most = shop.saw?.maxReading;
  if (most === undefined || end.sawAngle <= most) return [];
  return [{
    code: 'saw-out-of-reach', severity: 'warn', measured: degrees(end.sawAngle), limit: degrees(most),
    message: `The first cut${where} is ${angleLabel(end.sawAngle)} off square; the saw turns to ${angleLabel(most)}.`,
    remedy: `Cut it in a carrier (v-cradle with carrier, sharp angle ${angleLabel(end.joint.angle)}), or saw it by hand in a V to the line.`,
  }];
};

const sheetFit = (s: SaddleCopeSolution, { drawingArea: area, units }: Context): readonly Report[] => {
  const strip = layOutStrip(s, units);
  const [width, height] = [strip.width + tabWidth, strip.height];
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  const [areaShort, areaLong] = [Math.min(area.width, area.height), Math.max(area.width, area.height)];
  if (short <= areaShort && long <= areaLong) return [];
  const [measured, limit] = long > areaLong ? [long, areaLong] : [short, areaShort];
  return [{
    code: 'wrap-over-one-sheet', severity: 'note', measured, limit,
    message: `The wrap is ${lengthLabel(width, units)} × ${lengthLabel(height, units)}: more than one sheet holds. It is drawn over several, seams clear of the saddles.`,
    remedy: 'Tape the sheets on a flat board before you cut the wrap out; or take a larger paper, or the one-page file to a copy shop.',
  }];
};

/** What a maker should know before cutting a saddle cope. Limits are common practice. */
export const check = (s: SaddleCopeSolution, context: Context): readonly Finding[] => {
  const label = (mm: number): string => lengthLabel(mm, context.units);
  const ends = s.far === undefined ? [s.near] : [s.near, s.far];
  const perEnd = ends.flatMap((end) => {
    const where = s.far === undefined ? '' : ` at the ${end.name} end`;
    return [
      ...wingFindings(end, where, label), ...tightFit(end, where), ...sawReach(end, where, context),
      ...checkPin(end, where, context),
    ];
  });
  return [...perEnd, ...lengthFindings(s, label), ...blankFindings(s, label), ...sheetFit(s, context)].map((report) => ({ jig: context.name, ...report }));
};

const blankFindings = (s: SaddleCopeSolution, label: (mm: number) => string): readonly Report[] => {
  const [needed, has] = [s.lengths?.hornToHorn, s.branch.length];
  if (needed === undefined || has === undefined || has >= needed) return [];
  return [{
    code: 'branch-short', severity: 'warn', measured: has, limit: needed,
    message: `The branch ${s.branch.name} is ${label(has)} long; horn to horn it takes ${label(needed)}.`,
    remedy: `A piece of at least ${label(needed)}, and some more to hold it by at the saw.`,
  }];
};

const lengthFindings = (s: SaddleCopeSolution, label: (mm: number) => string): readonly Report[] => {
  if (s.lengths === undefined || s.far === undefined || s.centres === undefined) return [];
  const least = s.near.crest + s.far.crest;
  const between = s.centres - least;
  if (between >= 5) return [];
  return [{
    code: 'ends-meet', severity: 'stop', measured: s.centres, limit: least + 5,
    message: `With ${label(s.centres)} between the crossings the two hollows leave ${label(between)} of wood between them.`,
    remedy: `Centres of at least ${label(least + 5)}.`,
  }];
};
