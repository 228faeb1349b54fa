import type { Mistake } from '../errors/user-error.js';
import type { Locator } from './locate.js';
import { formatPath, type Path } from './path.js';
import { placeAt, type SourceText } from './source-text.js';

/** Letters from which a text is long: path data of more than a few pieces, mostly. */
const long = 60;
/** Letters in all long texts of a file together. A traced outline has three thousand. */
const mostLetters = 100_000;
/** Values, lists and groups in a file together. A piece of furniture has a few hundred. */
const mostValues = 10_000;

/** What there is more of in a file than a machine works through in a few seconds, repeats by alias counted; the mistake stands at the first one too many. */
export function tooMuch(data: unknown, locate: Locator, source: SourceText): Mistake | undefined {
  let letters = 0;
  let values = 0;
  const left: { readonly value: unknown; readonly path: Path }[] = [{ value: data, path: [] }];
  for (let next = left.pop(); next; next = left.pop()) {
    const { value, path } = next;
    const at = (): Pick<Mistake, 'path'> => ({ path: formatPath(path), ...placeAt(source, locate.value(path)) });
    values += 1;
    if (typeof value === 'string' && value.length > long) letters += value.length;
    if (letters > mostLetters) {
      return {
        code: 'too-much-text',
        ...at(),
        message: 'is more path data than one file may hold',
        allowed: `at most ${mostLetters} letters in all texts of more than ${long} together`,
      };
    }
    if (values > mostValues)
      return {
        code: 'too-many-values',
        ...at(),
        message: 'is more than one file may hold',
        allowed: `at most ${mostValues} values, lists and groups together; a spec for each part of the piece`,
      };
    if (typeof value !== 'object' || value === null) continue;
    const inside = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
    for (const [key, one] of inside.reverse()) left.push({ value: one, path: [...path, key] });
  }
  return undefined;
}
