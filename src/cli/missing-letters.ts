import type { Font } from '../drawing/font.js';
import { quote } from '../errors/quote.js';
import { placeOf } from '../spec/place-in-spec.js';
import type { Position, Spec } from '../spec/spec.js';
import type { SpecText } from './read-source.js';

/** A text that sheets print as it is written, and where the spec says it: looked for only where it is asked. */
interface Printed {
  readonly text: string;
  readonly place: () => Position | undefined;
}

const printedOf = ({ title, revision, rounds, jigs }: Spec, source: SpecText): readonly Printed[] => {
  const under = (text: string, ...steps: readonly string[]): Printed => ({ text, place: () => placeOf(steps, source) });
  return [
    under(title, 'title'),
    under(revision, 'revision'),
    ...Object.keys(rounds).map((name) => under(name, 'rounds', name)),
    ...jigs.map(({ name, position }) => ({ text: name, place: () => position })),
  ];
};

/** What of a text the font has no letter for, each once, in its order. */
const lacking = (text: string, font: Font): readonly string[] =>
  [...new Set(text)].filter(
    (letter) => letter !== '\uFFFD' && font.glyphs(letter).some((glyph) => glyph.text === '\uFFFD'),
  );

/** A warning for each text that holds letters which the sheets cannot show, with the letters and the text's place. */
export const missingLetters = (spec: Spec, source: SpecText, font: Font): readonly string[] =>
  printedOf(spec, source).flatMap(({ text, place }) => {
    const letters = lacking(text, font);
    if (letters.length === 0) return [];
    const at = place();
    const where = at === undefined ? source.file : `${source.file}:${at.line}:${at.column}`;
    const named = letters.map(quote).join(', ');
    return [`${where}: ${quote(text)}: the lettering has no ${named}; sheets show a box in the place of each.`];
  });
