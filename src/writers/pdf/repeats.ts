import type { PdfObject } from './embed-font.js';

/** Operators in, operators out: the same ones, or a reference to the form that holds them. */
export type Repeats = (content: string) => string;

/** Shorter content is cheaper written again than referred to. */
const worthKeeping = 300;

/**
 * Keeps content that several pages repeat (bars, legends, cautions) once in the file: written out where it first comes, then
 * as a form that pages refer to (ISO 32000-1, 8.10). `make` makes the form, `list` names it among the current page's resources.
 */
export const keepRepeats = (make: (content: string) => PdfObject, list: (name: string, form: PdfObject) => void): Repeats => {
  const seen = new Map<string, { readonly name: string; readonly form: PdfObject } | undefined>();
  let count = 0;
  return (content) => {
    if (content.length < worthKeeping) return content;
    if (!seen.has(content)) {
      seen.set(content, undefined);
      return content;
    }
    const known = seen.get(content) ?? { name: `R${++count}`, form: make(content) };
    seen.set(content, known);
    list(known.name, known.form);
    return `/${known.name} Do`;
  };
};
