import type { Finding } from '../../errors/finding.js';
import type { Context } from '../jig.js';
import { checkBlock } from './check-block.js';
import { checkCarrier } from './check-carrier.js';
import { checkRounds } from './check-rounds.js';
import { checkSaw } from './check-saw.js';
import type { VCradleSolution } from './solve.js';

/** All findings of a V-cradle; a `stop` is geometry or hands, a `warn` shop practice or the shop's own reach. */
export const check = (s: VCradleSolution, { name, units, shop }: Context): readonly Finding[] => [
  ...checkRounds(s, units), ...checkBlock(s, units), ...checkSaw(s, shop, units), ...checkCarrier(s, shop, units),
].map((found) => ({ jig: name, ...found }));
