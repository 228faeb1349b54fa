import type { SetUp } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { angleLabel, fractionInches, lengthLabel, riseOverRun } from '../../units/format.js';
import { degrees, type Units } from '../../units/units.js';
import type { Context } from '../jig.js';
import { bitLength } from './bits.js';
import { drillCautions } from './cautions.js';
import { holePicture } from './hole-picture.js';
import type { LegHole } from './hole.js';
import type { RackTop } from './rack-top.js';
import { compassWords, numbersOf } from './words.js';

const placeRows = (holes: readonly LegHole[], { board }: RackTop, say: (mm: number) => string): string[][] => holes.flatMap((h) => [
  [String(h.number), 'top', say(h.along), say(h.across), h.lean === 0 ? '–' : compassWords(h.toward)],
  ...(h.lean === 0 ? [] : [['', 'underside', say(h.under.x), say(board.width - h.under.y), 'opening’s middle']]),
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

const cantedSteps = (hole: LegHole): string[] => [
  `Tilt the table ${angleLabel(hole.lean)}, or lie the board on a wedge of that angle. Turn the board until the printed arrow points straight uphill: the leg goes up that way.`,
  'Set the bit’s point on the open cross on the top face; Forstner or saw-tooth bit: the rim bites on the downhill side first, so feed slowly until all of it cuts.',
  'Clamp scrap under the exit; it comes out by the shift of the two marks, downhill of the point. Never drill from both faces.',
  'Test: the printed test disc must drop flush into a hole drilled in scrap at the same tilt, its arrow along the lean. Too long an opening: too much tilt.',
];

/** The page for drilling the holes of one leg at one lean. */
export const holeSetUp = (holes: readonly LegHole[], top: RackTop, context: Context, font: Font): SetUp => {
  const hole = holes[0]!;
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const canted = hole.lean > 0;
  return {
    operation: `Drill hole${holes.length > 1 ? 's' : ''} ${numbersOf(holes.map((h) => h.number))} for ${hole.round}`, machine: 'Drill press, or a hand drill in a guide block',
    picture: holePicture(hole, top, context, font), pictureNote: 'Section along the lean, top face up. Short dashes: the leg going on.',
    numbers: [
      { label: 'Leg, measured', value: `${hole.round}, Ø ${say(hole.leg)}` },
      { label: 'Bit', value: `Ø ${say(hole.bit)}${hole.clearance > 0 ? ` (leg + ${say(hole.clearance)})` : ''}` },
      { label: 'Lean, from square to the face', value: `${angleLabel(hole.lean)}${canted ? `; ${riseOverRun(hole.lean, context.units)}` : ''}` },
      ...(canted ? [
        { label: 'Between bit and face', value: angleLabel(Math.PI / 2 - hole.lean) },
        { label: 'Opening on both faces', value: `${say(2 * hole.halfLong)} × ${say(hole.bit)}` },
        { label: 'Underside’s mark stands back by', value: say(top.board.thickness * Math.tan(hole.lean)) },
      ] : []),
      { label: 'Length of the bore', value: say(hole.boreLength) }, { label: 'Bit must reach', value: say(bitLength(hole)) }, { label: 'Make', value: String(holes.length) },
    ],
    tables: [{
      heading: 'Middles of the openings, from the left front corner', columns: ['hole', 'face', 'along', 'across', 'arrow points to'], rows: placeRows(holes, top, say),
    }],
    steps: canted ? [...cantedSteps(hole), guideBlockWords(hole, top.board.thickness, context.units)] : [
      'Set the bit’s point on the open cross on the top face; clamp scrap under the exit.', 'Test: the leg in a hole in scrap of the same wood, before the board.',
    ],
    cautions: drillCautions,
  };
};
