import { lengthLabel } from '../../units/format.js';
import type { Units } from '../../units/units.js';
import type { RackTop } from './rack-top.js';

/** What the two lines mean where a template's edge and the finished one run side by side: the same on every pattern of the jig. */
export const edgeWords = ({ cutter: { offset } }: RackTop, units: Units): readonly string[] => offset > 0
  ? ['full line: edge of the template', `thin line: finished wood, ${lengthLabel(offset, units)} off`]
  : ['full line: edge of the template', 'and of the finished wood'];

/** The guide bushing and its cutter, or the flush-trim bit. */
export const cutterWords = ({ cutter: { diameter, bushing, offset } }: RackTop, units: Units): readonly string[] => offset > 0
  ? [`bushing Ø ${lengthLabel(bushing ?? 0, units)}`, `cutter Ø ${lengthLabel(diameter, units)}`] : [`flush-trim bit Ø ${lengthLabel(diameter, units)}`];

/** The notes on the leaders to the two edges. */
export const edgeNotes = { template: 'edge of the template', finished: 'finished wood' } as const;
