import type { Item } from '../../drawing/drawing.js';
import { openCross } from '../../drawing/hole-cross.js';
import { shape } from '../../drawing/items.js';
import type { Recess } from './recess.js';

/**
 * A recess seen from above: the template's opening full and the finished edge thin, or the finished edge full where they are one; what the cutter leaves; its middle.
 * One underneath is dashed, and its template's edge left to the patch of the underside.
 */
export const drawRecess = (recess: Recess): Item[] => [
  shape(recess.face === 'under' ? 'hidden' : recess.template === undefined ? 'edge' : 'reference', recess.outline, `recess-${recess.number}`),
  ...(recess.reached === undefined ? [] : [shape('hidden', recess.reached, `recess-${recess.number}-reached`)]),
  ...(recess.template === undefined || recess.face === 'under' ? [] : [shape('edge', recess.template, `template-recess-${recess.number}`)]),
  ...openCross(recess.centre, { reach: 4, line: 'centre' }),
];
