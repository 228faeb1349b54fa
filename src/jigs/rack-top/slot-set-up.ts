import { placeItems } from '../../drawing/items.js';
import { itemsBounds } from '../../drawing/item-bounds.js';
import type { Drawing } from '../../drawing/drawing.js';
import type { Font } from '../../drawing/font.js';
import type { Figure, FigureColumn, FigureTable, SetUp, Step } from '../../drawing/set-up.js';
import { boxHeight } from '../../geometry/box.js';
import { scaling } from '../../geometry/transform.js';
import { cautionsAt } from '../../shop/cautions.js';
import { routerPractice } from '../../shop/router.js';
import { angleOf, countOf, diameterOf, joinWords, lengthOf, radiusOf, words, type Words } from '../../units/quantity.js';
import type { Units } from '../../units/units.js';
import type { Context } from '../jig.js';
import { bottomBit } from './bits.js';
import { drawTemplate } from './draw-template.js';
import { standOff, type TemplateGroup } from './pins.js';
import { sheetWords } from './practice.js';
import type { RackTop } from './rack-top.js';
import type { Slot } from './slot.js';
import { numbersOf, slotGroups, slotsNamed } from './words.js';

const linerFigures = ({ liner }: Slot): Words => {
  if (liner.name === 'none') return ['no lining'];
  const name = liner.name === 'own' ? 'lining' : liner.name;
  return liner.squeezed === liner.thickness ? words`${name} ${lengthOf(liner.thickness, 'thin')}`
    : words`${name} ${lengthOf(liner.thickness, 'thin')}, squeezed to ${lengthOf(liner.squeezed, 'thin')}`;
};

const allowanceColumns = (bushed: boolean): readonly FigureColumn[] => [
  { code: 'slot', head: 'slot' }, { code: 'half-item', head: 'half the item' }, { code: 'clearance', head: '+ clearance' }, { code: 'lining', head: '+ lining' },
  { code: 'glue', head: '+ glue' }, { code: 'wood', head: '= in the wood' },
  ...(bushed ? [{ code: 'offset', head: '+ (bushing − cutter) ÷ 2' }, { code: 'template', head: '= template' }] : []),
];

/** Each allowance in the order in which it is applied, left to right: a row for each kind of item, so that one page holds the operation. */
const allowanceTable = (slots: readonly Slot[], { cutter }: RackTop): FigureTable => ({
  code: 'allowances', heading: ['Half-width: allowances in the order applied'], columns: allowanceColumns(cutter.offset > 0),
  rows: slotGroups(slots).map((group): Words[] => {
    const slot = group[0]!;
    return [
      [numbersOf(group.map((s) => s.number))], words`${slot.itemName}: ${lengthOf(slot.item / 2, 'thin')}`, [lengthOf(slot.clearance, 'thin')], linerFigures(slot), [lengthOf(slot.glue, 'thin')],
      words`${lengthOf(slot.radius)}${slot.widthGiven ? ', width given' : ''}`,
      ...(cutter.offset > 0 ? [[lengthOf(cutter.offset, 'thin')], [lengthOf(slot.radius + cutter.offset)]] : []),
    ];
  }),
});

const mouthWords = ({ mouth }: Slot): Words => {
  const parts = [
    ...(mouth.flare > 0 ? [words`flared ${angleOf(mouth.flare)} over ${lengthOf(mouth.run)}`] : []), ...(mouth.ease > 0 ? [words`eased ${radiusOf(mouth.ease)}`] : []),
  ];
  return parts.length === 0 ? ['square'] : joinWords(parts, ', ');
};

/** The stations of so few slots stand among the numbers, those of more in a table of their own. */
const fewSlots = 3;

const cutterFigures = ({ cutter, board }: RackTop): readonly Figure[] => [
  ...(cutter.bushing === undefined
    ? [{ code: 'cutter', label: ['Cutter, flush trim'], value: [diameterOf(cutter.diameter)] }]
    : [
      { code: 'cutter', label: ['Cutter, guide bushing'], value: words`${diameterOf(cutter.diameter)}, ${diameterOf(cutter.bushing)}` },
      { code: 'offset', label: ['Template’s edge, into the wood'], value: [lengthOf(cutter.offset)] },
    ]),
  { code: 'edges', label: ['Cutting edges, for one pass at least'], value: [lengthOf(board.thickness)] },
];

const figures = (group: TemplateGroup, top: RackTop, context: Context): readonly Figure[] => {
  const slot = group.slots[0]!;
  const bit = bottomBit(slot, context.shop, context.units);
  const { pins } = top;
  return [
    { code: 'item', label: ['Item, measured'], value: words`${slot.unnamed ? '' : `${slot.itemName}, `}${diameterOf(slot.item)}` },
    { code: 'width', label: ['Slot in the wood'], value: words`${lengthOf(2 * slot.radius)} wide` }, { code: 'seat', label: ['Seat'], value: [radiusOf(slot.radius)] },
    { code: 'depth', label: ['Edge to the seat’s axis'], value: [lengthOf(slot.depth)] }, { code: 'mouth', label: ['Mouth'], value: mouthWords(slot) },
    { code: 'bottom-bit', label: ['Drill the bottom first'], value: words`${diameterOf(bit)}; leaves ${lengthOf(slot.radius - bit / 2)} all round` },
    ...cutterFigures(top),
    { code: 'pins', label: ['Index pins'], value: words`${diameterOf(pins.diameter)}, ${lengthOf(group.spacing)} apart` },
    { code: 'stand-off', label: ['Pitch stick stands off the edge by'], value: [lengthOf(standOff(top))] },
    ...(top.land === undefined ? [] : [{ code: 'land', label: ['Narrowest land'], value: [lengthOf(top.land.width)] }]),
    ...(group.slots.length > fewSlots ? [{ code: 'number', label: ['Make'], value: words`${countOf(group.slots.length)}: ${slotsNamed(group.slots)}` }]
      : group.slots.map((s) => ({ code: `station-${s.number}`, label: [`Station of slot ${s.number}`], value: words`${lengthOf(s.at)} from the left end${s.edge === 'rear' ? ', rear edge' : ''}` }))),
  ];
};

/** Stations side by side in one table, three slots in a row. */
const stationTable = (slots: readonly Slot[]): FigureTable => {
  const edges = slots.some((s) => s.edge === 'rear');
  const cells = slots.map((s): Words[] => [[`${s.number}${edges ? `, ${s.edge}` : ''}`], [lengthOf(s.at)]]);
  const across = 3;
  const down = Math.ceil(cells.length / across);
  return {
    code: 'stations', heading: [`Stations, from the left end to each slot’s axis${edges ? '' : ', front edge'}`],
    columns: Array.from({ length: across }, (_, i) => [{ code: `slot-${i + 1}`, head: 'slot' }, { code: `station-${i + 1}`, head: 'station' }]).flat(),
    rows: Array.from({ length: down }, (_, row) => cells.slice(row * across, (row + 1) * across).flat()),
  };
};

const steps = (top: RackTop, units: Units): readonly Step[] => {
  const { offLine } = routerPractice(units);
  return [
    { code: 'template', words: words`Glue the template on ${sheetWords(units)}. Drill the pin holes and the bottom of the opening, saw to ${lengthOf(offLine, 'short')} from the full line, file to half the line.` },
    {
      code: 'stick',
      words: words`Clamp the pitch stick before the edge, spacers of ${lengthOf(standOff(top))} between, left ends flush, tops level: the cutter runs out into that gap, never into the stick. Set stations from the left end only: errors then do not add up.`,
    },
    { code: 'waste', words: words`Mark each seat’s centre through the template, drill the bottoms first, saw the throats to ${lengthOf(offLine, 'short')} from the line.` },
    {
      code: 'rout', words: [top.cutter.offset > 0 ? 'Template above, the bushing on its edge (full line); the thin line is the finished wood. Start in the gap before the stick.'
        : 'Bearing at the tip: template below the board; on the shank: above. No offset. Start in the gap before the stick.'],
    },
    { code: 'test', words: ['Test in scrap as thick: the lined item must drop in and turn. Tight: more clearance in the spec, no sanding.'] },
  ];
};

/** Greatest height of the picture, mm: about that of the numbers beside it, so that the operation fits one page. */
const pictureHeight = 42;

const picture = (group: TemplateGroup, top: RackTop, context: Context, font: Font): Drawing => {
  const drawing = drawTemplate(group, top, { context, font, as: 'picture' });
  const scale = Math.min(0.6, pictureHeight / boxHeight(itemsBounds(drawing.items, font)));
  return { ...drawing, items: placeItems(drawing.items, scaling(scale, scale), 0) };
};

/** The page for routing the slots that one template serves. */
export const slotSetUp = (group: TemplateGroup, top: RackTop, context: Context, font: Font): SetUp => ({
  code: 'cut-slots', parts: group.slots.map((s) => `slot-${s.number}`),
  operation: `Cut ${slotsNamed(group.slots)}`, machine: 'Drill press, saw, then a hand-held router with a template',
  picture: picture(group, top, context, font), pictureIs: 'not-to-scale',
  pictureNote: ['The one-slot template. Ticks: waste; level lines: the board’s edge and the stick’s; small circles: index pins.'],
  numbers: figures(group, top, context),
  tables: [allowanceTable(group.slots, top), ...(group.slots.length > fewSlots ? [stationTable(group.slots)] : [])],
  steps: steps(top, context.units), cautions: cautionsAt('hand-router', context.units),
});
