import type { Finding } from '../../errors/finding.js';
import type { Context } from '../jig.js';
import { findingsFrom } from '../kit/report.js';
import { checkBlock } from './check-block.js';
import { checkCarrier } from './check-carrier.js';
import { checkRounds } from './check-rounds.js';
import { checkSaw } from './check-saw.js';
import type { VCradleSolution } from './solve.js';

/** All findings of a V-cradle; a `stop` is geometry or hands, a `warn` shop practice or the shop's own reach. */
export const check = (s: VCradleSolution, context: Context): readonly Finding[] => findingsFrom(
  [...checkRounds(s, context), ...checkBlock(s, context), ...checkSaw(s, context), ...checkCarrier(s, context)], context);
