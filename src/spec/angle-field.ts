import type { ZodType } from 'zod';
import { angleForms, parseAngle } from '../units/parse-angle.js';
import { degrees } from '../units/units.js';
import { field, shown, wrongSort, type Read } from './field.js';
import type { AngleNotes } from './fields.js';

/** Forgives the last digit of π/180; radians. */
const slack = 1e-12;

/** The schema of an angle within limits: radians out. */
export function angleField({ about, min = 0, max = Math.PI / 2 }: AngleNotes): ZodType<number> {
  return field((input) => readAngle(input, { min, max }), { description: about, field: 'angle', min, max });
}

function readAngle(input: unknown, { min, max }: { readonly min: number; readonly max: number }): Read<number> {
  if (typeof input !== 'string' && typeof input !== 'number') return wrongSort('not-an-angle', input, 'an angle', angleForms);
  const reading = parseAngle(input);
  if ('refusal' in reading) return { issue: { code: 'not-an-angle', got: shown(input), ...reading.refusal } };
  const angle = reading.value;
  if (angle >= min - slack && angle <= max + slack) return { value: angle };
  const limit = degreesShown(angle < min ? min : max);
  return {
    issue: {
      code: angle < min ? 'too-small' : 'too-large',
      message: `is too ${angle < min ? 'small: at least' : 'large: at most'} ${limit}`,
      got: `${shown(input)}, which is ${degreesShown(angle)}`,
      allowed: `${degreesShown(min)} to ${degreesShown(max)}`,
      nearest: limit,
    },
  };
}

/** Degrees to four digits, without the noise of radians. */
export const degreesShown = (angle: number): string => `${Number(degrees(angle).toPrecision(4))}°`;
