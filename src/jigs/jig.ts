import type { ZodType } from 'zod';
import type { JigDrawing } from '../drawing/drawing.js';
import type { Font } from '../drawing/font.js';
import type { Finding } from '../errors/finding.js';
import type { Mistake } from '../errors/user-error.js';
import type { FieldReader } from '../spec/fields.js';
import type { Shop } from '../spec/shop.js';
import type { Round } from '../spec/spec.js';
import type { Units } from '../units/units.js';

/** A value that `check --json` prints: mm or degrees; a record goes by round or by end. */
export type Value = number | readonly number[] | { readonly [key: string]: Value };
/** Solved numbers by name, as `check --json` prints them. */
export type Values = Readonly<Record<string, Value>>;

/** What a jig may look at besides its own fields. */
export interface Context {
  /** The jig's name as the spec gives it. */
  readonly name: string;
  readonly units: Units;
  readonly rounds: Readonly<Record<string, Round>>;
  readonly shop: Shop;
  /** What one sheet of the chosen paper holds of a drawing, upright, mm. */
  readonly drawingArea: { readonly width: number; readonly height: number };
  /** The solution of another jig of the piece; undefined where that one is refused. */
  readonly jig: (asked: JigAsked) => unknown;
  /** Ends the solving with a mistake at one of the jig's own fields. */
  readonly mistaken: (field: string, mistake: FieldMistake) => never;
}

/** Another jig as a field names it. A name that no jig has, or one of another kind, is a mistake at that field. */
export interface JigAsked {
  readonly name: string;
  /** Path of the field in the jig's entry: `carrier.from`. */
  readonly field: string;
  readonly kind: string;
}

/** A mistake in what the user wrote, its place not yet put to it. */
export type FieldMistake = Pick<Mistake, 'code' | 'message' | 'got' | 'allowed' | 'nearest'>;

/** Either the numbers, or the reasons (severity `stop`) why there can be none. */
export type Outcome<S> = { readonly solution: S } | { readonly refused: readonly Finding[] };

/**
 * One kind of jig. Stages in order: schema (fields) → solve (numbers) → check (findings) and values → draw (patterns, set-ups).
 * `F` is what the schema yields: mm, radians, rounds looked up, defaults filled in. `S` is the kind's own solution.
 */
export interface JigKind<F, S> {
  readonly kind: string;
  /** One line for `fields` and `new`. */
  readonly summary: string;
  readonly schema: (fields: FieldReader) => ZodType<F>;
  /** A commented spec that draws as it stands: what `new KIND` prints. */
  readonly starter: string;
  readonly solve: (fields: F, context: Context) => Outcome<S>;
  readonly check: (solution: S, context: Context) => readonly Finding[];
  readonly values: (solution: S) => Values;
  readonly draw: (solution: S, context: Context, font: Font) => JigDrawing;
}

/** A kind in the register, where its own types no longer show. */
export type AnyJigKind = JigKind<unknown, unknown>;

/**
 * A kind with its own types forgotten. Sound as long as `solve` only gets what the same kind's `schema` yields, and the
 * rest only what its `solve` yields; the one place that calls them, compile, keeps to that.
 */
export const registered = <F, S>(kind: JigKind<F, S>): AnyJigKind => kind as unknown as AnyJigKind;
