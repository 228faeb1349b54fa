import type { Drawing, NumberRow, SetUp } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import { placeItems } from '../../drawing/items.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import { boxHeight } from '../../geometry/box.js';
import { scaling } from '../../geometry/transform.js';
import { angleLabel, lengthLabel } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import type { Context } from '../jig.js';
import { bottomBit } from './bits.js';
import { routerCautions } from './cautions.js';
import { drawTemplate } from './draw-template.js';
import type { TemplateGroup } from './pins.js';
import { practice, sayThin } from './practice.js';
import type { RackTop } from './rack-top.js';
import type { Slot } from './slot.js';
import { linerWords, numbersOf, slotGroups, slotsNamed } from './words.js';

type Table = SetUp['tables'][number];

/** Each allowance in the order in which it is applied, left to right: a row for each kind of item, so that one page holds the operation. */
const allowanceTable = (slots: readonly Slot[], { cutter }: RackTop, units: Units): Table => {
  const [say, both] = [sayThin(units), (mm: number): string => lengthLabel(mm, units)];
  const bushed = cutter.offset > 0;
  return {
    heading: 'Half-width: allowances in the order applied',
    columns: ['slot', 'half the item', '+ clearance', '+ lining', '+ glue', '= in the wood', ...(bushed ? ['+ (bushing − cutter) ÷ 2', '= template'] : [])],
    rows: slotGroups(slots).map((group) => {
      const slot = group[0]!;
      const { item, clearance, glue, radius, widthGiven } = slot;
      return [
        numbersOf(group.map((s) => s.number)), `${slot.itemName}: ${say(item / 2)}`, say(clearance), linerWords(slot, say), say(glue),
        `${both(radius)}${widthGiven ? ', width given' : ''}`, ...(bushed ? [say(cutter.offset), both(radius + cutter.offset)] : []),
      ];
    }),
  };
};

const mouthWords = ({ mouth }: Slot, say: (mm: number) => string): string => [
  ...(mouth.flare > 0 ? [`flared ${angleLabel(mouth.flare)} over ${say(mouth.run)}`] : []), ...(mouth.ease > 0 ? [`eased R ${say(mouth.ease)}`] : []),
].join(', ') || 'square';

/** The stations of so few slots stand among the numbers, those of more in a table of their own. */
const fewSlots = 3;

const numberRows = (group: TemplateGroup, top: RackTop, context: Context): NumberRow[] => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  const slot = group.slots[0]!;
  const bit = bottomBit(slot, context.shop, context.units);
  const { cutter, pins } = top;
  return [
    { label: 'Item, measured', value: `${slot.itemName}, Ø ${say(slot.item)}` },
    { label: 'Slot in the wood', value: `${say(2 * slot.radius)} wide` }, { label: 'Seat', value: `R ${say(slot.radius)}` },
    { label: 'Edge to the seat’s axis', value: say(slot.depth) }, { label: 'Mouth', value: mouthWords(slot, say) },
    { label: 'Drill the bottom first', value: `Ø ${say(bit)}; leaves ${say(slot.radius - bit / 2)} all round` },
    ...(cutter.bushing === undefined ? [{ label: 'Cutter', value: `Ø ${say(cutter.diameter)}, flush trim` }] : [
      { label: 'Cutter, guide bushing', value: `Ø ${say(cutter.diameter)}, Ø ${say(cutter.bushing)}` }, { label: 'Template’s edge, into the wood', value: say(cutter.offset) },
    ]),
    { label: 'Index pins', value: `Ø ${say(pins.diameter)}, ${say(group.spacing)} apart` },
    ...(top.land === undefined ? [] : [{ label: 'Narrowest land', value: say(top.land.width) }]),
    ...(group.slots.length > fewSlots ? [{ label: 'Make', value: `${group.slots.length}: ${slotsNamed(group.slots)}` }]
      : group.slots.map((s) => ({ label: `Station of slot ${s.number}`, value: `${say(s.at)} from the left end${s.edge === 'rear' ? ', rear edge' : ''}` }))),
  ];
};

/** Stations side by side in one table, three slots in a row. */
const stationTable = (slots: readonly Slot[], say: (mm: number) => string): Table => {
  const edges = slots.some((s) => s.edge === 'rear');
  const cells = slots.map((s) => [`${s.number}${edges ? `, ${s.edge}` : ''}`, say(s.at)]);
  const across = 3;
  const down = Math.ceil(cells.length / across);
  return {
    heading: `Stations, from the left end to each slot’s axis${edges ? '' : ', front edge'}`, columns: Array.from({ length: across }, () => ['slot', 'station']).flat(),
    rows: Array.from({ length: down }, (_, row) => cells.slice(row * across, (row + 1) * across).flat()),
  };
};

const steps = (top: RackTop, units: Units): string[] => [
  `Glue the template on ${practice(units).sheet} sheet. Drill the pin holes and the bottom of the opening, saw to ${practice(units).offLine} from the full line, file until half the line is gone.`,
  'Clamp the pitch stick along the edge, left ends flush, tops level. Set stations from the left end only, never from slot to slot: errors then do not add up.',
  `Mark each seat’s centre through the template, drill the bottoms first, saw the throats to ${practice(units).offLine}.`,
  top.cutter.offset > 0 ? 'Route with the bushing on the template’s edge (full line); the thin line is the finished wood.'
    : 'Route with the bearing on the template’s edge, bearing as large as the cutter: no offset.',
  'Test in scrap as thick: the lined item must drop in and turn. Tight: more clearance in the spec, no sanding.',
];

/** Greatest height of the picture, mm: about that of the numbers beside it, so that the operation fits one page. */
const pictureHeight = 50;

const picture = (group: TemplateGroup, top: RackTop, context: Context, font: Font): Drawing => {
  const drawing = drawTemplate(group, top, { context, font, as: 'picture' });
  const scale = Math.min(0.6, pictureHeight / boxHeight(itemsBounds(drawing.items, font)));
  return { ...drawing, items: placeItems(drawing.items, scaling(scale, scale), 0) };
};

/** The page for routing the slots that one template serves. */
export const slotSetUp = (group: TemplateGroup, top: RackTop, context: Context, font: Font): SetUp => {
  const say = (mm: number): string => lengthLabel(mm, context.units);
  return {
    operation: `Cut ${slotsNamed(group.slots)}`, machine: 'Drill press, saw, then router with a template',
    picture: picture(group, top, context, font),
    pictureNote: 'Not to scale: the one-slot template. Ticks: waste; level line: the board’s edge; small circles: index pins.',
    numbers: numberRows(group, top, context),
    tables: [allowanceTable(group.slots, top, context.units), ...(group.slots.length > fewSlots ? [stationTable(group.slots, say)] : [])],
    steps: steps(top, context.units), cautions: routerCautions(context.units),
  };
};
