import { describe, expect, it } from 'vitest';
import { lineStyles, type LineType } from '../../src/drawing/line-types.js';

const entries = Object.entries(lineStyles) as [LineType, (typeof lineStyles)[LineType]][];

describe('lineStyles', () => {
  it('has the names by which other programs find lines in the SVG', () => {
    expect(Object.keys(lineStyles)).toEqual([
      'edge', 'saw', 'bore', 'centre', 'hidden', 'reference', 'waste', 'seam', 'dimension', 'lettering', 'mark',
    ]);
  });

  it('uses pen widths of ISO 128-2 (0.13 0.18 0.25 0.35 0.5 0.7), narrow to wide as 1 : 2', () => {
    for (const [, { width }] of entries) expect([0.13, 0.18, 0.25, 0.35, 0.5, 0.7]).toContain(width);
    // Neighbours in the series are rounded, so the ratio is 2 within a twentieth.
    expect(Math.abs(lineStyles.edge.width / lineStyles.dimension.width - 2)).toBeLessThan(0.1);
  });

  // ISO 128-2, table of line elements, in pen widths: dashed 12 3; long dash dot 24 3 0.5 3; long dash double dot 24 3 0.5 3 0.5 3.
  it.each([
    ['hidden', [12, 3]], ['seam', [12, 18]], ['centre', [24, 3, 0.5, 3]], ['saw', [24, 3, 0.5, 3, 0.5, 3]],
  ] as const)('dashes %s lines as ISO 128-2 does', (type, elements) => {
    const { dash, width } = lineStyles[type];
    expect(dash.length).toBe(elements.length);
    elements.forEach((element, i) => expect(dash[i]! / width).toBeCloseTo(element, 9));
  });

  it('gives every line that a blade or a bit must find its own look in black', () => {
    const looks = (['edge', 'saw', 'bore', 'centre', 'hidden', 'reference', 'seam'] as const)
      .map((type) => JSON.stringify([lineStyles[type].width, lineStyles[type].dash]));
    expect(new Set(looks).size).toBe(looks.length);
  });
});
