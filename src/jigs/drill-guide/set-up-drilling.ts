import { pointLeadsLimit } from '../../geometry/bore.js';
import { besideEachOther, pictureOf } from '../../drawing/arrange.js';
import type { Figure, FigureTable, SetUp, Step } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { angleOf, lengthOf, words, type Words } from '../../units/quantity.js';
import { angleFigures, isSquareAngle } from '../kit/angle-figures.js';
import { drillingPicture } from './drilling-picture.js';
import { leanPlan, leanWay } from './lean-plan.js';
import type { DrillGuideSolution } from './solve.js';
import { soleHeight } from './sole.js';
import type { Page } from './words.js';
import { offsetOf } from './work.js';

const tiltFigures = ({ tilts }: DrillGuideSolution): readonly Figure[] => {
  if (tilts === undefined) return [];
  const way = leanWay(tilts);
  const [rakeTo, splayTo] = [tilts.rake >= 0 ? 'rear' : 'front', tilts.splay >= 0 ? 'right' : 'left'];
  return [
    { code: 'rake', label: ['Rake: going up it leans, seen from the side,'], value: words`${angleOf(Math.abs(tilts.rake))} to the ${rakeTo}` },
    { code: 'splay', label: ['Splay: going up it leans, seen from the front,'], value: words`${angleOf(Math.abs(tilts.splay))} to the ${splayTo}` },
    { code: 'resultant', label: ['The one lean that does both, off square'], value: [angleOf(tilts.resultant)] },
    { code: 'sight-line', label: ['  its line on the face, from above'], value: words`${angleOf(way.angle)} from the ${way.from} towards the ${way.towards}` },
    { code: 'second-tilt', label: ['Second tilt, where it rides on the first'], value: words`${angleOf(Math.abs(tilts.secondTilt))}, not the splay` },
  ];
};

const sideWords = (s: DrillGuideSolution): string => {
  const side = offsetOf(s.work) > 0 ? 'right' : 'left';
  return isSquareAngle(s.angle) ? `to the ${side}, seen from the block’s front` : `to the ${side}, seen from the acute side, the work under the bit`;
};

const entryFigures = (s: DrillGuideSolution): readonly Figure[] => {
  const { work, hole, pairing } = s;
  if (work.kind === 'flat') return [];
  const square = isSquareAngle(s.angle);
  const side = pairing === undefined ? 'acute side' : 'throat';
  return [
    ...(square ? [] : [{ code: 'entry', label: ['Bit enters the round, along it from where it crosses the axis'], value: words`${lengthOf(hole.station!)} towards the ${side}` }]),
    ...(square || pairing === undefined ? [] : [
      { code: 'entry-to-throat', label: [`  from there to where the throat of ${pairing.branch} stands`], value: words`${lengthOf(pairing.toThroat)} on` },
      {
        code: 'entry-to-horn', label: [`  from there to where the horn of ${pairing.branch} stands`],
        value: words`${lengthOf(pairing.toHorn)} back`,
      },
    ]),
    ...(work.offset === 0 ? [] : [
      { code: 'offset', label: ['Bit’s axis beside the round’s'], value: words`${lengthOf(Math.abs(work.offset))} ${sideWords(s)}` },
      { code: 'girth', label: ['  round the surface, from the line that faces the bit'], value: [lengthOf(work.radius * Math.asin(Math.abs(work.offset) / work.radius))] },
    ]),
  ];
};

const holeFigures = (s: DrillGuideSolution): readonly Figure[] => {
  const { hole, pairing, work } = s;
  const through = hole.through || work.kind === 'flat' && work.thickness === undefined;
  return [
    ...(pairing === undefined ? [] : [{ code: 'pair', label: ['Meets the pin of'], value: [`${pairing.jig}${pairing.end === 'far' ? ', far end' : ''}, in the end of ${pairing.branch}`] }]),
    { code: 'depth', label: [hole.through ? 'Hole, right through, along the bit' : 'Depth along the bit, from where its axis enters'], value: [lengthOf(hole.depth)] },
    { code: 'opening', label: ['Opening along the work'], value: [lengthOf(hole.openingLength)] },
    ...(isSquareAngle(s.angle) || !through ? [] : [{
      code: 'mark-shift', label: [hole.through ? 'Marks on the two faces, apart, back from the acute side' : 'Hole’s end from the mark, back from the acute side'], value: [lengthOf(hole.markShift)],
    }]),
    ...(hole.farWall === undefined ? [] : [{ code: 'far-wall', label: ['Wood that stays beyond hole and point'], value: [lengthOf(hole.farWall)] }]),
    ...(hole.skin === undefined ? [] : [{ code: 'skin', label: ['Wood that stays beside the hole'], value: [lengthOf(hole.skin)] }]),
  ];
};

/** How far the tip stands out of the block, measured where a rule can lie: of a grooved sole across its edges, not up in the groove. */
const tipFigure = ({ budget, sole, work, angle }: DrillGuideSolution): Figure => {
  const inGroove = (soleHeight(sole, offsetOf(work)) - sole.plane) / Math.sin(angle);
  const past = budget.tipStop - inGroove;
  const edges = 'a straight-edge across the sole’s edges, along the bit';
  const label = sole.depth === 0 ? 'Stop: tip out of the sole, along the bit' : past >= 0 ? `Stop: tip past ${edges}` : `Stop: tip inside the groove, short of ${edges}`;
  return { code: 'tip-stop', label: [label], value: [lengthOf(Math.abs(past))] };
};

const stopFigures = (s: DrillGuideSolution): readonly Figure[] => [
  tipFigure(s),
  { code: 'collar', label: ['Stop: tip to collar on the bit'], value: [lengthOf(s.block.boreLength + s.budget.tipStop)] },
  { code: 'run', label: ['Bit buried all round after, along it'], value: [lengthOf(s.budget.run)] },
  { code: 'point-leads', label: words`Point (${lengthOf(s.bit.point, 'mm')}) leads below, off square`, value: [angleOf(pointLeadsLimit(s.drill, s.bit.point))] },
];

/** What the bit must be long enough for, in the order added up: each length once. */
const budgetTable = ({ hole, budget, bit, sole }: DrillGuideSolution): FigureTable => {
  let sum = 0;
  const row = (label: string, length: number): readonly Words[] => {
    sum += length;
    return [[label], [lengthOf(length)], [lengthOf(sum)]];
  };
  return {
    code: 'bit-length', heading: ['Length of the bit, in the order added up'],
    columns: [{ code: 'what', head: 'What' }, { code: 'length', head: 'Length' }, { code: 'sum', head: 'Sum' }],
    rows: [
      row('bore in the block, on its axis', budget.bore),
      row(`standoff: ${sole.depth === 0 ? 'sole' : 'bore’s mouth in the groove'} to work, along the bit`, budget.standoff),
      row(hole.through ? 'hole, right through' : 'depth of the hole', budget.depth),
      ...(hole.through ? [row('on, until it is open all round and clear', budget.overrun)] : []),
      row(`point beyond the lips${bit.known === 'assumed' ? ' (assumed: measure yours)' : ''}`, budget.point),
      [['of that, jaws to lips'], [], [lengthOf(budget.neededToLips)]],
      ...(bit.usableLength === undefined ? [] : [[['your bit, jaws to lips'], [], [lengthOf(bit.usableLength)]]]),
    ],
  };
};

const flatMarks = (s: DrillGuideSolution): readonly Step[] => {
  const { tilts } = s;
  if (isSquareAngle(s.angle)) return [{ code: 'mark', words: ['Mark the hole’s centre on the face, and two lines square through it.'] }, { code: 'seat', words: ['Set the block so that the centre lines on its sides and ends stand on those lines.'] }];
  const way = tilts === undefined ? undefined : leanWay(tilts);
  return [
    {
      code: 'mark', words: tilts === undefined || way === undefined ? ['Mark the hole’s centre on the face, and through it the line along which the bit leans.']
        : words`Mark the hole’s centre on the face, and through it the sight line: ${angleOf(way.angle)} from the ${way.from} towards the ${way.towards}, from above. Along it one lean of ${angleOf(tilts.resultant)} off square does the work of both.`,
    },
    { code: 'seat', words: ['Set the block so that the centre lines on its ends stand on that line and those on its sides are square across from the centre; acute end to where the bit’s shank leans.'] },
  ];
};

const roundMarks = (s: DrillGuideSolution): readonly Step[] => {
  const { work, pairing, hole } = s;
  const square = isSquareAngle(s.angle);
  const offset = offsetOf(work);
  const aside: Words = offset === 0 ? ['on it'] : words`${lengthOf(Math.abs(offset))} beside it, ${sideWords(s)}`;
  const along: Words = square ? ['where the hole is wanted'] : words`${lengthOf(hole.station!)} from where the bit is to cross the round’s own axis, towards the ${pairing === undefined ? 'acute side' : 'throat'}`;
  return [
    { code: 'mark', words: words`Draw a line along the round on the side that faces the bit, and a ring round it ${along}: there the bit’s axis enters, ${aside}.` },
    ...(square || pairing === undefined ? [] : [{ code: 'throat', words: ['Acute end of the block towards the throat of the branch: the bit then lies on the branch’s axis and the two holes meet.'] }]),
    { code: 'seat', words: [`Seat the block: station marks on its sides at the ring, the middle of its sole over the line along the round${square ? '' : '; acute end to where the bit’s shank leans'}.`] },
  ];
};

/** On which side a canted bit touches first; decided by a solid in the tests. */
const bites = 'The rim bites on the uphill side first, the side to which the shank leans: start slowly until it is buried all round. ';

const steps = (s: DrillGuideSolution): readonly Step[] => [
  ...(s.work.kind === 'flat' ? flatMarks(s) : roundMarks(s)),
  {
    code: 'clamp',
    words: [`Clamp block and work together and to the bench${s.work.kind === 'flat' ? '' : ', the round in a V'}; ${s.hole.through ? 'backing under the exit' : 'nothing may shift until the bit is out'}.`],
  },
  {
    code: 'drill',
    words: words`Set tape or collar ${lengthOf(s.block.boreLength + s.budget.tipStop)} from the tip; it stops at the block’s top. ${isSquareAngle(s.angle) ? '' : bites}Draw the bit out often to clear the chips.`,
  },
  { code: 'test', words: ['Test in scrap of the same size, a bevel along the bit. Off to one side: the block’s lines and the work’s do not agree.'] },
];

/** How the guide is used. */
export const drillingSetUp = (page: Page): SetUp => {
  const { s, name, font } = page;
  const picture = drillingPicture(page);
  return {
    code: 'drill', operation: s.work.kind === 'flat' ? 'Drill flat work with the guide' : `Drill ${s.work.round.name} with the guide`,
    machine: 'Hand drill',
    picture: s.tilts === undefined ? picture : pictureOf('drilling', name, besideEachOther([picture.items, leanPlan(s.tilts, font)], 8, font)),
    pictureIs: 'not-to-scale', pictureNote: ['True proportions. Bit and bore in short dashes, axis long and short.'],
    numbers: [
      ...holeFigures(s), ...entryFigures(s), ...angleFigures(s.angle, s.work.kind === 'flat' ? 'Bit to face' : 'Bit to axis'), ...tiltFigures(s), ...stopFigures(s),
    ],
    tables: [budgetTable(s)], steps: steps(s), cautions: cautionsAt('hand-drill', page.units),
  };
};
