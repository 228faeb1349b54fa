import { pointLeadsLimit } from '../../geometry/bore.js';
import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import type { Finding } from '../../errors/finding.js';
import { angleLabel, lengthLabel, millimetres } from '../../units/format.js';
import { drillingPicture } from './drilling-picture.js';
import { angleRows, manual } from './set-up-block.js';
import type { Page } from './words.js';

const tiltRows = ({ s }: Page): readonly NumberRow[] => s.tilts === undefined ? [] : [
  { label: 'Rake, splay', value: `${angleLabel(s.tilts.rake)}, ${angleLabel(s.tilts.splay)}` },
  { label: 'Resultant', value: `${angleLabel(s.tilts.resultant)} off square` },
  { label: 'Sight line, from rake to splay', value: angleLabel(s.tilts.sightLine) },
  { label: 'Second tilt, if it rides on the first', value: `${angleLabel(s.tilts.secondTilt)}, not the splay` },
];

const workRows = ({ s, units }: Page): readonly NumberRow[] => {
  const say = (mm: number): string => lengthLabel(mm, units);
  const { work, hole, pairing } = s;
  const round = work.kind === 'flat' || work.offset === 0 ? [] : [
    { label: 'Bit beside the round’s axis', value: `${say(Math.abs(work.offset))} to the ${work.offset > 0 ? 'right' : 'left'}, seen from the acute side` },
  ];
  return [
    ...(pairing === undefined ? [] : [{ label: 'Meets the pin of', value: `${pairing.jig}${pairing.end === 'far' ? ', far end' : ''}, in the end of ${pairing.branch}` }]),
    ...round,
    { label: hole.through ? 'Hole, right through, along the bit' : 'Depth along the bit, on its axis', value: say(hole.depth) },
    { label: 'Opening along the work', value: say(hole.openingLength) },
    { label: work.kind === 'flat' && work.thickness === undefined ? 'Hole’s end from the mark' : 'Marks on the two faces, apart', value: say(hole.markShift) },
    ...(hole.farWall === undefined ? [] : [{ label: 'Left beyond hole and point', value: say(hole.farWall) }]),
    ...(hole.skin === undefined ? [] : [{ label: 'Left beside the hole', value: say(hole.skin) }]),
  ];
};

/** What the bit must be long enough for, in the order added up. */
const budgetTable = ({ s, units }: Page) => {
  const say = (mm: number): string => lengthLabel(mm, units);
  const { budget, bit } = s;
  let sum = 0;
  const row = (label: string, length: number): readonly string[] => {
    sum += length;
    return [label, say(length), say(sum)];
  };
  return {
    heading: 'Length of the bit, in the order added up',
    columns: ['What', 'Length', 'Sum'],
    rows: [
      row('bore in the block, on its axis', budget.bore),
      row('standoff: sole to work, along the bit', budget.standoff),
      row('run until the bit is buried all round', budget.run),
      row(s.hole.through ? 'hole, right through' : 'depth of the hole', budget.depth),
      row(`point beyond the lips${bit.known === 'assumed' ? ' (assumed: measure yours)' : ''}`, budget.point),
      ['needed, jaws to tip', '', say(budget.needed)],
      ['of that, jaws to lips', '', say(budget.needed - budget.point)],
      ...(bit.usableLength === undefined ? [] : [['your bit, jaws to lips', '', say(bit.usableLength)]]),
    ],
  };
};

const numbers = (page: Page): readonly NumberRow[] => {
  const { s, units } = page;
  const { budget, block, bit, drill } = s;
  const say = (mm: number): string => lengthLabel(mm, units);
  return [
    ...angleRows(s, s.work.kind === 'flat' ? 'Bit to face' : 'Bit to axis', page),
    ...tiltRows(page), ...workRows(page),
    { label: 'Stop: tip out of the sole', value: say(budget.tipStop) },
    { label: 'Stop: tip to collar on the bit', value: say(block.boreLength + budget.tipStop) },
    { label: `Point (${millimetres(bit.point)}) leads below`, value: `${angleLabel(pointLeadsLimit(drill, bit.point))} off square` },
  ];
};

const marking = ({ s }: Page): readonly string[] => {
  const { work, tilts, pairing } = s;
  if (work.kind === 'flat') return [
    tilts === undefined ? 'Mark the hole’s centre on the face, and through it the line along which the bit leans.'
      : `Mark the hole’s centre on the face, and through it the sight line, ${angleLabel(tilts.sightLine)} from the plane of the rake towards the splay. Along that line one tilt of ${angleLabel(tilts.resultant)} does the work of both.`,
    'Set the block so that the centre lines on its ends stand on that line and the centre lines on its sides are square across from the centre; acute end to where the bit’s shank leans.',
  ];
  return [
    `Draw a line along the round on the side that faces the bit${work.offset === 0 ? '' : '; the bit enters beside it, by the offset'}, and a ring round it at the station where the axis enters.`,
    ...(pairing === undefined ? [] : ['Acute end of the block towards the throat of the branch: the bit then lies on the branch’s axis and the two holes meet.']),
    'Seat the block: station marks on its sides at the ring, the middle of its sole over the line along the round; acute end to where the bit’s shank leans.',
  ];
};

/** How the guide is used. */
export const drillingSetUp = (page: Page, findings: readonly Finding[]): SetUp => ({
  operation: page.s.work.kind === 'flat' ? 'Drill flat work with the guide' : `Drill ${page.s.work.round.name} with the guide`,
  machine: 'Hand drill',
  picture: drillingPicture(page), pictureNote: 'True proportions. Bit and bore in short dashes, axis long and short.',
  numbers: numbers(page), tables: [budgetTable(page)],
  steps: [
    ...marking(page),
    `Clamp block and work together and to the bench${page.s.work.kind === 'flat' ? '' : ', the round in a V'}; ${page.s.hole.through ? 'backing under the exit' : 'nothing may shift until the bit is out'}.`,
    'Set tape or collar on the bit at the length above; it stops at the block’s top. Start slowly until the bit is buried all round; draw it out often to clear the chips.',
    'Test in scrap of the same size, a bevel along the bit. Off to one side: the block’s lines and the work’s do not agree.',
    ...findings.map((f) => `${f.message} ${f.remedy}`),
  ],
  cautions: [
    'Clamp block and work; never hold either by hand under the bit. A side handle on a strong drill: it kicks when the bit catches.',
    'Brace for breakthrough: ease off the pressure before the bit comes out.',
    'Eye protection; no gloves, no loose sleeves near the chuck.',
    manual,
  ],
});
