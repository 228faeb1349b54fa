import { describe, expect, it } from 'vitest';
import type { Lettering } from '../../src/drawing/drawing.js';
import { stripMeasure, stripText, type StripWords } from '../../src/sheets/strip-text.js';
import { itemBounds } from '../../src/drawing/item-bounds.js';
import { wrapText } from '../../src/drawing/wrap-text.js';
import { testFont } from '../support/font.js';

const box = { x0: 40, y0: 25, x1: 210, y1: 39 };
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

  it('keeps within its box and no smaller than it must be: one size up something would be left out', () => {
    for (const count of [1, 4, 9, 12, 14, 16, 18, 20, 24]) {
      const words: StripWords = { lines: [{ text: 'The title of the sheet', part: 'title', single: true }, { text: 'A station at the left of it.', part: 'station' }], running: sentences.slice(0, count) };
      const drawn = set(words);
      for (const item of drawn) {
        const { x0, y0, x1, y1 } = itemBounds(item, testFont);
        expect([x0 >= box.x0 - 0.2, y0 >= box.y0 - 0.2, x1 <= box.x1 + 0.2, y1 <= box.y1 + 0.2]).toEqual([true, true, true, true]);
      }
      const height = drawn[0]!.height;
      expect(new Set(drawn.map((item) => item.height))).toEqual(new Set([height]));
      // In each larger size the running words alone would take more lines than the box has beside the statements.
      const left = Math.max(...drawn.filter((item) => item.part === 'strip-words').map((item) => item.at.x));
      const larger = [2.5, 2.2, 2, 1.8].filter((h) => h > height + 1e-9);
      for (const h of larger) {
        const lines = wrapText(words.running.join(' '), box.x1 - left, h, testFont).length;
        expect(lines * 1.25 * h).toBeGreaterThan(box.y1 - box.y0 - 2 * h);
      }
    }
  });

  it('takes a shorter wording of a title before it cuts one short', () => {
    const long = 'a very long title of many words '.repeat(10);
    const titled = (shorter?: readonly string[]): string => set({ lines: [{ text: long, part: 'title', single: true, ...(shorter && { shorter }) }], running: [] })[0]!.text;
    expect(titled([long, '3 patterns: top, end'])).toBe('3 patterns: top, end');
    expect(titled()).toMatch(/…$/);
  });
});
