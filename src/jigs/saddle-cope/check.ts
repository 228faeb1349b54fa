import type { Finding } from '../../errors/finding.js';
import { angleOf, diameterOf, lengthOf, ratioOf, words, type Words } from '../../units/quantity.js';
import type { Context } from '../jig.js';
import { checkSawDepth, checkSawReading } from '../kit/reach.js';
import { cureLength, findingsFrom, remediesIn, type Concern, type Report } from '../kit/report.js';
import { checkPin } from './check-pin.js';
import { diameterField, pinTooThickFor, soundReach as thin } from './reach.js';
import type { SaddleCopeSolution, SaddleEnd } from './solve.js';
import { layOutStrip, tabWidth } from './strip-layout.js';

/** Common practice: a knife edge above 0.95 of the main's radius. */
const knife = 0.95;
/** Room on the radius below which stock that measures a little more does not close, mm. */
const leastRoom = 0.2;
/** Wood between the hollows of the two ends below which there is no branch left, mm. */
const leastBetween = 5;

/** One end of a branch on its way through the checks. */
interface Checked {
  readonly s: SaddleCopeSolution;
  readonly end: SaddleEnd;
  readonly where: string;
  readonly about: Concern;
  readonly context: Context;
}

const wingFindings = ({ s, end, where, about, context }: Checked): readonly Report[] => {
  const { main, branch, offset } = end.joint;
  const beside = Math.abs(offset);
  const ratio = (beside + branch) / main;
  // What the remedy prints is at the limit, and as sound as it says.
  if (ratio <= thin + 1e-9) return [];
  const { atLeast, atMost } = remediesIn(context.units);
  const isKnife = ratio > knife;
  const [branchMost, mainLeast] = [atMost(2 * (thin * main - beside)), atLeast((2 * (beside + branch)) / thin)];
  const room = branchMost >= 3;
  const alone = room && !pinTooThickFor({ pin: { diameter: end.pin?.diameter } }, branchMost);
  const [branchField, mainField] = [diameterField(s.branch, 'branch'), diameterField(end.main, end.name === 'far' ? 'farEnd.main' : 'main')];
  return [{
    code: isKnife ? 'wing-knife-edge' : 'wing-thin', severity: 'warn', measured: ratio, limit: isKnife ? knife : thin, about,
    message: words`The branch reaches to ${ratioOf(ratio, 3)} of the main’s radius${where}; the wings end at ${angleOf(end.wingAngle)} of wood${isKnife ? ', a knife edge that crumbles' : ', thin and short in the grain'}.`,
    remedy: words`${room ? words`A branch of up to ${diameterOf(branchMost)} here` : 'A smaller offset'}, or a main of at least ${diameterOf(mainLeast)}; or blunt the wings and fill.`,
    would: [...(alone ? [cureLength(branchField, branchMost)] : []), cureLength(mainField, mainLeast)],
  }];
};

const tightFit = ({ end, where, about }: Checked): readonly Report[] => {
  const { main, branch, offset } = end.joint;
  const spare = main - Math.abs(offset) - branch;
  if (spare > leastRoom) return [];
  const more: Words = spare < 0.005 ? ['any'] : [`${(2 * spare).toFixed(2)} mm`];
  return [{
    code: 'measured-stock-tight', severity: 'note', measured: spare, limit: leastRoom, about,
    message: words`Only ${spare.toFixed(2)} mm is left between the branch’s side and the main’s${where}: stock that measures ${more} more does not close.`,
    remedy: ['Measure the pieces that will be joined, not their labels, and print again with those figures.'],
  }];
};

const sawFindings = ({ s, end, where, about, context }: Checked): readonly Report[] => {
  const remedy = words`Cut it in a carrier (kind v-cradle, carrier: { from: ${context.name}${end.name === 'far' ? ', end: far' : ''} }), or by hand in a V to the line.`;
  return [
    ...checkSawReading(end.sawAngle, { about, what: [`The first cut${where}`], remedy }, context),
    ...checkSawDepth(s.branch.diameter, 0, { about, what: [`The branch${where}`], remedy: ['Turn it over and finish the cut by hand.'] }, context),
  ];
};

const sheetFit = (s: SaddleCopeSolution, { drawingArea: area, units }: Context): readonly Report[] => {
  const strip = layOutStrip(s, units);
  const [width, height] = [strip.width + tabWidth, strip.height];
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  const [areaShort, areaLong] = [Math.min(area.width, area.height), Math.max(area.width, area.height)];
  if (short <= areaShort && long <= areaLong) return [];
  const [measured, limit] = long > areaLong ? [long, areaLong] : [short, areaShort];
  return [{
    code: 'wrap-over-one-sheet', severity: 'note', measured, limit, about: { operation: 'hollow' },
    message: words`The wrap is ${lengthOf(width)} × ${lengthOf(height)}: more than one sheet holds. It is drawn over several, seams clear of the saddles.`,
    remedy: ['Tape the sheets on a flat board before you cut the wrap out; or take a larger paper, or the one-page file to a copy shop.'],
  }];
};

const blankFindings = (s: SaddleCopeSolution, { units }: Context): readonly Report[] => {
  const has = s.branch.length;
  if (s.lengths === undefined || has === undefined) return [];
  const { hornToHorn, toeToToe } = s.lengths;
  const about: Concern = { operation: 'hollow', round: s.branch.name };
  const { atLeast } = remediesIn(units);
  if (has < hornToHorn) {
    return [{
      code: 'branch-short', severity: 'warn', measured: has, limit: hornToHorn, about,
      message: words`The branch ${s.branch.name} is ${lengthOf(has)} long; horn to horn it takes ${lengthOf(hornToHorn)}.`,
      remedy: words`A piece of at least ${lengthOf(atLeast(toeToToe))}, toe to toe of the first cuts, and some more to hold it by at the saw.`,
    }];
  }
  return has >= toeToToe ? [] : [{
    code: 'branch-ends-before-toe', severity: 'note', measured: has, limit: toeToToe, about,
    message: words`The branch ${s.branch.name} is ${lengthOf(has)} long, and toe to toe the first cuts take ${lengthOf(toeToToe)}: a toe runs off the end, with no harm to the finished wood.`,
    remedy: words`Set the saw by the heel, or take a piece of at least ${lengthOf(atLeast(toeToToe))}.`,
  }];
};

const lengthFindings = (s: SaddleCopeSolution, { units }: Context): readonly Report[] => {
  if (s.lengths === undefined || s.far === undefined || s.centres === undefined) return [];
  const least = s.near.crest + s.far.crest + leastBetween;
  if (s.centres >= least) return [];
  const enough = remediesIn(units).atLeast(least);
  const between = s.centres - least + leastBetween;
  return [{
    code: 'ends-meet', severity: 'stop', measured: s.centres, limit: least, about: { operation: 'hollow' },
    message: words`With ${lengthOf(s.centres)} between the crossings the two hollows ${between > 0 ? words`leave ${lengthOf(between)} of wood between them, less than ${lengthOf(leastBetween)}`
      : words`run ${lengthOf(-between)} into each other`}.`,
    remedy: words`Centres of at least ${lengthOf(enough)}.`, would: [cureLength('centres', enough)],
  }];
};

/** What a maker should know before cutting a saddle cope. Limits are common practice. */
export const check = (s: SaddleCopeSolution, context: Context): readonly Finding[] => {
  const ends = s.far === undefined ? [s.near] : [s.near, s.far];
  const perEnd = ends.flatMap((end) => {
    const where = s.far === undefined ? '' : ` at the ${end.name} end`;
    const checked: Checked = { s, end, where, about: { operation: 'hollow', end: end.name, round: s.branch.name }, context };
    return [...[wingFindings, tightFit, sawFindings].flatMap((find) => find(checked)), ...checkPin(end, where, context)];
  });
  return findingsFrom([...perEnd, ...lengthFindings(s, context), ...blankFindings(s, context), ...sheetFit(s, context)], context);
};
