import type { Finding } from '../../errors/finding.js';
import type { Context } from '../jig.js';
import { findingsFrom } from '../kit/report.js';
import { checkBit } from './check-bit.js';
import { checkBlock } from './check-block.js';
import { checkHole } from './check-hole.js';
import type { DrillGuideSolution } from './solve.js';

/** What a maker should know before making and using the guide. Limits are common practice. */
export const check = (s: DrillGuideSolution, context: Context): readonly Finding[] =>
  findingsFrom([...checkHole(s, context), ...checkBit(s, context), ...checkBlock(s, context)], context);
