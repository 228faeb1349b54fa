import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cleanText } from '../../src/drawing/clean-text.js';
import { fitText } from '../../src/drawing/fit-text.js';
import { itemsBounds } from '../../src/drawing/item-bounds.js';
import { table } from '../../src/drawing/table.js';
import { textBlock } from '../../src/drawing/text-block.js';
import { wrapText } from '../../src/drawing/wrap-text.js';
import { testFont as font } from '../support/font.js';
import { labelCrossings, labelOverlaps } from '../support/label-crossings.js';

const letters = (text: string): string => text.replace(/ /g, '');
const words = fc.string({ unit: fc.constantFrom('a', 'M', ' ', '1', '⁄', '8', 'é', '中', '\n', '\u202E'), maxLength: 120 });

describe('wrapText', () => {
  it('loses no letter and makes no line too wide', () => {
    fc.assert(fc.property(words, fc.double({ min: 6, max: 90, noNaN: true }), (text, width) => {
      const lines = wrapText(text, width, 2.5, font);
      expect(letters(lines.join(''))).toBe(letters(cleanText(text)));
      for (const l of lines) expect(font.width(l, 2.5)).toBeLessThanOrEqual(width + 1e-9);
    }));
  });

  it('breaks ten thousand letters without a space in time that grows with them', () => {
    const lines = wrapText('w'.repeat(10000), 100, 2.5, font);
    expect(lines.join('')).toHaveLength(10000);
    expect(lines.length).toBeGreaterThan(100);
  });
});

describe('fitText', () => {
  it('leaves what fits and ends what does not with …, within the width', () => {
    expect(fitText('brace saddle', 50, 2.5, font)).toBe('brace saddle');
    const cut = fitText('brace saddle '.repeat(1000), 50, 2.5, font);
    expect(cut).toMatch(/^brace saddle .*…$/);
    expect(font.width(cut, 2.5)).toBeLessThanOrEqual(50);
  });
});

describe('textBlock', () => {
  const block = textBlock({
    at: { x: 10, y: 20 }, width: 60, mark: (i) => `${i + 1}.`,
    paragraphs: ['Set the fence 34.9 mm from the blade, the round pressed down in the groove.', 'Cut (slowly).'],
  }, font);

  it('lies inside its width and height', () => {
    const { x0, y0, x1, y1 } = itemsBounds(block.items, font);
    expect(x0).toBeGreaterThanOrEqual(10 - 1e-9);
    expect(x1).toBeLessThanOrEqual(70 + 1e-9);
    expect(y0).toBeGreaterThanOrEqual(20 - 0.4);
    expect(y1).toBeLessThanOrEqual(20 + block.height + 1e-9);
  });

  it('sets the marks to the left of the lines and nothing over anything', () => {
    expect(block.items.filter((i) => i.kind === 'lettering' && i.at.x === 10)).toHaveLength(2);
    expect(labelOverlaps(block.items, font)).toEqual([]);
  });

  it('takes no room for nothing', () => {
    expect(textBlock({ at: { x: 0, y: 0 }, width: 50, paragraphs: [] }, font)).toEqual({ items: [], height: 0 });
  });
});

describe('table', () => {
  const rows = [['0°', '12.3 mm', '31⁄64″'], ['15°', '113.9 mm', '4 31⁄64″']];
  const text = (items: ReturnType<typeof table>['items']): string => items.flatMap((i) => (i.kind === 'lettering' ? [i.text] : [])).join(' ');

  it('keeps its words clear of its rules and of each other', () => {
    const { items } = table({ at: { x: 5, y: 5 }, columns: ['φ', 'height', 'inches'], rows, width: 90, right: [1, 2] }, font);
    expect(labelCrossings(items, font)).toEqual([]);
    expect(labelOverlaps(items, font)).toEqual([]);
  });

  it('ends figures of a column at one place', () => {
    const { items } = table({ at: { x: 5, y: 5 }, rows, width: 90, right: [1] }, font);
    const ends = items.flatMap((i) => (i.kind === 'lettering' && i.anchor === 'end' ? [i.at.x] : []));
    expect(new Set(ends).size).toBe(1);
  });

  it('wraps where it would be too wide, losing no word', () => {
    const long = 'from the left face of the block to the near face of the blade';
    const { items, width } = table({ at: { x: 0, y: 0 }, rows: [['Fence', long], [long, '34.9 mm']], width: 70 }, font);
    expect(width).toBeLessThanOrEqual(70 + 1e-9);
    expect(itemsBounds(items, font).x1).toBeLessThanOrEqual(70.1);
    expect([...text(items).split(' ')].sort()).toEqual(`Fence ${long} ${long} 34.9 mm`.split(' ').sort());
    expect(labelOverlaps(items, font)).toEqual([]);
  });

  it('of no rows is nothing', () => {
    expect(table({ at: { x: 0, y: 0 }, rows: [], width: 70 }, font)).toEqual({ items: [], height: 0, width: 0 });
  });
});
