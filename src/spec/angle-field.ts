import type { ZodType } from 'zod';
import { angleForms, parseAngle } from '../units/parse-angle.js';
import { degrees } from '../units/units.js';
import { field, shown, wrongSort, type Read } from './field.js';
import type { AngleNotes } from './fields.js';
import type { FieldIssue } from './issue.js';

/** Forgives the last digit of π/180; radians. */
const slack = 1e-12;

/** The schema of an angle within limits: radians out. */
export function angleField({ about, min = 0, max = Math.PI / 2, beyondSquare }: AngleNotes): ZodType<number> {
  return field((input) => readAngle(input, { min, max, beyondSquare }), { description: about, field: 'angle', min, max });
}

interface Limits {
  readonly min: number;
  readonly max: number;
  readonly beyondSquare: string | undefined;
}

function readAngle(input: unknown, { min, max, beyondSquare }: Limits): Read<number> {
  if (typeof input !== 'string' && typeof input !== 'number') return wrongSort('not-an-angle', input, 'an angle', angleForms);
  const reading = parseAngle(input);
  if ('refusal' in reading) return { issue: { code: 'not-an-angle', got: shown(input), ...reading.refusal } };
  const angle = reading.value;
  if (angle >= min - slack && angle <= max + slack) return { value: angle };
  const supplement = Math.PI - angle;
  if (beyondSquare !== undefined && angle > max && supplement >= min) return { issue: supplementIssue(input, angle, beyondSquare) };
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

/** Two lines make two angles: the one past 90° is answered with the other. */
const supplementIssue = (input: unknown, angle: number, beyondSquare: string): FieldIssue => ({
  code: 'past-square',
  message: `is the obtuse one of the two angles: write its supplement, ${degreesShown(Math.PI - angle)}. ${beyondSquare}`,
  got: `${shown(input)}, which is ${degreesShown(angle)}`,
  nearest: degreesShown(Math.PI - angle),
});

/** Degrees to four digits, without the noise of radians. */
export const degreesShown = (angle: number): string => `${Number(degrees(angle).toPrecision(4))}°`;
