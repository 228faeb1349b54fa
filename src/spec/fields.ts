import type { ZodType } from 'zod';
import type { Units } from '../units/units.js';
import { angleField } from './angle-field.js';
import { lengthField } from './length-field.js';
import { choiceField, countField, flagField, numberField, textField } from './plain-fields.js';
import { roundField } from './round-field.js';
import type { Round } from './spec.js';

/** What every field says of itself; `fields` and the JSON Schema print it. */
export interface FieldNotes {
  /** What it is, one sentence. */
  readonly about: string;
}

/** A length's limits beside its notes. */
export interface LengthNotes extends FieldNotes {
  /** mm, inclusive. Default 0 … 10 000; what may be longer (a rack's board) says so. */
  readonly min?: number;
  readonly max?: number;
}

/** An angle's limits beside its notes. */
export interface AngleNotes extends FieldNotes {
  /** Radians, inclusive. Default 0 … π/2. */
  readonly min?: number;
  readonly max?: number;
  /** For an angle between two lines, where one past 90° is answered with its supplement: what is then so, as a sentence. */
  readonly beyondSquare?: string;
  /** Words that may stand for an angle, radians. */
  readonly words?: Readonly<Record<string, number>>;
}

/**
 * Makes the zod schemas that the kinds' own schemas are put together from. Each takes what people write (`1-3/8`,
 * `34.9 mm`, `24°`, `1:6`, a bare number in the spec's units or degrees) and yields mm or radians, or refuses with what
 * was got and what would do. Optional and default are zod's own: `f.length({…}).default(…)` takes the default in mm.
 */
export interface FieldReader {
  readonly units: Units;
  readonly length: (notes: LengthNotes) => ZodType<number>;
  readonly angle: (notes: AngleNotes) => ZodType<number>;
  readonly number: (notes: FieldNotes & { min?: number; max?: number }) => ZodType<number>;
  readonly count: (notes: FieldNotes & { min?: number; max?: number }) => ZodType<number>;
  readonly flag: (notes: FieldNotes) => ZodType<boolean>;
  readonly text: (notes: FieldNotes & { max?: number }) => ZodType<string>;
  readonly choice: <const T extends string>(choices: readonly T[], notes: FieldNotes) => ZodType<T>;
  /** A round by name, or a measured diameter written in its place. */
  readonly round: (notes: FieldNotes) => ZodType<Round>;
}

/**
 * The reader for one spec. `mistaken` names rounds whose own entry has a mistake: naming them is no second mistake.
 * Groups of fields are `z.strictObject`, so that an unknown key is a mistake and not silence.
 */
export function makeFieldReader(units: Units, rounds: Readonly<Record<string, Round>>, mistaken: readonly string[] = []): FieldReader {
  return {
    units,
    length: (notes) => lengthField(notes, units),
    angle: angleField,
    number: numberField,
    count: countField,
    flag: flagField,
    text: textField,
    choice: choiceField,
    round: (notes) => roundField(notes, { rounds, mistaken }, units),
  };
}
