import type { JigKind } from '../jig.js';
import { check } from './check.js';
import { draw } from './draw.js';
import { schema, type VCradleFields } from './schema.js';
import { solve, type VCradleSolution } from './solve.js';
import { starter } from './starter.js';
import { values } from './values.js';

/** A V-block for a range of rounds, and a carrier for cuts steeper than the saw turns. */
export const vCradle: JigKind<VCradleFields, VCradleSolution> = {
  kind: 'v-cradle',
  summary: 'V-block that holds a range of rounds for drilling and sawing; carrier for steep cuts',
  schema, starter, solve, check, values, draw,
};
