import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parse } from 'opentype.js/dist/opentype.mjs';
import { describe, expect, it } from 'vitest';
import { cleanText } from '../../src/drawing/clean-text.js';
import { itemBounds } from '../../src/drawing/item-bounds.js';
import { letter } from '../../src/drawing/items.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { uniteBoxes } from '../../src/geometry/box.js';
import { testFont as font } from '../support/font.js';

// The whole font read eagerly, to hold the lazy reading against.
const path = createRequire(import.meta.url).resolve('@expo-google-fonts/ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf');
const whole = parse(Uint8Array.from(readFileSync(path)).buffer);
const glyphNames = (text: string): (string | null | undefined)[] => font.glyphs(text).map((g) => whole.glyphs.get(g.id).name);
const ink = (text: string, height: number) => uniteBoxes(font.outlines(text, height).map(pathBounds));

describe('loadFont', () => {
  // ISO 3098-1: nominal heights of lettering; h is the height of the capitals.
  it.each([1.8, 2.5, 3.5, 5, 7, 10])('sets capitals %f mm high', (height) => {
    const box = ink('H', height);
    expect(box.y1 - box.y0).toBeCloseTo(height, 9);
    expect(box.y1).toBeCloseTo(0, 9);
  });

  it('sets digits about a fraction slash as numerator and denominator, and the whole number before it full size', () => {
    expect(glyphNames('1 3⁄8').slice(0, 2)).toEqual(['one', 'space']);
    const [three, slash, eight] = font.glyphs('3⁄8').map((g) => whole.glyphs.get(g.id).getPath(0, 0, 1 / font.capHeight).getBoundingBox());
    // Both digits about half as high as a capital, the one up to its top, the other on the base line, the slash between.
    for (const digit of [three!, eight!]) expect(digit.y2 - digit.y1).toBeLessThan(0.65);
    expect(three!.y1).toBeCloseTo(-1, 1);
    expect(eight!.y2).toBeCloseTo(0, 1);
    expect(slash!.y2 - slash!.y1).toBeCloseTo(1, 1);
  });

  it('sets every digit of a long fraction small, and digits beside other slashes full size', () => {
    const full = new Set(font.glyphs('0123456789').map((g) => g.id));
    expect(font.glyphs('17⁄64').map((g) => full.has(g.id))).toEqual([false, false, false, false, false]);
    expect(font.glyphs('17⁄64').map((g) => g.text).join('')).toBe('17⁄64');
    expect(glyphNames('17/64')).toEqual(['one', 'seven', 'slash', 'six', 'four']);
  });

  it('has every sign that a sheet uses', () => {
    for (const sign of '½ ¼ ¾ ° Ø × ′ ″ ≥ ≤ θ φ ⁄ − – → √ π ± …') expect(font.glyphs(sign).map((g) => g.text)).toEqual([sign]);
  });

  it('shows U+FFFD for what the font lacks, one for each character', () => {
    const glyphs = font.glyphs('a中😀b');
    expect(glyphs.map((g) => g.text).join('')).toBe('a\uFFFD\uFFFDb');
    expect(ink('中', 3.5).x1).toBeGreaterThan(1);
  });

  it('measures a line as the sum of the font\'s own advances', () => {
    const advance = (text: string): number => [...text].reduce((sum, c) => sum + whole.charToGlyph(c).advanceWidth!, 0) / 1000;
    expect(font.width('AVATAR To Yield', 3.5)).toBeCloseTo((advance('AVATAR To Yield') * 3.5) / font.capHeight, 9);
  });

  it('outlines compound glyphs as the eager reader does', () => {
    const size = 10 / font.capHeight;
    const box = whole.charToGlyph('é').getPath(0, 0, size).getBoundingBox();
    const own = ink('é', 10);
    for (const [a, b] of [[own.x0, box.x1], [own.y0, box.y1], [own.x1, box.x2], [own.y1, box.y2]] as const) expect(a).toBeCloseTo(b, 6);
  });

  it('keeps all its ink inside itemBounds', () => {
    for (const text of ['Agjpqy(Ø)|$', '1 17⁄64″', 'HÉ', 'Ắķ', '\uFFFD']) {
      const bounds = itemBounds(letter({ x: 0, y: 0 }, text, { height: 5 }), font);
      const box = ink(text, 5);
      expect(box.y0).toBeGreaterThan(bounds.y0);
      expect(box.y1).toBeLessThan(bounds.y1);
    }
  });
});

describe('cleanText', () => {
  it('drops bidirectional, zero-width and control characters and keeps the rest', () => {
    expect(cleanText('a\u202Eb\u2066c\u200Fd\u200Be\u0000f\u001B[31mg\uFEFF')).toBe('abcdef[31mg');
  });

  it('puts line breaks and tabs on one line', () => {
    expect(cleanText('a\r\nb\tc\u2028d')).toBe('a b c d');
  });

  it('shows lone surrogates and non-characters as U+FFFD', () => {
    expect(cleanText('a\uD800b\uFFFEc')).toBe('a\uFFFDb\uFFFDc');
  });

  it('composes letters with their accents', () => {
    expect(cleanText('e\u0301')).toBe('é');
  });
});
