import type { JigKind } from '../jig.js';
import { check } from './check.js';
import { draw } from './draw.js';
import { schema, type SaddleCopeFields } from './schema.js';
import { solve, type SaddleCopeSolution } from './solve.js';
import { starter } from './starter.js';
import { values } from './values.js';

/** The end of one round hollowed to sit on another. */
export const saddleCope: JigKind<SaddleCopeFields, SaddleCopeSolution> = {
  kind: 'saddle-cope',
  summary: 'wrap-round template for the end of a round that sits on another round',
  schema, starter, solve, check, values, draw,
};
