import { parse, type Font as FontFile } from 'opentype.js/dist/opentype.mjs';
import type { Path } from '../geometry/path.js';
import { after, scaling, transformPath, translation } from '../geometry/transform.js';
import { cleanText } from './clean-text.js';
import type { Font, Glyph } from './font.js';
import { glyphOutlines } from './glyph-outlines.js';

/** The part of opentype.js that its type package leaves out. */
interface Substitution {
  getSingle(feature: string, script: string): readonly { readonly sub: number; readonly by: number }[];
}

const fraction = /(\p{Nd}+)\u2044(\p{Nd}+)/gu;

/** Glyph for glyph exchanges of an OpenType feature, e.g. digits to the small raised ones of a numerator. */
const exchanges = (file: FontFile, feature: string): ReadonlyMap<number, number> => {
  const { substitution } = file as unknown as { substitution: Substitution };
  const pairs = substitution.getSingle(feature, 'latn') ?? [];
  if (pairs.length === 0) throw new Error(`the font has no ${feature} feature: it cannot set a fraction`);
  return new Map(pairs.map(({ sub, by }) => [sub, by]));
};

/** For each character of the text: is it part of a numerator, of a denominator, or neither? By index in code units. */
const fractionParts = (text: string): ReadonlyMap<number, 'numr' | 'dnom'> => {
  const parts = new Map<number, 'numr' | 'dnom'>();
  if (!text.includes('\u2044')) return parts;
  for (const found of text.matchAll(fraction)) {
    const slash = found.index + found[1]!.length;
    for (let i = found.index; i < slash; i++) parts.set(i, 'numr');
    for (let i = slash + 1; i < found.index + found[0].length; i++) parts.set(i, 'dnom');
  }
  return parts;
};

/** Text to glyphs: cleaned, fractions set, U+FFFD (a visible mark) for characters that the font lacks. */
const glyphSetter = (file: FontFile): Font['glyphs'] => {
  const features = { numr: exchanges(file, 'numr'), dnom: exchanges(file, 'dnom') };
  // Sheets say the same few signs over and over.
  const known = new Map<string, Glyph>();
  const read = (character: string, part: 'numr' | 'dnom' | undefined): Glyph => {
    const own = file.charToGlyphIndex(character);
    const id = own > 0 ? own : file.charToGlyphIndex('\uFFFD');
    const set = (part === undefined ? undefined : features[part].get(id)) ?? id;
    const { advanceWidth = 0 } = file.glyphs.get(set);
    return { id: set, text: own > 0 ? character : '\uFFFD', advance: advanceWidth / file.unitsPerEm };
  };
  const glyphOf = (character: string, part: 'numr' | 'dnom' | undefined): Glyph => {
    const key = part === undefined ? character : part + character;
    const glyph = known.get(key) ?? read(character, part);
    known.set(key, glyph);
    return glyph;
  };
  return (text) => {
    const clean = cleanText(text);
    const parts = fractionParts(clean);
    const glyphs: Glyph[] = [];
    let index = 0;
    for (const character of clean) {
      glyphs.push(glyphOf(character, parts.get(index)));
      index += character.length;
    }
    return glyphs;
  };
};

/** A line is measured when it is placed, when room is sought for it, when sheets are cut, and when it is written: once is enough. */
const remembered = <T>(work: (text: string) => T): ((text: string) => T) => {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const result = work(text);
    known.set(text, result);
    return result;
  };
};

/**
 * Reads a TrueType font for measuring and outlining. Glyphs are read when they are first needed, which takes a tenth of
 * the time. No kerning and no ligatures: figures stay in columns and the PDF's text needs no corrections.
 * Refuses a font without the numerator and denominator features.
 */
export const loadFont = (bytes: Uint8Array): Font => {
  const file = parse(Uint8Array.from(bytes).buffer, { lowMemory: true });
  const em = file.unitsPerEm;
  const { sCapHeight } = file.tables['os2'] as unknown as { readonly sCapHeight: number };
  const capHeight = sCapHeight / em;
  const glyphs = remembered(glyphSetter(file));
  const widthInEm = remembered((text) => glyphs(text).reduce((sum, g) => sum + g.advance, 0));
  const known = new Map<number, readonly Path[]>();
  const outline = (id: number): readonly Path[] => {
    const paths = known.get(id) ?? glyphOutlines(file.glyphs.get(id).getPath(0, 0, 1).commands);
    known.set(id, paths);
    return paths;
  };
  return {
    name: file.getEnglishName('postScriptName'),
    bytes,
    capHeight,
    glyphs,
    outline,
    width: (text, height) => widthInEm(text) * (height / capHeight),
    outlines: (text, height) => {
      const size = height / capHeight;
      let pen = 0;
      return glyphs(text).flatMap(({ id, advance }) => {
        const map = after(scaling(size, size), translation(pen * size, 0));
        pen += advance;
        return outline(id).map((path) => transformPath(map, path));
      });
    },
  };
};
