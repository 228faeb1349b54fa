import { degrees } from '../../units/units.js';
import type { Value, Values } from '../jig.js';
import type { SaddleCopeSolution, SaddleEnd } from './solve.js';

const endValues = (end: SaddleEnd): Values => ({
  throat: end.throat,
  longPoint: end.longPoint,
  wing: end.wing,
  horn: end.horn,
  saddleDepth: end.saddleDepth,
  wingAngle: degrees(end.wingAngle),
  sawAngle: degrees(end.sawAngle),
  formRadius: end.formRadius,
  ordinates: end.ordinates,
  toeBeyondHorn: end.firstCut.toeBeyondHorn,
  entryStation: end.entry.station,
  ...(end.pin === undefined ? {} : {
    pinDiameter: end.pin.diameter, pinIntoBranch: end.pin.intoBranch, pinIntoMain: end.pin.intoMain, pinWall: end.pin.wall,
  }),
});

/** A number where the branch has one cut end; a record { near, far } where it has two. */
const byEnd = (near: Values, far: Values | undefined): Values => far === undefined ? near : Object.fromEntries(
  [...new Set([...Object.keys(near), ...Object.keys(far)])].map((key): [string, Value] => [key, {
    ...(near[key] === undefined ? {} : { near: near[key] }), ...(far[key] === undefined ? {} : { far: far[key] }),
  }]));

/** What `check --json` prints of a saddle cope: mm and degrees. */
export const values = (s: SaddleCopeSolution): Values => ({
  wrapLength: s.wrapLength,
  ...byEnd(endValues(s.near), s.far && endValues(s.far)),
  ...(s.centres === undefined ? {} : { centres: s.centres }),
  ...s.lengths,
});
