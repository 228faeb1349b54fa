import type { ZodType } from 'zod';
import { fractionInches, millimetres } from '../units/format.js';
import { lengthForms, parseLength } from '../units/parse-length.js';
import type { Units } from '../units/units.js';
import { field, shown, wrongSort, type Read } from './field.js';
import type { LengthNotes } from './fields.js';

/** Forgives what arithmetic in the limits themselves leaves behind; mm. */
const slack = 1e-9;

/** The schema of a length within limits: mm out. */
export function lengthField(notes: LengthNotes, units: Units): ZodType<number> {
  const { about, min = 0, max = 10_000 } = notes;
  return field((input) => readLength(input, { min, max }, units), { description: about, field: 'length', min, max });
}

/** Millimetres within limits (mm), or the refusal in the spec's units. */
export function readLength(input: unknown, limits: { readonly min: number; readonly max: number }, units: Units): Read<number> {
  if (typeof input !== 'string' && typeof input !== 'number') return wrongSort('not-a-length', input, 'a length', lengthForms(units));
  const reading = parseLength(input, units);
  if ('refusal' in reading) return { issue: { code: 'not-a-length', got: shown(input), ...reading.refusal } };
  const mm = reading.value;
  if (mm >= limits.min - slack && mm <= limits.max + slack) return { value: mm };
  return { issue: outOfReach(input, mm, limits, units) };
}

function outOfReach(input: string | number, mm: number, { min, max }: { readonly min: number; readonly max: number }, units: Units) {
  const short = mm < min;
  const limit = lengthFigure(short ? min : max, units);
  return {
    code: short ? 'too-short' : 'too-long',
    message: `is ${mm < 0 && min >= 0 ? 'negative' : `too ${short ? 'short' : 'long'}`}: ${short ? 'at least' : 'at most'} ${limit}`,
    got: `${shown(input)}, which is ${lengthFigure(mm, units)}`,
    allowed: `${lengthFigure(min, units)} to ${lengthFigure(max, units)}`,
    // In millimetres, exact: a limit rounded to a fraction of an inch could lie outside itself.
    nearest: `${Number((short ? min : max).toFixed(6))} mm`,
  };
}

/** A length for an error or a limit, in the spec's units first; in millimetres alone where a fraction of an inch would read as nothing. */
export function lengthFigure(mm: number, units: Units): string {
  if (Math.abs(mm) > 1e9) return `${mm.toPrecision(3)} mm`;
  const exactMm = Math.abs(mm) < 1 ? `${Number(mm.toPrecision(3))} mm`.replace('-', '−') : millimetres(mm);
  if (Math.abs(mm) < 25.4 / 64) return exactMm;
  return units === 'inch' ? `${fractionInches(mm)} (${exactMm})` : `${exactMm} (${fractionInches(mm)})`;
}


