import * as z from 'zod';
import { quote } from '../errors/quote.js';
import { customIssue, sortOf, type FieldIssue } from './issue.js';

/** What a field's schema carries for `fields` and the JSON Schema, in zod's metadata. mm and radians. */
export interface FieldMeta {
  readonly description: string;
  readonly field: 'length' | 'angle' | 'number' | 'count' | 'flag' | 'text' | 'choice' | 'round';
  readonly min?: number;
  readonly max?: number;
  readonly choices?: readonly string[];
}

/** The value that a field makes of what was written, or why not. */
export type Read<T> = { readonly value: T } | { readonly issue: FieldIssue };

/** A field's schema from its reader and what it says of itself. A field that is not there at all is `missing-key`. */
export function field<T>(read: (input: unknown) => Read<T>, meta: FieldMeta): z.ZodType<T> {
  const made = z.transform((input: unknown, ctx): T => {
    const result = input === undefined ? missing(meta) : read(input);
    if ('value' in result) return result.value;
    ctx.issues.push(customIssue(result.issue, input));
    return z.NEVER;
  });
  // Registered in place: `meta()` makes a copy, which start-up pays for with every field.
  return z.pipe(z.unknown(), made).register(z.globalRegistry, { ...meta });
}

const missing = (meta: FieldMeta): { readonly issue: FieldIssue } => ({
  issue: { code: 'missing-key', message: 'is missing', allowed: `${sorts[meta.field]} (${lowerFirst(meta.description)})` },
});

const sorts: Readonly<Record<FieldMeta['field'], string>> = {
  length: 'a length', angle: 'an angle', number: 'a number', count: 'a whole number', flag: 'true or false', text: 'text', choice: 'a choice', round: 'a round',
};

const lowerFirst = (text: string): string => (/^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text);

/** A refusal of a value of the wrong sort; `wanted` is the right one, in two or three words. A key without a value is `empty-value`. */
export function wrongSort(code: string, input: unknown, wanted: string, allowed = wanted): { readonly issue: FieldIssue } {
  if (input === null) return { issue: { code: 'empty-value', message: 'is empty', got: 'nothing', allowed } };
  return { issue: { code, message: `is ${sortOf(input)}, not ${wanted}`, got: shown(input), allowed } };
}

/** A value as an error shows it: text in quotes, lists and mappings by their sort. */
export function shown(input: unknown): string {
  if (typeof input === 'string') return quote(input);
  return typeof input === 'object' ? sortOf(input) : String(input);
}
