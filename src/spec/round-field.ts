import type { ZodType } from 'zod';
import { nearest } from '../errors/nearest.js';
import { quote } from '../errors/quote.js';
import { fractionInches, millimetres } from '../units/format.js';
import { parseLength } from '../units/parse-length.js';
import type { Units } from '../units/units.js';
import { field, wrongSort, type Read } from './field.js';
import type { FieldNotes } from './fields.js';
import { readLength } from './length-field.js';
import type { Round } from './spec.js';

/** Round stock that a small shop turns, saws and drills, mm: 1/8 in to a foot. */
export const diameterLimits = { min: 3, max: 300 } as const;
/** The longest round that anyone carries in, mm. */
export const longestRound = 12_000;

/** Rounds that may be named: those read, and the names of those whose own entry has a mistake. */
export interface RoundNames {
  readonly rounds: Readonly<Record<string, Round>>;
  readonly mistaken: readonly string[];
}

/** The schema of a round by its name, or by a measured diameter in its place. */
export const roundField = ({ about }: FieldNotes, names: RoundNames, units: Units): ZodType<Round> =>
  field((input) => readRound(input, names, units), { description: about, field: 'round' });

function readRound(input: unknown, { rounds, mistaken }: RoundNames, units: Units): Read<Round> {
  if (typeof input !== 'string' && typeof input !== 'number') return wrongSort('not-a-round', input, 'a round', 'the name of a round or a diameter');
  const key = String(input);
  const named = Object.hasOwn(rounds, key) ? rounds[key] : undefined;
  if (named) return { value: named };
  if (mistaken.includes(key)) return { issue: { code: 'unknown-round', message: 'names a round with a mistake', follows: true } };
  if (typeof input === 'string' && !/^[\d.-]/.test(key) && 'refusal' in parseLength(input, units)) return unknownRound(key, [...Object.keys(rounds), ...mistaken]);
  const read = readLength(input, diameterLimits, units);
  return 'issue' in read ? read : { value: { name: diameterName(read.value, units), diameter: read.value, unnamed: true } };
}

/** A round that has no name is called by its diameter. */
const diameterName = (mm: number, units: Units): string => `Ø ${units === 'inch' ? fractionInches(mm) : millimetres(mm)}`;

function unknownRound(key: string, names: readonly string[]): Read<Round> {
  const near = nearest(key, names);
  const list = names.slice(0, 12).map(quote).join(', ');
  const allowed = names.length > 0 ? `one of ${list}${names.length > 12 ? ', …' : ''}, or a diameter` : 'a diameter, or a name under rounds';
  return { issue: { code: 'unknown-round', message: 'is not a round of this piece', got: quote(key), allowed, ...(near ? { nearest: near } : {}) } };
}
