import type { Mistake } from '../errors/user-error.js';
import type { Locator } from './locate.js';
import { formatPath, type Path } from './path.js';
import { placeAt, type SourceText } from './source-text.js';

/** Letters from which a text is long: path data of more than a few pieces, mostly. */
const long = 60;
/** Letters in all long texts of a file together. A traced outline has three thousand. */
const most = 100_000;

/** Long texts that come to more than a machine works through in a few seconds, repeats by alias counted; the mistake stands at the first one too many. */
export function tooMuchText(data: unknown, locate: Locator, source: SourceText): Mistake | undefined {
  let letters = 0;
  const left: { readonly value: unknown; readonly path: Path }[] = [{ value: data, path: [] }];
  for (let next = left.pop(); next; next = left.pop()) {
    const { value, path } = next;
    if (typeof value === 'string' && value.length > long) letters += value.length;
    if (letters > most) {
      return {
        code: 'too-much-text', path: formatPath(path), ...placeAt(source, locate.value(path)),
        message: 'is more path data than one file may hold', allowed: `at most ${most} letters in all texts of more than ${long} together`,
      };
    }
    if (typeof value !== 'object' || value === null) continue;
    const inside = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
    for (const [key, one] of inside.reverse()) left.push({ value: one, path: [...path, key] });
  }
  return undefined;
}
