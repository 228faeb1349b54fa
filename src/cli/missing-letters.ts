import type { Font } from '../drawing/font.js';
import { quote } from '../errors/quote.js';
import { placeOf } from '../spec/place-in-spec.js';
import type { Spec } from '../spec/spec.js';
import type { SpecText } from './read-source.js';

/** Texts of a spec that sheets print as they are written, by the keys that they stand under, with a place where that is known. */
const textsOf = ({ title, revision, rounds, jigs }: Spec): readonly { readonly text: string; readonly steps: readonly string[]; readonly place?: string }[] => [
  { text: title, steps: ['title'] }, { text: revision, steps: ['revision'] },
  ...Object.keys(rounds).map((name) => ({ text: name, steps: ['rounds', name] })),
  ...jigs.map(({ name, position: { line, column } }) => ({ text: name, steps: ['jigs', name], place: `${line}:${column}` })),
];

/** What of a text the font has no letter for, each once, in its order. */
const lacking = (text: string, font: Font): readonly string[] =>
  [...new Set(text)].filter((letter) => letter !== '\uFFFD' && font.glyphs(letter).some((glyph) => glyph.text === '\uFFFD'));

/** A warning for each text that holds letters which the sheets cannot show, with the letters and the text's place. */
export const missingLetters = (spec: Spec, source: SpecText, font: Font): readonly string[] => textsOf(spec).flatMap(({ text, steps, place }) => {
  const letters = lacking(text, font);
  if (letters.length === 0) return [];
  const at = place ?? placeOf(steps, source);
  return [`${source.file}:${at === undefined ? '' : `${at}:`} ${quote(text)}: the lettering has no ${letters.map(quote).join(', ')}; sheets show a box in the place of each.`];
});
