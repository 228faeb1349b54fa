import type { JigKind } from '../jig.js';
import { check } from './check.js';
import { draw } from './draw.js';
import type { RackTop } from './rack-top.js';
import { rackTopSchema, type RackTopFields } from './schema.js';
import { solve } from './solve.js';
import { starter } from './starter.js';
import { values } from './values.js';

/** A board with a row of slots that things hang in, holes for its legs, and recesses. */
export const rackTop: JigKind<RackTopFields, RackTop> = {
  kind: 'rack-top',
  summary: 'board with cradle slots, canted leg holes and recesses: whole top, one-slot template, pitch stick',
  schema: rackTopSchema, starter, solve, check, values, draw,
};
