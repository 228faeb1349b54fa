import type { SetUp } from '../../drawing/drawing.js';
import { soundPart, usualFloor } from './limits.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

/** Every allowance, in the order in which it was applied. */
export const allowances = (s: VCradleSolution, say: Words): SetUp['tables'][number] => {
  const { groove, block, held } = s;
  const thick = held[0]!;
  const thin = held.at(-1)!;
  const rows: string[][] = [
    ['measured diameters, as they are', held.map((h) => say.length(h.round.diameter)).join(', ')],
    [`height of the V for contacts at most ${Math.round(100 * soundPart)} % up the flanks (${thick.round.name})`, say.length(thick.contactHeight / soundPart)],
    ['less what the flat cuts off the V’s point', say.length(groove.flatHeight)],
    ['depth of cut taken', say.length(groove.depth)],
    [`air over the flat under ${thin.round.name}`, say.length(thin.gap)],
    [`floor under the groove (usual ${say.length(usualFloor)})`, say.length(block.floor)],
    ['wall beside the groove, each side', say.length(block.wall)],
  ];
  return { heading: 'Allowances, in the order applied', columns: ['No.', 'Allowance', 'Figure'], rows: rows.map((row, i) => [String(i + 1), ...row]) };
};
