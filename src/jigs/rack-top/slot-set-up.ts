import type { NumberRow, SetUp } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { angleLabel, lengthLabel, millimetres } from '../../units/format.js';
import type { Context } from '../jig.js';
import { bottomBit } from './bits.js';
import { routerCautions } from './cautions.js';
import { drawTemplate } from './draw-template.js';
import type { TemplateGroup } from './pins.js';
import type { RackTop } from './rack-top.js';
import type { Slot } from './slot.js';
import { linerWords, slotGroups, slotsNamed } from './words.js';

/** Each allowance in the order in which it is applied, with what it brings the half-width to. */
const allowanceRows = (slot: Slot, { cutter }: RackTop, say: (mm: number) => string): string[][] => {
  const { item, clearance, liner, glue, radius, widthGiven } = slot;
  const steps: [string, number][] = [
    [`half of ${slot.itemName}, measured`, item / 2], ['clearance, each side', clearance], [linerWords(slot), liner.squeezed], ['glue line', glue],
  ];
  let sum = 0;
  const rows = steps.map(([what, by], i) => {
    sum += by;
    return [`${i + 1}`, what, millimetres(by), say(sum)];
  });
  return [
    ...rows, ...(widthGiven ? [['5', 'width given in its place', '', say(radius)]] : []),
    ...(cutter.offset > 0 ? [[widthGiven ? '6' : '5', 'template only: (bushing − cutter) ÷ 2', millimetres(cutter.offset), say(radius + cutter.offset)]] : []),
  ];
};

const mouthWords = ({ mouth }: Slot, say: (mm: number) => string): string => [
  ...(mouth.flare > 0 ? [`flared ${angleLabel(mouth.flare)} over ${say(mouth.run)}`] : []), ...(mouth.ease > 0 ? [`eased R ${say(mouth.ease)}`] : []),
].join(', ') || 'square';

const numbersOf = (group: TemplateGroup, top: RackTop, context: Context): NumberRow[] => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const slot = group.slots[0]!;
  const bit = bottomBit(slot, context.shop, context.units);
  const { cutter, pins } = top;
  return [
    { label: 'Item, measured', value: `${slot.itemName}, Ø ${say(slot.item)}` },
    { label: 'Slot in the wood, width', value: say(2 * slot.radius) }, { label: 'Seat radius', value: say(slot.radius) },
    { label: 'Edge to the seat’s axis', value: say(slot.depth) }, { label: 'Mouth', value: mouthWords(slot, say) },
    { label: 'Drill the bottom first with', value: `Ø ${say(bit)}` }, { label: 'leaves to trim, on the radius', value: millimetres(slot.radius - bit / 2) },
    { label: 'Cutter', value: `Ø ${say(cutter.diameter)}${cutter.bushing === undefined ? ', flush trim' : ''}` },
    ...(cutter.bushing === undefined ? [] : [{ label: 'Guide bushing', value: `Ø ${say(cutter.bushing)}` }, { label: 'Template edge into the wood', value: millimetres(cutter.offset) }]),
    { label: 'Index pins', value: `Ø ${say(pins.diameter)}, ${say(group.spacing)} apart` },
    ...(top.land === undefined ? [] : [{ label: 'Narrowest land of the board', value: say(top.land.width) }]),
    { label: 'Make', value: `${group.slots.length}: ${slotsNamed(group.slots)}` },
  ];
};

const stationRows = (slots: readonly Slot[], say: (mm: number) => string): string[][] =>
  slots.map((s) => [String(s.number), s.edge, say(s.at), s.itemName]);

const steps = (top: RackTop): string[] => [
  'Glue the template pattern on 6 to 12 mm sheet. Drill the pin holes and the bottom of the opening, saw to 1.5 mm from the line, then file or sand until half the line is gone.',
  `Clamp the pitch stick along the board’s edge, left ends flush, its top level with the board’s. Set stations from the left end only, never from slot to slot: errors then do not add up.`,
  'Mark each seat’s centre through the template, drill the bottom of each slot first, then saw the throat so that at most 1.5 mm is left to trim.',
  top.cutter.offset > 0 ? 'Route with the bushing on the template’s edge; the template’s edge stands off the finished line, which the thin line shows.'
    : 'Route with the bearing on the template’s edge, bearing as large as the cutter: no offset.',
  'Test: one slot in scrap of the same thickness. The lined item must drop in and turn; tight: more clearance in the spec, not more sanding.',
];

/** The page for routing the slots that one template serves. */
export const slotSetUp = (group: TemplateGroup, top: RackTop, context: Context, font: Font): SetUp => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  return {
    operation: `Cut ${slotsNamed(group.slots)}`, machine: 'Drill press, saw, then router with a template',
    picture: drawTemplate(group, top, { context, font, as: 'picture' }), pictureNote: 'The one-slot template, on a sheet of its own in true size. Full line: edge to cut; ticks: waste; level line: edge of the board; small circles: index pins.',
    numbers: numbersOf(group, top, context),
    tables: [
      ...slotGroups(group.slots).map((slots) => ({
        heading: `Half-width of ${slotsNamed(slots)}: allowances in the order applied`, columns: ['', 'what', 'adds', 'comes to'], rows: allowanceRows(slots[0]!, top, say),
      })),
      { heading: 'Stations, from the left end to each slot’s axis', columns: ['slot', 'edge', 'station', 'item'], rows: stationRows(group.slots, say) },
    ],
    steps: steps(top), cautions: routerCautions,
  };
};
