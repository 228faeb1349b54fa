import { degrees } from '../../units/units.js';
import type { Values } from '../jig.js';
import type { DrillGuideSolution } from './solve.js';

/** What `check --json` prints of a drill guide: mm and degrees. */
export const values = ({ angle, tilts, block, sole, hole, budget }: DrillGuideSolution): Values => ({
  boreLength: block.boreLength,
  openingLength: hole.openingLength,
  markShift: hole.markShift,
  bitNeeded: budget.needed,
  tipStop: budget.tipStop,
  resultantAngle: tilts === undefined ? 90 - degrees(angle) : degrees(tilts.resultant),
  sightLine: tilts === undefined ? 0 : degrees(tilts.sightLine),
  ...(tilts === undefined ? {} : { secondTilt: degrees(tilts.secondTilt) }),
  angle: degrees(angle),
  standoff: budget.standoff,
  run: budget.run,
  depth: hole.depth,
  point: budget.point,
  ...(hole.station === undefined ? {} : { entryStation: hole.station }),
  ...(hole.farWall === undefined ? {} : { farWall: hole.farWall }),
  ...(hole.skin === undefined ? {} : { skin: hole.skin }),
  blockLength: block.length,
  blockWidth: block.width,
  blockHeight: block.height,
  shortEnd: block.shortEnd,
  soleLength: block.soleLength,
  ...(sole.depth === 0 ? {} : { grooveDepth: sole.depth, grooveWidth: 2 * sole.mouth }),
});
