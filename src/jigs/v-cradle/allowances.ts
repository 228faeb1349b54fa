import { soundPart } from './limits.js';
import type { VCradleSolution } from './solve.js';
import type { Words } from './words.js';

/** Every allowance, in the order in which it was applied, in one paragraph. */
export const allowances = (s: VCradleSolution, say: Words): string => {
  const { groove, block, held } = s;
  const thick = held[0]!;
  const thin = held.at(-1)!;
  const steps = [
    `${say.round(thick.round)} as measured`,
    `V ${say.length(thick.contactHeight / soundPart)} high, so that it touches ${Math.round(100 * soundPart)} % up the flanks`,
    `less ${say.length(groove.flatHeight)} for the flat`,
    `cut ${say.length(groove.depth)}`,
    `air under ${thin.round.name} ${say.length(thin.gap)}`,
    `floor ${say.length(block.floor)}`,
    `walls ${say.length(block.wall)}`,
  ];
  return `Allowances, in the order applied: ${steps.map((step, i) => `${i + 1}. ${step}`).join('; ')}. Nothing else is allowed for.`;
};
