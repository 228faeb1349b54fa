import { describe, expect, it } from 'vitest';
import type { Lettering } from '../../src/drawing/drawing.js';
import { stripMeasure, stripText, type StripWords } from '../../src/sheets/strip-text.js';
import { testFont } from '../support/font.js';

const box = { x0: 0, y0: 0, x1: 170, y1: 14 };
const more = '… the rest is elsewhere';
const set = (words: StripWords): Lettering[] =>
  stripText(box, words, more, { font: testFont, measure: stripMeasure(testFont) }).filter((i): i is Lettering => i.kind === 'lettering');
const running = (words: StripWords): string => set(words).filter((l) => l.part === 'strip-words').map((l) => l.text).join(' ');

describe('stripText', () => {
  const sentences = Array.from({ length: 40 }, (_, i) => `Keep the hands ${100 + i} mm from the cutter.`);

  it('leaves out whole sentences where there is no room, and says that there are more', () => {
    const said = running({ lines: [], running: [sentences.slice(0, 20).join(' '), sentences.slice(20).join(' ')] });
    expect(said.endsWith(`. ${more}`)).toBe(true);
    const kept = said.slice(0, -more.length - 1);
    expect(sentences.join(' ').startsWith(kept)).toBe(true);
    expect(kept.length).toBeGreaterThan(200);
  });

  it('leaves nothing out where there is room', () => {
    expect(running({ lines: [], running: sentences.slice(0, 3) })).toBe(sentences.slice(0, 3).join(' '));
  });

  it('takes a shorter wording of a title before it cuts one short', () => {
    const long = 'a very long title of many words '.repeat(10);
    const titled = (shorter?: readonly string[]): string => set({ lines: [{ text: long, part: 'title', single: true, ...(shorter && { shorter }) }], running: [] })[0]!.text;
    expect(titled([long, '3 patterns: top, end'])).toBe('3 patterns: top, end');
    expect(titled()).toMatch(/…$/);
  });
});
