import type { Font } from '../../drawing/font.js';
import type { Figure, SetUp, Step } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { fractionInches } from '../../units/format.js';
import { angleOf, countOf, diameterOf, lengthOf, slopeOf, words, type Words } from '../../units/quantity.js';
import { degrees, type Units } from '../../units/units.js';
import type { Context } from '../jig.js';
import { bitLength, quillTravel } from './bits.js';
import { holePicture } from './hole-picture.js';
import type { LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';
import { compassName, numbersOf } from './words.js';

const placeRows = (holes: readonly LegHole[], { board }: RackTop): readonly (readonly Words[])[] => holes.flatMap((h) => [
  [[String(h.number)], ['top'], [lengthOf(h.along)], [lengthOf(h.across)], h.lean === 0 ? ['–'] : words`${angleOf(h.toward)}${compassName(h.toward)}`],
  ...(h.lean === 0 ? [] : [[[], ['underside'], [lengthOf(h.under.x)], [lengthOf(board.width - h.under.y)], ['opening’s middle']]]),
]);

/** A length as a spec takes it: a fraction of an inch where it is one, else millimetres. */
const written = (mm: number, units: Units): string => {
  const steps = (mm / 25.4) * 64;
  return units === 'inch' && Math.abs(steps - Math.round(steps)) < 1e-6 ? fractionInches(mm).replace('″', '').replace(' ', '-').replace('\u2044', '/')
    : `${Number(mm.toFixed(2))}${units === 'inch' ? ' mm' : ''}`;
};

/** The drill guide that holds a hand drill at the hole's lean; its acute end stands where the bit's shank leans, up the arrow. */
export const guideBlockWords = ({ bit, lean }: LegHole, thickness: number, units: Units): string =>
  `For a guide block: drill-guide with onto: flat, drill: ${written(bit, units)}, angle: ${Number((90 - degrees(lean)).toFixed(2))}, thickness: ${written(thickness, units)}; `
  + 'on the top face, its acute end points the way of the printed arrow.';

const cantedSteps = (hole: LegHole, { board }: RackTop, units: Units): readonly Step[] => [
  {
    code: 'tilt', words: words`Tilt the table ${slopeOf(hole.lean)}, or lay the board on a wedge of that angle. Turn the board until the printed arrow points straight UPHILL: the leg goes up that way.`,
  },
  { code: 'mark', words: ['Set the bit’s point on the open cross on the top face; Forstner or saw-tooth bit: the rim bites on the uphill side first, so feed slowly until all of it cuts.'] },
  {
    code: 'exit', words: words`Clamp scrap under the exit; the bit’s middle comes out ${lengthOf(board.thickness * Math.tan(hole.lean))} from below the mark, against the arrow. Never drill from both faces.`,
  },
  { code: 'test', words: ['Test: the printed test disc must drop flush into a hole drilled in scrap at the same tilt, its arrow along the lean. Too long an opening: too much tilt.'] },
  { code: 'guide', words: [guideBlockWords(hole, board.thickness, units)] },
];

const squareSteps: readonly Step[] = [
  { code: 'mark', words: ['Set the bit’s point on the open cross on the top face; clamp scrap under the exit.'] },
  { code: 'test', words: ['Test: the leg in a hole in scrap of the same wood, before the board.'] },
];

const figures = (holes: readonly LegHole[], { board }: RackTop): readonly Figure[] => {
  const hole = holes[0]!;
  const canted = hole.lean > 0;
  return [
    { code: 'leg', label: ['Leg, measured'], value: words`${hole.unnamed ? '' : `${hole.round}, `}${diameterOf(hole.leg)}` },
    { code: 'bit', label: ['Bit'], value: words`${diameterOf(hole.bit)}${hole.clearance > 0 ? words` (leg + ${lengthOf(hole.clearance)})` : ''}` },
    { code: 'lean', label: ['Lean, from square to the face'], value: canted ? [slopeOf(hole.lean)] : ['none: square'] },
    ...(canted ? [
      { code: 'to-face', label: ['Between bit and face'], value: [angleOf(Math.PI / 2 - hole.lean)] },
      { code: 'opening', label: ['Opening on both faces'], value: words`${lengthOf(2 * hole.halfLong)} × ${lengthOf(hole.bit)}` },
      { code: 'shift', label: ['Underside’s mark stands back, against the arrow, by'], value: [lengthOf(board.thickness * Math.tan(hole.lean))] },
    ] : []),
    { code: 'bore', label: ['Length of the bore'], value: [lengthOf(hole.boreLength)] },
    { code: 'reach', label: ['Bit must reach, jaws to lips'], value: [lengthOf(bitLength(hole))] },
    { code: 'travel', label: ['Quill goes down, from the rim’s first touch'], value: [lengthOf(quillTravel(hole))] },
    { code: 'number', label: ['Make'], value: [countOf(holes.length)] },
  ];
};

/** The page for drilling the holes of one leg at one lean. */
export const holeSetUp = (holes: readonly LegHole[], top: RackTop, context: Context, font: Font): SetUp => {
  const hole = holes[0]!;
  return {
    code: 'drill-holes', parts: holes.map((h) => `hole-${h.number}`),
    operation: `Drill hole${holes.length > 1 ? 's' : ''} ${numbersOf(holes.map((h) => h.number))} for ${hole.round}`, machine: 'Drill press, or a hand drill in a guide block',
    picture: holePicture(hole, top, context, font), pictureIs: 'true-size', pictureNote: ['Section along the lean, top face up. Short dashes: the leg going on.'],
    numbers: figures(holes, top),
    tables: [{
      code: 'places', heading: ['Middles of the openings, from the left front corner'],
      columns: [{ code: 'hole', head: 'hole' }, { code: 'face', head: 'face' }, { code: 'along', head: 'along' }, { code: 'across', head: 'across' }, { code: 'arrow', head: 'arrow points to' }],
      rows: placeRows(holes, top),
    }],
    steps: hole.lean > 0 ? cantedSteps(hole, top, context.units) : squareSteps,
    cautions: cautionsAt('drill-press', context.units),
  };
};
