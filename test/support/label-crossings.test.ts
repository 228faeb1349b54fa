import { describe, expect, it } from 'vitest';
import { letter, shape } from '../../src/drawing/items.js';
import { line } from '../../src/geometry/shapes.js';
import { testFont as font } from './font.js';
import { labelCrossings, labelOverlaps } from './label-crossings.js';

const label = letter({ x: 0, y: 0 }, 'MMMM', { height: 5, turn: 0.5 });
const along = (x0: number, y0: number, x1: number, y1: number) => {
  const map = (x: number, y: number) => ({ x: Math.cos(0.5) * x - Math.sin(0.5) * y, y: Math.sin(0.5) * x + Math.cos(0.5) * y });
  return shape('edge', line(map(x0, y0), map(x1, y1)), 'edge');
};

describe('labelCrossings', () => {
  it('finds a line through turned lettering, and one that only brushes it by its pen width', () => {
    expect(labelCrossings([label, along(5, -20, 5, 20)], font)).toEqual([{ text: 'MMMM', line: 'edge', part: 'edge' }]);
    expect(labelCrossings([label, along(-20, 0.17, 50, 0.17)], font)).toHaveLength(1);
  });

  it('lets a line pass beneath it', () => {
    expect(labelCrossings([label, along(-20, 0.3, 50, 0.3)], font)).toEqual([]);
  });
});

describe('labelOverlaps', () => {
  it('finds two labels over each other and not two beneath each other', () => {
    expect(labelOverlaps([label, { ...label, turn: -0.5 }], font)).toHaveLength(1);
    expect(labelOverlaps([letter({ x: 0, y: 0 }, 'MMMM'), letter({ x: 0, y: 3 }, 'MMMM')], font)).toEqual([]);
  });
});
