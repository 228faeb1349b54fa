import type { Glyph } from '../../drawing/font.js';

/** The glyphs that a document has set so far: what must be embedded and how it reads back. Filled as pages are written. */
export type UsedGlyphs = Map<number, Glyph>;

/** Writes a run of glyphs as the operand of Tj (two bytes a glyph) and notes them as used. */
export const glyphString = (glyphs: readonly Glyph[], used: UsedGlyphs): string => {
  const codes = glyphs.map((glyph) => {
    if (!used.has(glyph.id)) used.set(glyph.id, glyph);
    return hex(glyph.id);
  });
  return `<${codes.join('')}>`;
};

/** Four hexadecimal digits. */
export const hex = (n: number): string => n.toString(16).padStart(4, '0');
