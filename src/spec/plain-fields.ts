import type { ZodType } from 'zod';
import { nearest } from '../errors/nearest.js';
import { firstUnseen, visible } from '../errors/quote.js';
import { field, shown, wrongSort, type Read } from './field.js';
import type { FieldNotes } from './fields.js';

interface Limits {
  readonly min?: number;
  readonly max?: number;
}

/** The schema of a bare number within limits; default ±1e6. */
export const numberField = ({ about, min = -1e6, max = 1e6 }: FieldNotes & Limits): ZodType<number> =>
  field((input) => readNumber(input, { min, max, sort: 'a number' }), { description: about, field: 'number', min, max });

/** The schema of a whole number within limits; default 1 … 1000. */
export const countField = ({ about, min = 1, max = 1000 }: FieldNotes & Limits): ZodType<number> =>
  field((input) => readNumber(input, { min, max, sort: 'a whole number' }), { description: about, field: 'count', min, max });

function readNumber(input: unknown, limits: { readonly min: number; readonly max: number; readonly sort: string }): Read<number> {
  const { min, max, sort } = limits;
  const allowed = `${sort} from ${min} to ${max}`;
  if (typeof input !== 'number') return wrongSort('not-a-number', input, sort, allowed);
  const whole = sort === 'a number' || Number.isInteger(input);
  if (!Number.isFinite(input) || !whole) return { issue: { code: 'not-a-number', message: `is not ${sort}`, got: shown(input), allowed } };
  if (input >= min && input <= max) return { value: input };
  const small = input < min;
  const message = small ? `is too small: at least ${min}` : `is too large: at most ${max}`;
  return { issue: { code: small ? 'too-small' : 'too-large', message, got: shown(input), allowed, nearest: String(small ? min : max) } };
}

/** The schema of yes or no. */
export const flagField = ({ about }: FieldNotes): ZodType<boolean> =>
  field(
    (input) => (typeof input === 'boolean' ? { value: input } : wrongSort('not-a-flag', input, 'true or false')),
    { description: about, field: 'flag' },
  );

/** The schema of one word out of several; the nearest is offered for any other. */
export const choiceField = <const T extends string>(choices: readonly T[], { about }: FieldNotes): ZodType<T> =>
  field((input) => readChoice(input, choices), { description: about, field: 'choice', choices });

function readChoice<T extends string>(input: unknown, choices: readonly T[]): Read<T> {
  const allowed = choices.join(', ');
  const found = choices.find((choice) => choice === input);
  if (found !== undefined) return { value: found };
  if (typeof input !== 'string') return wrongSort('unknown-choice', input, 'one of the choices', allowed);
  const near = nearest(input, choices);
  return { issue: { code: 'unknown-choice', message: 'is not one of the choices', got: shown(input), allowed, ...(near ? { nearest: near } : {}) } };
}

/** The schema of a line of text; default at most 200 letters. */
export const textField = ({ about, max = 200 }: FieldNotes & { readonly max?: number }): ZodType<string> =>
  field((input) => readText(input, max), { description: about, field: 'text', max });

/**
 * One line of text with at least one sign to see. A number is taken as its digits (`revision: 3`). Nothing is stripped: control
 * signs, line ends and marks that turn the reading direction are refused, since they would change what a sheet says.
 */
export function readText(input: unknown, max: number): Read<string> {
  const allowed = `one line of text, at most ${max} letters`;
  if (typeof input === 'number') return { value: String(input) };
  if (typeof input !== 'string') return wrongSort('not-text', input, 'text', allowed);
  const letters = input.length > 4 * max ? input.length : [...input].length;
  const unseen = firstUnseen(input);
  if (letters > max) return { issue: { code: 'text-too-long', message: `has ${letters} letters, more than ${max}`, got: shown(input), allowed } };
  if (unseen !== undefined) {
    return { issue: { code: 'unseen-sign', message: `holds ${visible(unseen)}, which does not show on paper`, got: shown(input), allowed } };
  }
  return input.trim() === '' ? { issue: { code: 'not-text', message: 'is empty', got: shown(input), allowed } } : { value: input };
}
