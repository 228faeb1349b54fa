import type { FigureTable, SetUp } from '../../drawing/set-up.js';
import { cautionsAt } from '../../shop/cautions.js';
import { diameterOf, lengthOf, words, type Words } from '../../units/quantity.js';
import { drillPicture } from './drill-picture.js';
import type { SetUpSource } from './set-ups.js';
import type { VCradleSolution } from './solve.js';

/** Heights by round, to set a stop or a fence by. */
const heights = ({ held, block, groove }: VCradleSolution): FigureTable => ({
  code: 'heights', heading: ['Heights above the table with the block flat on it'],
  columns: [
    { code: 'round', head: 'Round' }, { code: 'diameter', head: 'Measured' }, { code: 'axis', head: 'Axis' }, { code: 'top', head: 'Top' }, { code: 'proud', head: 'Proud' }, { code: 'contact', head: 'Contact off middle' },
  ],
  rows: held.map((h): Words[] => [
    [h.round.name], [diameterOf(h.round.diameter)],
    ...[block.height - groove.apexDepth + h.axisHeight, block.height + h.proud, h.proud, h.contactHalfWidth].map((mm): Words => [lengthOf(mm)]),
  ]),
});

/** Holding and drilling in the cradle. */
export const drillSetUp = ({ solution: s, say, units }: SetUpSource): SetUp => ({
  code: 'drill', operation: 'Hold and drill in the cradle',
  machine: 'Drill press',
  picture: drillPicture(s, say), pictureIs: 'not-to-scale',
  pictureNote: [`${s.held[0]!.round.name} in the groove, seen from the end.`],
  numbers: [
    { code: 'bit-from-side', label: ['Fence at the block’s side A: from the bit’s centre'], value: [lengthOf(s.block.width / 2)] },
    { code: 'floor', label: ['Wood under the groove'], value: [lengthOf(s.block.floor)] },
    { code: 'bearing', label: ['Groove that bears'], value: [lengthOf(s.block.bearing)] },
    ...(s.stop === undefined ? [] : [{ code: 'stop', label: ['Stop from the left end'], value: [lengthOf(s.stop)] }]),
    { code: 'reference', label: ['Reference line'], value: ['ruled along the round, or its square end'] },
  ],
  tables: [heights(s)],
  steps: [
    {
      code: 'fence',
      words: words`Clamp a fence to the press’s table, ${lengthOf(s.block.width / 2)} from the bit’s centre, and lay the block’s side A against it. A pointed rod in the chuck must meet the middle of the groove at one end of the block and, the block slid along the fence, at the other. Move the fence until it does; then clamp the block too.`,
    },
    { code: 'lay', words: ['Lay the round in; turn it to its mark. References in order of trust: square ends left on, a pin in the first hole, a clamped-on flag, an end disc, a ruled line.'] },
    { code: 'hold', words: ['Clamp it down at the two marked places, not over the hole. Axis height depends on the diameter: measure each round.'] },
    { code: 'test', words: ['Test: drill a scrap right through; turn it half round and enter the bit from below. Entry and exit agree: the bit stands over the middle. They miss: shift the fence by half as much.'] },
    { code: 'backing', words: ['Put backing under the exit, or a strip laid in the groove; use a Forstner bit for an angled entry.'] },
  ],
  cautions: cautionsAt('drill-a-round', units),
});
