import type { ZodType } from 'zod';
import { nearest } from '../errors/nearest.js';
import { angleForms, parseAngle } from '../units/parse-angle.js';
import type { Refusal } from '../units/refusal.js';
import { degrees } from '../units/units.js';
import { field, shown, wrongSort, type Read } from './field.js';
import type { AngleNotes } from './fields.js';
import type { FieldIssue } from './issue.js';

/** Forgives the last digit of π/180; radians. */
const slack = 1e-12;

/** The schema of an angle within limits: radians out. */
export function angleField({ about, min = 0, max = Math.PI / 2, beyondSquare, words = {} }: AngleNotes): ZodType<number> {
  const choices = Object.keys(words);
  return field((input) => readAngle(input, { min, max, beyondSquare, words }), { description: about, field: 'angle', min, max, ...(choices.length === 0 ? {} : { choices }) });
}

interface Limits {
  readonly min: number;
  readonly max: number;
  readonly beyondSquare: string | undefined;
  readonly words: Readonly<Record<string, number>>;
}

/** A text that is no angle where a word may stand for one: the words are offered too, and the nearest. */
const orWord = (input: string | number, { allowed = angleForms, ...rest }: Refusal, words: readonly string[]): Refusal => {
  if (words.length === 0) return { allowed, ...rest };
  const near = nearest(String(input), words);
  return { ...rest, allowed: `${words.join(', ')}; or ${allowed}`, ...(near === undefined ? {} : { nearest: near }) };
};

function readAngle(input: unknown, { min, max, beyondSquare, words }: Limits): Read<number> {
  if (typeof input !== 'string' && typeof input !== 'number') return wrongSort('not-an-angle', input, 'an angle', angleForms);
  if (Object.hasOwn(words, input)) return { value: words[input]! };
  const reading = parseAngle(input);
  if ('refusal' in reading) return { issue: { code: 'not-an-angle', got: shown(input), ...orWord(input, reading.refusal, Object.keys(words)) } };
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
