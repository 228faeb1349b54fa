import type { Item } from '../../drawing/drawing.js';
import { openCross } from '../../drawing/hole-cross.js';
import { shape } from '../../drawing/items.js';
import type { Recess } from './recess.js';

/** A recess seen from above: finished edge (dashed where it is underneath), what the cutter leaves, the template's opening, its middle. */
export const drawRecess = (recess: Recess): Item[] => [
  shape(recess.face === 'top' ? 'cut' : 'hidden', recess.outline, `recess-${recess.number}`),
  ...(recess.reached === undefined ? [] : [shape('hidden', recess.reached, `recess-${recess.number}-reached`)]),
  ...(recess.template === undefined ? [] : [shape('saw', recess.template, `template-recess-${recess.number}`)]),
  ...openCross(recess.centre, { reach: 4, line: 'centre' }),
];
