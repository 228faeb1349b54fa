import type { SetUp } from '../../drawing/drawing.js';
import { drillCautions } from './cautions.js';
import { drillPicture } from './drill-picture.js';
import type { SetUpSource } from './set-ups.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

/** Heights by round, to set a stop or a fence by. */
const heights = (s: VCradleSolution, say: Words): SetUp['tables'][number] => ({
  heading: 'Heights above the table with the block flat on it',
  columns: ['Round', 'Measured', 'Axis', 'Top', 'Proud', 'Contact off middle'],
  rows: s.held.map((h) => {
    const lift = s.block.height - s.groove.apexDepth;
    return [h.round.name, ...[h.round.diameter, lift + h.axisHeight, s.block.height + h.proud, h.proud, h.contactHalfWidth].map(say.length)];
  }),
});

/** Holding and drilling in the cradle. */
export const drillSetUp = ({ solution: s, say }: SetUpSource): SetUp => ({
  operation: 'Hold and drill in the cradle',
  machine: 'Drill press',
  picture: drillPicture(s, say),
  pictureNote: `${s.held[0]!.round.name} in the groove, seen from the end; not to scale.`,
  numbers: [
    { label: 'Bit from the block’s side A', value: say.length(s.block.width / 2) },
    { label: 'Wood under the groove', value: say.length(s.block.floor) },
    { label: 'Groove that bears', value: say.length(s.block.bearing) },
    ...(s.stop === undefined ? [] : [{ label: 'Stop from the left end', value: say.length(s.stop) }]),
    { label: 'Reference line', value: 'ruled along the round, or its square end' },
  ],
  tables: [heights(s, say)],
  steps: [
    'Bring a pointed rod in the chuck to the middle of the groove at both ends; clamp the block so that it touches the middle at both.',
    'Lay the round in; turn it to its mark. References in order of trust: square ends left on, a pin in the first hole, a clamped-on flag, an end disc, a ruled line.',
    'Clamp it down at the two marked places, not over the hole. Axis height depends on the diameter: measure each round.',
    'Test: drill a scrap right through; turn it half round and enter the bit from below. Entry and exit agree: the bit stands over the middle. They miss by 1: shift the block 0.5.',
    'Put backing under the exit, or a strip laid in the groove; use a Forstner bit for an angled entry.',
  ],
  cautions: drillCautions,
});
