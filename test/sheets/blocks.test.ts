import { describe, expect, it } from 'vitest';
import type { Item, Lettering } from '../../src/drawing/drawing.js';
import { itemsBounds } from '../../src/drawing/item-bounds.js';
import { heading, onHeadingLine, paragraphs, shortened, tableBlocks } from '../../src/sheets/blocks.js';
import { testFont } from '../support/font.js';

const wordsOf = (items: readonly Item[]): Lettering[] => items.filter((item): item is Lettering => item.kind === 'lettering');
const textsOf = (items: readonly Item[]): string[] => wordsOf(items).map(({ text }) => text);

describe('tableBlocks', () => {
  const rows = Array.from({ length: 61 }, (_, i) => [`hole ${i + 1}`, `${20 + i} mm`]);

  it('parts a long table into blocks of at most 110 mm, the head on each, no row lost or out of turn', () => {
    const blocks = tableBlocks({ columns: ['Hole', 'Depth'], rows }, 180, testFont);
    expect(blocks.length).toBeGreaterThan(2);
    for (const { height, items } of blocks) {
      expect(height).toBeLessThanOrEqual(110);
      // No smaller than it need be: two of them would be taller than one may be.
      expect(height).toBeGreaterThan(55);
      expect(textsOf(items).slice(0, 2)).toEqual(['Hole', 'Depth']);
      // Half the width of the last rule's stroke hangs out.
      expect(itemsBounds(items, testFont).y1).toBeLessThanOrEqual(height + 0.1);
    }
    expect(blocks.flatMap(({ items }) => textsOf(items).slice(2))).toEqual(rows.flat());
  });

  it('leaves a short one whole, and a row that is tall by itself; none of no rows', () => {
    expect(tableBlocks({ rows: rows.slice(0, 12) }, 180, testFont)).toHaveLength(1);
    const [tall, ...more] = tableBlocks({ rows: [['a word or two that say it again '.repeat(60), '1 mm']] }, 60, testFont);
    expect([tall!.height > 110, more]).toEqual([true, []]);
    expect(tableBlocks({ columns: ['Hole'], rows: [] }, 180, testFont)).toEqual([]);
  });
});

describe('paragraphs', () => {
  const long = Array.from({ length: 300 }, (_, i) => `word${i}`).join(' ');

  it('are set in blocks of at most twelve lines, the mark before the first alone, every word kept', () => {
    const blocks = paragraphs([long, 'short'], 100, testFont, { mark: (i) => `${i + 1}` });
    const lines = blocks.map(({ items }) => wordsOf(items));
    expect(blocks.length).toBeGreaterThan(3);
    for (const [i, { height, items }] of blocks.entries()) {
      expect(new Set(lines[i]!.map(({ at }) => at.y)).size).toBeLessThanOrEqual(12);
      expect(itemsBounds(items, testFont).y1).toBeLessThanOrEqual(height);
    }
    expect(lines.flat().filter(({ text }) => /^\d+$/.test(text)).map(({ text }) => text)).toEqual(['1', '2']);
    expect(lines[0]![0]!.text).toBe('1');
    expect(lines.at(-1)!.map(({ text }) => text)).toEqual(['2', 'short']);
    expect(lines.flat().filter(({ text }) => !/^\d+$/.test(text)).map(({ text }) => text).join(' ')).toBe(`${long} short`);
  });

  it('run on at one pitch from block to block', () => {
    let top = 0;
    const baselines = paragraphs([long], 100, testFont).flatMap(({ before, height, items }, i) => {
      top += i === 0 ? 0 : before;
      const found = wordsOf(items).map(({ at }) => top + at.y);
      top += height;
      return found;
    });
    const steps = baselines.slice(1).map((y, i) => y - baselines[i]!);
    for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 9);
  });
});

describe('heading', () => {
  it('stands over its line, kept with what follows, the rule of a table on that line', () => {
    const { items, height, withNext } = heading('Sheets of this set', 180, testFont);
    const line = items.find((item) => item.kind === 'shape')!;
    expect(withNext).toBe(true);
    const y = itemsBounds([line], testFont).y1;
    expect(itemsBounds(wordsOf(items), testFont).y1).toBeLessThan(y);
    const [first, second] = onHeadingLine([...tableBlocks({ rows: [['1', '2']] }, 180, testFont), ...tableBlocks({ rows: [['3', '4']] }, 180, testFont)]);
    expect(height + first!.before).toBeCloseTo(y, 0);
    expect(second!.before).toBe(2);
    expect(onHeadingLine([])).toEqual([]);
  });
});

describe('shortened', () => {
  it('keeps 160 letters, and ends longer text with … at no space', () => {
    expect(shortened('a'.repeat(160))).toBe('a'.repeat(160));
    expect(shortened('a'.repeat(161))).toBe(`${'a'.repeat(159)}…`);
    expect(shortened('ab cd', 4)).toBe('ab…');
  });
});
