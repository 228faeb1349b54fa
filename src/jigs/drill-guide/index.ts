import type { JigKind } from '../jig.js';
import { check } from './check.js';
import { draw } from './draw.js';
import { schema, type DrillGuideFields } from './schema.js';
import { solve, type DrillGuideSolution } from './solve.js';
import { starter } from './starter.js';
import { values } from './values.js';

/** A block that guides a bit into flat work or a round at an angle. */
export const drillGuide: JigKind<DrillGuideFields, DrillGuideSolution> = {
  kind: 'drill-guide',
  summary: 'guide block for drilling flat work or a round at an angle: bored square, sole sawn to the angle',
  schema, starter, solve, check, values, draw,
};
